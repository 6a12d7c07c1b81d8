package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.headhouse.linter.bind.DeviceTypesBinder;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;

/** As for sites: a file that binds without a doubt is never asked of the schema. */
class DeviceTypesBinderAgreesWithSchemaTest {
  private static final List<String> TYPES =
      List.of(
          "format: 1",
          "device-types:",
          "  - id: eight-way",
          "    title: Eight-output climate controller",
          "    unit-load: 1/8",
          "    address-limit: 247",
          "    name-limit: 16",
          "    rise-time: 100 ns",
          "    baud-rates: [9600, 19200]",
          "    positive-terminal: B",
          "    default-address: 1",
          "    comm-module: needed",
          "    ethernet: true",
          "  - id: screen-drive",
          "    unit-load: 0.5",
          "    baud-rates: [1200]");
  private static final String[] VALUES =
      """
      1|0|-1|2|255|256|64|65|1.0|1.5|1e1|1e20|.inf|-.inf|.nan|0x10|0o17|010|32|32.0|33|0.5|.5|5.|-0.0
      ~|''|true|false|yes|none|A|B|G|b|needed|built-in|fitted|[]|{}|[9600]|[9600, 9600]|[9601]|['9600']
      [9600.0, 19200]|[[9600]]|{9600: 1}|1/8|1/0|0/8|01/8|1/1000|999/1|33/1|'1'|'0.125'|'0.0000000001'|'0'
      '33'|100 ns|100ns|100|0 ns|100 ps|100 ms|1234567890 ns|0.5 ns|eight-way|Eight|eight--way|a_b
      aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa|123456789012345|"a\\n"|1e-400|1e400
      0.0000000000000000000001|12345678901234567890|+1|1E2|0.1e1
      """
          .strip()
          .split("[|\n]");
  private static final String[] KEYS = {
    "id",
    "title",
    "unit-load",
    "rise-time",
    "ethernet",
    "nonsense",
    "format",
    "device-types",
    "baud-rates"
  };

  @Test
  void onMutatedFiles() {
    SchemaCheck schema = new SchemaCheck(FileKind.DEVICE_TYPES);
    YamlReader reader = new YamlReader(Limits.DEFAULT);
    Random random = new Random(485);
    int doubted = 0;
    for (int i = 0; i < 20_000; i++) {
      String text = mutated(random);
      Document document = reader.read(new SourceText("device-types.yaml", text));
      var root = document.root();
      if (root == null) {
        continue;
      }
      var bound = DeviceTypesBinder.bind(document.source(), root);
      boolean refused = !schema.explain(root).isEmpty();
      assertThat(bound.doubtful()).as(text).isEqualTo(refused);
      doubted += refused ? 1 : 0;
      if (!refused && bound.findings().isEmpty() && document.findings().isEmpty()) {
        assertThat(bound.model().isComplete()).as(text).isTrue();
      }
    }
    assertThat(doubted).isBetween(2_000, 19_000);
  }

  private static String mutated(Random random) {
    String[] lines = TYPES.toArray(String[]::new);
    for (int changes = 1 + random.nextInt(2); changes > 0; changes--) {
      int line = random.nextInt(lines.length);
      String value = VALUES[random.nextInt(VALUES.length)];
      int colon = lines[line].indexOf(':');
      switch (random.nextInt(8)) {
        case 0 -> lines[line] = "";
        case 1 -> lines[line] += "\n    " + KEYS[random.nextInt(KEYS.length)] + ": " + value;
        default -> lines[line] = lines[line].substring(0, Math.max(0, colon)) + ": " + value;
      }
    }
    return String.join("\n", lines) + "\n";
  }
}
