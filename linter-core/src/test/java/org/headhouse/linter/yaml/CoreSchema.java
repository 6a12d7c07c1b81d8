package org.headhouse.linter.yaml;

import java.util.List;
import java.util.regex.Pattern;

/** The core schema, from the standard itself. */
public final class CoreSchema {

  private record Form(CoreType type, Pattern form) {
    Form(CoreType type, String expression) {
      this(type, Pattern.compile(expression));
    }
  }

  /** YAML 1.2.2, section 10.3.2, the regular expressions of the core schema, in their order. */
  private static final List<Form> TYPES =
      List.of(
          new Form(CoreType.NULL, "null|Null|NULL|~|"),
          new Form(CoreType.BOOLEAN, "true|True|TRUE|false|False|FALSE"),
          new Form(CoreType.INTEGER, "[-+]?[0-9]+|0o[0-7]+|0x[0-9a-fA-F]+"),
          new Form(
              CoreType.FLOAT,
              "[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?"
                  + "|[-+]?(\\.inf|\\.Inf|\\.INF)|\\.nan|\\.NaN|\\.NAN"));

  /** The type of a plain scalar: the first whose expression it matches. */
  public static CoreType type(String text) {
    return TYPES.stream()
        .filter(one -> one.form.matcher(text).matches())
        .map(Form::type)
        .findFirst()
        .orElse(CoreType.TEXT);
  }

  private CoreSchema() {}
}
