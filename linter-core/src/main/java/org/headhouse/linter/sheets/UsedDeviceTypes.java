package org.headhouse.linter.sheets;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Set;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.DoubleQuoted;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;

/**
 * The file of device types with those alone that some sites use. It is written anew, without the
 * comments, which may be about other customers.
 */
final class UsedDeviceTypes {
  private static final String TYPES = "device-types";

  private final StringBuilder yaml = new StringBuilder();

  private UsedDeviceTypes() {}

  /** The file in UTF-8; null where no type of the file is used. */
  static byte @Nullable [] of(DeviceTypes types, Set<String> used, Limits limits) {
    SourceText source = types.source();
    Node root = source == null ? null : new YamlReader(limits).read(source).root();
    if (!(root instanceof Mapping file)) {
      return null;
    }
    UsedDeviceTypes writer = new UsedDeviceTypes();
    boolean any = false;
    for (Mapping.Entry entry : file.entries()) {
      Node value = target(entry.value());
      if (!entry.key().text().equals(TYPES)) {
        writer.entry(entry, "");
      } else if (value instanceof Sequence list) {
        writer.yaml.append(TYPES + ":\n");
        for (Node item : list.items()) {
          if (target(item) instanceof Mapping type && used.contains(id(type))) {
            writer.item(type, "  ");
            any = true;
          }
        }
      }
    }
    return any ? writer.yaml.toString().getBytes(UTF_8) : null;
  }

  private static String id(Mapping type) {
    return type.entries().stream()
        .filter(entry -> entry.key().text().equals("id"))
        .map(entry -> target(entry.value()) instanceof Scalar id ? id.text() : "")
        .findFirst()
        .orElse("");
  }

  private static Node target(Node node) {
    return node instanceof Alias alias ? alias.target() : node;
  }

  private void entry(Mapping.Entry entry, String indent) {
    yaml.append(indent).append(scalar(entry.key())).append(':');
    Node value = target(entry.value());
    if (value instanceof Scalar scalar) {
      yaml.append(' ').append(scalar(scalar)).append('\n');
    } else {
      yaml.append('\n');
      children(value, indent + "  ");
    }
  }

  private void children(Node node, String indent) {
    if (node instanceof Mapping mapping) {
      mapping.entries().forEach(entry -> entry(entry, indent));
    } else if (node instanceof Sequence sequence) {
      sequence.items().forEach(item -> item(target(item), indent));
    }
  }

  private void item(Node node, String indent) {
    if (node instanceof Scalar scalar) {
      yaml.append(indent).append("- ").append(scalar(scalar)).append('\n');
    } else {
      yaml.append(indent).append("-\n");
      children(node, indent + "  ");
    }
  }

  /** What is plain is so in a block too; all else is text. */
  private static String scalar(Scalar scalar) {
    return scalar.plain() ? scalar.text() : DoubleQuoted.of(scalar.text());
  }
}
