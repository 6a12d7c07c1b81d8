package org.headhouse.linter.fuzz;

import java.util.function.BiPredicate;
import org.headhouse.linter.bind.DeviceTypesBinder;
import org.headhouse.linter.bind.SiteBinder;
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
  private final BiPredicate<SourceText, Node.Valued> doubtful;

  private SchemaProperty(FileKind kind, BiPredicate<SourceText, Node.Valued> doubtful) {
    this.schema = new SchemaCheck(kind);
    this.doubtful = doubtful;
  }

  static SchemaProperty ofSites() {
    return new SchemaProperty(
        FileKind.SITE,
        (source, root) -> SiteBinder.bind(source, root, DeviceTypes.NONE).doubtful());
  }

  static SchemaProperty ofDeviceTypes() {
    return new SchemaProperty(
        FileKind.DEVICE_TYPES, (source, root) -> DeviceTypesBinder.bind(source, root).doubtful());
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
    Node.Valued root = document.root();
    if (root == null) {
      return;
    }
    boolean doubted = doubtful.test(text, root);
    boolean refused = !schema.explain(root).isEmpty();
    Demand.that(
        doubted == refused,
        "binding %s what the schema %s: %s",
        doubted ? "doubts" : "accepts",
        refused ? "refuses" : "accepts",
        text.text());
  }
}
