package org.headhouse.linter.fuzz;

import java.util.function.BiPredicate;
import org.headhouse.linter.bind.DeviceTypesBinder;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.bind.UnitDefaults;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.SchemaCheck;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.Utf8;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.YamlReader;

/** Binding has a doubt just where the schema refuses something, and what is told then can be. */
final class SchemaProperty implements Property {
  private final SchemaCheck schema;
  private final BiPredicate<SourceText, Node.Valued> needsCheck;

  private SchemaProperty(FileKind kind, BiPredicate<SourceText, Node.Valued> needsCheck) {
    this.schema = new SchemaCheck(kind);
    this.needsCheck = needsCheck;
  }

  static SchemaProperty ofSites() {
    return new SchemaProperty(
        FileKind.SITE,
        (source, root) -> SiteBinder.bind(source, root, DeviceTypes.NONE).needsSchemaCheck());
  }

  static SchemaProperty ofDeviceTypes() {
    return new SchemaProperty(
        FileKind.DEVICE_TYPES,
        (source, root) -> DeviceTypesBinder.bind(source, root).needsSchemaCheck());
  }

  @Override
  public void tryWith(byte[] input) {
    if (Utf8.decode("example.yaml", input) instanceof Utf8.Decoded.Text decoded) {
      tryWith(decoded.text());
    }
  }

  /** Tries a text. */
  void tryWith(SourceText text) {
    Document document = new YamlReader(Limits.DEFAULT).read(text);
    Node.Valued root = document.root() == null ? null : UnitDefaults.spread(document.root());
    if (root == null) {
      return;
    }
    boolean flagged = needsCheck.test(text, root);
    boolean refused = !schema.explain(root).isEmpty();
    Demand.that(
        flagged == refused,
        "binding %s what the schema %s: %s",
        flagged ? "flags" : "accepts",
        refused ? "refuses" : "accepts",
        text.text());
  }
}
