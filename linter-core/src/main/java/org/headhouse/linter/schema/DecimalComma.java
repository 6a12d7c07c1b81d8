package org.headhouse.linter.schema;

import java.util.Optional;
import java.util.regex.Pattern;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Scalar;

/** Finds a decimal comma between braces, where it ends the value: {@code gauge: 0,34 mm2}. */
final class DecimalComma {
  private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,9}");
  private static final Pattern REST = Pattern.compile("[0-9]{1,9}(?![0-9]).*");

  private DecimalComma() {}

  /**
   * The fault of a value and of the key that its decimals became.
   *
   * @param owner the mapping
   * @param key the key that is not known
   * @param expected what the schema says of the mapping
   */
  static Optional<SchemaFault> of(Cursor owner, String key, ExpectedValue expected, Tree tree) {
    Mapping.Entry decimals = tree.entry(owner, key);
    Mapping.Entry value = tree.entryBefore(owner, key);
    return decimals != null
            && value != null
            && owner.valueOf(value).node() instanceof Scalar number
            && isSplit(number, decimals.key())
        ? Optional.of(fault(owner, value, number, key, expected))
        : Optional.empty();
  }

  private static boolean isSplit(Scalar number, Scalar decimals) {
    return number.type() == CoreType.INTEGER
        && WHOLE.matcher(number.text()).matches()
        && REST.matcher(decimals.text()).matches()
        && number.region().endLine() == decimals.region().startLine()
        && number.region().endColumn() + 1 == decimals.region().startColumn();
  }

  private static SchemaFault fault(
      Cursor owner, Mapping.Entry value, Scalar number, String decimals, ExpectedValue expected) {
    String written = number.text() + "," + decimals;
    ExpectedValue wanted = expected.property(value.key().text());
    String remedy =
        "write "
            + QuantityRepair.of(written, wanted).orElse(number.text() + "." + decimals)
            + ", with a decimal point";
    Message message =
        new Message(
            "\"" + value.key().text() + "\" is written with a decimal comma: " + written,
            "between braces a comma ends the value, and what follows becomes a key",
            remedy);
    return new SchemaFault(
        number, "value", Finding.of("schema.bad-quantity", owner.valueOf(value).place(), message));
  }
}
