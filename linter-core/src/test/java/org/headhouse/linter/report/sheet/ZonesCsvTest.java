package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ZonesCsvTest {

  private static String csv(String site) {
    return Sheets.of(Stream.of(SiteInput.text("example.yaml", site)), Measure.METRIC, Paper.A4)
        .file("example-zones.csv");
  }

  /** Without a list, all units in the order of the chain. */
  @Test
  void theUnitsAreTheZonesOfASiteThatListsNone() {
    assertThat(csv(Example.SITE))
        .isEqualTo(
            """
            zone,address,role,device-type,ip\r
            Propagation,1,head,,\r
            Seedling North,2,follower,,\r
            Hardening Bay,3,follower,,\r
            """);
  }

  @Test
  void theListOfTheFileIsKeptInItsOrder() {
    String site =
        Example.with(
                "address: 2\n",
                "address: 2\n    device-type: sixteen-way\n    network: {ip: 192.168.40.12/24}\n")
            + "supervision: {link: ethernet, zones: [Hardening Bay, Seedling North, Elsewhere]}\n";
    assertThat(csv(site))
        .isEqualTo(
            """
            zone,address,role,device-type,ip\r
            Hardening Bay,3,follower,,\r
            Seedling North,2,follower,sixteen-way,192.168.40.12/24\r
            Elsewhere,,,,\r
            """);
  }

  /** OWASP, CSV Injection: what these signs start is a formula to a spreadsheet. */
  @ParameterizedTest
  @ValueSource(strings = {"=1+2", "+1", "-1 m", "@sum", "\\t=1", "\\r=1"})
  void nothingIsAFormula(String name) {
    String csv = csv(Example.with("Hardening Bay", "\"" + name + "\""));
    String field = read(csv).get(3).get(0);
    assertThat(field).startsWith("'").hasSizeGreaterThan(1);
  }

  /** RFC 4180, 2.5 to 2.7: read back by a reader of that grammar, names are what the file holds. */
  @Test
  void hostileNamesComeBackWhole() {
    String csv = csv(Hostile.site());
    List<List<String>> records = read(csv);
    assertThat(records).allSatisfy(fields -> assertThat(fields).hasSize(5));
    assertThat(records.stream().skip(1).map(fields -> fields.get(0)))
        .containsExactly(Hostile.QUOTES, Hostile.TURNED, Hostile.LONG);
    String odd = "a, \"b\"\r\nc";
    assertThat(
            read(csv(Hostile.site("t", odd, ",", "\"\""))).stream()
                .skip(1)
                .map(fields -> fields.get(0)))
        .containsExactly(odd, ",", "\"\"");
  }

  private static List<List<String>> read(String csv) {
    List<List<String>> records = new ArrayList<>();
    List<String> fields = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < csv.length(); i++) {
      char c = csv.charAt(i);
      if (quoted && c == '"' && csv.startsWith("\"\"", i)) {
        field.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && c == ',') {
        fields.add(field.toString());
        field.setLength(0);
      } else if (!quoted && csv.startsWith("\r\n", i)) {
        fields.add(field.toString());
        field.setLength(0);
        records.add(List.copyOf(fields));
        fields.clear();
        i++;
      } else {
        field.append(c);
      }
    }
    assertThat(field).as("after the last line").isEmpty();
    return records;
  }
}
