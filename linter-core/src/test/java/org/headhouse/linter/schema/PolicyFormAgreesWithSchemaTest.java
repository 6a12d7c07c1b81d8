package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.policy.PolicyForm;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;

/** As for sites: what the schema refuses is never taken for right without it. */
class PolicyFormAgreesWithSchemaTest {
  private static final List<String> POLICY =
      List.of(
          "format: 1",
          "rule-set: 1",
          "baseline: linter-baseline.jsonl",
          "rules:",
          "  firmware.mixed:",
          "    level: warning",
          "  conductors.ground: &ground",
          "    level: error",
          "    parameters: {landed: head}",
          "  bias.weak:",
          "    parameters:",
          "      margin: 20 mV",
          "      often: 3",
          "  address.gap: *ground");
  private static final String[] VALUES =
      """
      1|0|-1|2|9999|10000|1.0|1e1|.inf|.nan|0x1|0o1|01|+1|~|''|' '|"1"|'1'|true|false|yes|error|warning
      note|none|Error|loud|[]|{}|[a]|[1]|[[a]]|{level: note}|{level: 1}|{parameters: {a: b}}|{1: 2}
      {parameters: {a: [b]}}|{parameters: {a: ~}}|{parameters: []}|{a: b}|*ground|text|1.5|{~: a}|{'': a}
      """
          .strip()
          .split("[|\n]");
  private static final String[] KEYS = {
    "format",
    "rule-set",
    "rules",
    "baseline",
    "level",
    "parameters",
    "nonsense",
    "<<",
    "1",
    "~",
    "''"
  };

  @Test
  void onMutatedFiles() {
    SchemaCheck schema = new SchemaCheck(FileKind.POLICY);
    double right =
        RandomCases.share(
            20_000,
            random -> {
              String text = mutated(random);
              var root = read(text).root();
              if (root == null || !PolicyForm.isRight(new Cursor(root, null))) {
                return false;
              }
              assertThat(schema.explain(root)).as(text).isEmpty();
              return true;
            });
    assertThat(right).isBetween(0.05, 0.9);
  }

  @Test
  void anOrdinaryPolicyNeedsNoSchema() {
    var root = read(String.join("\n", POLICY)).root();
    assertThat(PolicyForm.isRight(new Cursor(Objects.requireNonNull(root), null))).isTrue();
  }

  private static Document read(String text) {
    return new YamlReader(Limits.DEFAULT).read(new SourceText("linter.yaml", text));
  }

  private static String mutated(Random random) {
    String[] lines = POLICY.toArray(String[]::new);
    for (int changes = 1 + random.nextInt(2); changes > 0; changes--) {
      int line = random.nextInt(lines.length);
      String value = VALUES[random.nextInt(VALUES.length)];
      int colon = lines[line].indexOf(':');
      switch (random.nextInt(8)) {
        case 0 -> lines[line] = "";
        case 1 -> lines[line] += "\n" + KEYS[random.nextInt(KEYS.length)] + ": " + value;
        case 2 -> lines[line] += "\n    " + KEYS[random.nextInt(KEYS.length)] + ": " + value;
        default -> lines[line] = lines[line].substring(0, Math.max(0, colon)) + ": " + value;
      }
    }
    return String.join("\n", lines) + "\n";
  }
}
