package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.headhouse.linter.Example;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;

/** A file that binds without a doubt is never asked of the schema, so the two must agree. */
class BinderAgreesWithSchemaTest {
  private static final List<String> VALUES =
      List.of(
          "1",
          "0",
          "-1",
          "256",
          "1.0",
          "1.5",
          "1e1",
          "1e20",
          "~",
          "''",
          "true",
          "yes",
          "none",
          "head",
          "local",
          "follower",
          "[]",
          "{}",
          "[A, B]",
          "[A, A]",
          "[light, light]",
          "[x]",
          "{light: head}",
          "40 m",
          "40",
          "40m",
          "04 AWG",
          "4 AWG",
          "41 AWG",
          "0.5 mm2",
          "120 ohm + 1 nF",
          "1 nF",
          "120 ohm+1nF",
          "10 ft",
          "10 V",
          "1234567890 m",
          "1.1234567890 m",
          "24 AWG ",
          "9600",
          "'9600'",
          "19200",
          "2026-03-14",
          "2026-3-14",
          "even",
          "planned",
          "A-b",
          "a-b",
          "Propagation",
          ".inf",
          "0x10",
          "0o17",
          "[[]]",
          "\"40 m\\n\"",
          "-5 degC",
          "crossed",
          "fitted",
          "inside",
          "{in: none}");
  private static final List<String> KEYS =
      List.of(
          "title",
          "customer",
          "traffic",
          "bias",
          "stub",
          "network",
          "vents",
          "pair",
          "supervision",
          "commissioning",
          "suppressions",
          "firmware",
          "device-type",
          "maximum-age",
          "nonsense",
          "repeater",
          "termination",
          "run-to-next",
          "surge-protection-to-next",
          "on-stale-readings",
          "maximum-temperature",
          "polling",
          "date",
          "unit",
          "stage");

  @Test
  void onMutatedFiles() {
    SchemaCheck schema = new SchemaCheck(FileKind.SITE);
    YamlReader reader = new YamlReader(Limits.DEFAULT);
    Random random = new Random(2026);
    int doubted = 0;
    for (int i = 0; i < 20_000; i++) {
      String text = mutated(random);
      Document document = reader.read(new SourceText("example.yaml", text));
      var root = document.root();
      if (root == null) {
        continue;
      }
      boolean doubtful = SiteBinder.bind(document.source(), root, DeviceTypes.NONE).doubtful();
      assertThat(doubtful).as(text).isEqualTo(!schema.explain(root).isEmpty());
      doubted += doubtful ? 1 : 0;
    }
    assertThat(doubted).isBetween(2_000, 19_500);
  }

  private static String mutated(Random random) {
    String text = Example.SITE;
    for (int changes = 1 + random.nextInt(2); changes > 0; changes--) {
      String[] lines = text.split("\n", -1);
      int line = random.nextInt(lines.length - 1);
      lines[line] =
          random.nextInt(3) == 0 ? withKey(lines[line], random) : withValue(lines[line], random);
      text = String.join("\n", lines);
    }
    return text;
  }

  private static String withValue(String line, Random random) {
    int colon = line.lastIndexOf(": ");
    String value = VALUES.get(random.nextInt(VALUES.size()));
    if (colon < 0 || random.nextInt(8) == 0) {
      return "";
    }
    int end = colon + 2;
    while (end < line.length() && ",]}".indexOf(line.charAt(end)) < 0) {
      end++;
    }
    return line.substring(0, colon + 2) + value + line.substring(end);
  }

  private static String withKey(String line, Random random) {
    String indent = " ".repeat(random.nextBoolean() ? 0 : 4);
    String key = KEYS.get(random.nextInt(KEYS.size()));
    return line + "\n" + indent + key + ": " + VALUES.get(random.nextInt(VALUES.size()));
  }
}
