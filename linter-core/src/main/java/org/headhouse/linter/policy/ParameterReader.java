package org.headhouse.linter.policy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.source.SpellingSuggester;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;

/** Reads the value of one parameter, and reports what is wrong with it at its place. */
final class ParameterReader {
  private final Parameter<?> parameter;
  private final List<Finding> findings;

  ParameterReader(Parameter<?> parameter, List<Finding> findings) {
    this.parameter = parameter;
    this.findings = findings;
  }

  /**
   * The value, or empty where there is none; what is wrong is then reported here or by the schema.
   */
  Optional<?> read(Cursor value) {
    ParameterType<?> type = parameter.type();
    if (value.node() instanceof Sequence list) {
      Optional<ParameterType<?>> items = type.items();
      if (items.isPresent()) {
        return list(value, list, items.get());
      }
      findings.add(fault(type, "a list", "", value));
      return Optional.empty();
    }
    return value.node() instanceof Scalar scalar ? scalar(value, scalar, type) : Optional.empty();
  }

  private Optional<?> scalar(Cursor value, Scalar scalar, ParameterType<?> type) {
    Optional<?> read = type.parse(scalar.text());
    if (read.isEmpty()) {
      findings.add(fault(type, "\"" + scalar.text() + "\"", scalar.text(), value));
    }
    return read;
  }

  private Optional<?> list(Cursor value, Sequence list, ParameterType<?> items) {
    if (isTooLarge(value, list, items)) {
      findings.add(tooLarge(value, list));
      return Optional.empty();
    }
    List<String> good = new ArrayList<>();
    for (Node node : list.items()) {
      Cursor item = value.inside(node);
      if (item.node() instanceof Scalar scalar && scalar(item, scalar, items).isPresent()) {
        good.add(scalar.text());
      }
    }
    // What is left of a list would mean something else than was written.
    return good.size() == list.items().size() ? parameter.type().parse(good) : Optional.empty();
  }

  private static boolean isTooLarge(Cursor value, Sequence list, ParameterType<?> items) {
    long size = 0;
    for (Node node : list.items()) {
      size += value.inside(node).node() instanceof Scalar scalar ? items.size(scalar.text()) : 1;
      if (size > ParameterType.LARGEST_LIST) {
        return true;
      }
    }
    return false;
  }

  private Finding tooLarge(Cursor value, Sequence list) {
    return Finding.of(
        "schema.bad-value",
        value.place(),
        new Message(
            "the list of the parameter \"" + parameter.name() + "\" is too large",
            "with its "
                + list.items().size()
                + " values a check would take long, so none of them is used",
            "take several values together, and delete what no site needs"));
  }

  private Finding fault(ParameterType<?> type, String quoted, String written, Cursor value) {
    String remedy =
        SpellingSuggester.suggest(written, type.words())
            .map(near -> "write " + near)
            .or(() -> type.remedy(written))
            .orElse("write for example " + parameter.fallback());
    return Finding.of(
        "schema.bad-value",
        value.place(),
        new Message(
            "the parameter \"" + parameter.name() + "\" cannot be " + quoted,
            type.whyNot(written),
            remedy));
  }
}
