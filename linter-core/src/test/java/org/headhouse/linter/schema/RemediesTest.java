package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who writes what a remedy proposes is rid of the result. */
class RemediesTest {
  private static final String STAGE = "stage: planned";

  private static String site(String text, String faulty) {
    return Example.with(text, faulty.replace("\\n", "\n"));
  }

  /** The one result of the first stages; what follows from the values is another matter. */
  private static Result only(String site) {
    List<Result> results = fromReading(site);
    assertThat(results).as(site).hasSize(1);
    return results.get(0);
  }

  private static List<Result> fromReading(String site) {
    return Checks.of(site).results().stream()
        .filter(result -> result.rule().matches("(schema|yaml)\\..*"))
        .toList();
  }

  /** The text with the value at a region replaced. */
  private static String replaced(String text, Region region, String value) {
    String[] lines = text.split("\n", -1);
    String line = lines[region.startLine() - 1];
    String space = region.startColumn() == region.endColumn() ? " " : "";
    lines[region.startLine() - 1] =
        line.substring(0, region.startColumn() - 1)
            + space
            + value
            + line.substring(region.endColumn() - 1);
    return String.join("\n", lines);
  }

  /** The values that a remedy offers, as they are to be written. */
  private static List<String> offered(String remedy) {
    assertThat(remedy).startsWith("write ");
    String values =
        remedy.replaceFirst("write (for example )?", "").replaceFirst(" (in|without) quotes$", "");
    return Arrays.asList(values.split(", (?![^\\[]*\\])| or ", -1));
  }

  /** A bare length is offered in the unit of the file first; nobody can tell which one is meant. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "cable-to-next: 60 m | write 40 m or 40 ft",
        "cable-to-next: 197 ft | write 40 ft or 40 m",
        "cable-to-next: 197ft | write 40 ft or 40 m",
      })
  void lengthsAreOfferedInTheUnitOfTheFile(String other, String remedy) {
    String site =
        Example.with("cable-to-next: 40 m", "cable-to-next: 40")
            .replace("cable-to-next: 60 m", other);
    assertThat(site).contains(other);
    assertThat(only(site).message().remedy()).isEqualTo(remedy);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // numbers where text is wanted
        "termination: none|termination: none\\n    firmware: 2.4|is the number 2.4|write \"2.4\" in quotes",
        "termination: none|termination: none\\n    firmware: true|is the value true|write \"true\" in quotes",
        "site: example|site: 12|is the number 12|write \"12\" in quotes",
        "unit: Seedling North|unit: 3|\"unit\" is the number 3|write \"3\" in quotes",
        // text where a number or a truth value is wanted
        "address: 2|address: \"2\"|is the text \"2\"|write 2 without quotes",
        "baud: 9600|baud: \"9600\"|cannot be the text \"9600\"|write 9600 without quotes",
        "stop-bits: 1|stop-bits: '1'|cannot be the text \"1\"|write 1 without quotes",
        "shielded: true|shielded: \"true\"|is the text \"true\"|write true without quotes",
        "shielded: true|shielded: 1|is the number 1|write true or false",
        // words
        "stage: planned|stage: planed|cannot be \"planed\"|write planned",
        "role: head|role: Head|cannot be \"Head\"|write head",
        "role: head|role: master|cannot be \"master\"|write head or follower",
        "role: head|role:|has no value|write head or follower",
        "format: 1|format: 2|cannot be 2|write 1",
        "baud: 9600|baud: 9601|cannot be 9601|write 1200, 2400, 4800, 9600, 19200, 38400, 57600 or 115200",
        "[A, B, G]|[A, B, D]|item 3 of \"conductors\" cannot be \"D\"|write A, B, G or C",
        // quantities
        "termination: none|termination: 120|has no unit after 120|write 120 ohm",
        "termination: none|termination: 120 Ohm|cannot be \"120 Ohm\"|write 120 ohm",
        "termination: none|termination: 120R|cannot be \"120R\"|write 120 ohm",
        "termination: none|termination: None|cannot be \"None\"|write none",
        "termination: none|termination: false|is the value false|write none",
        "termination: none|termination: 0|has no unit after 0|write none",
        "termination: none|termination: 120\u03A9+1nf|cannot be|write 120 ohm + 1 nF",
        "termination: none|termination: yes please|cannot be|write for example none, 120 ohm or 120 ohm + 1 nF",
        "cable-to-next: 40 m|cable-to-next: 40|has no unit after 40|write 40 m or 40 ft",
        "cable-to-next: 40 m|cable-to-next: 40.|has no unit after 40.|write 40 m or 40 ft",
        "cable-to-next: 40 m|cable-to-next: 120 metres|cannot be \"120 metres\"|write 120 m",
        "cable-to-next: 40 m|cable-to-next: 120 Feet|cannot be \"120 Feet\"|write 120 ft",
        "cable-to-next: 40 m|cable-to-next: 1,5 m|cannot be \"1,5 m\"|write 1.5 m",
        "cable-to-next: 40 m|cable-to-next: 1,500 m|cannot be \"1,500 m\"|write for example 42 m or 120 ft",
        "cable-to-next: 40 m|cable-to-next: -4 m|cannot be \"-4 m\"|write for example 42 m or 120 ft",
        "cable-to-next: 40 m|cable-to-next:|has no value|write for example 42 m or 120 ft",
        "gauge: 24 AWG|gauge: 24|has no unit after 24|write 24 AWG",
        "gauge: 24 AWG|gauge: awg 24|cannot be \"awg 24\"|write 24 AWG",
        "gauge: 24 AWG|gauge: 0.5|has no unit after 0.5|write 0.5 mm2",
        "gauge: 24 AWG|gauge: 0.5 mm\u00B2|cannot be|write 0.5 mm2",
        "impedance: 120 ohm|impedance: '120'|cannot be the text \"120\"|write 120 ohm",
        // lists
        "[A, B, G]|A|\"conductors\" is \"A\"|write [A]",
        "[A, B, G]|A B G|\"conductors\" is \"A B G\"|write [A, B, G]",
        "[A, B, G]|A, B, G]|\"conductors\" is \"A, B, G]\"|write [A, B, G]",
        "[A, B, G]|all|\"conductors\" is \"all\"|write for example [A, B, G] or [A, B]",
        "[light, temperature]|light|\"readings\" is \"light\"|write [light]",
        // ids
        "site: example|site: Alder Brook|cannot be \"Alder Brook\"|write alder-brook",
        "site: example|site: alder_brook|cannot be \"alder_brook\"|write alder-brook",
        "site: example|site: \u00C4|cannot be|write for example alder-brook"
      })
  void ofValuesInTheExample(String text, String faulty, String fact, String remedy) {
    assertMended(site(text, faulty), fact, remedy);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "commissioning: {date: 2026-03-14, by: }|\"by\" has no value|write for example Robin Oakfield or R.O.",
        "commissioning: {date: 2026-03-14, by: ~}|\"by\" has no value|write for example Robin Oakfield or R.O.",
        "commissioning: {date: 2026-03-14, by: ''}|\"by\" is empty|write for example Robin Oakfield or R.O.",
        "commissioning: {date: 2026-3-4, by: A}|cannot be \"2026-3-4\"|write 2026-03-04",
        "commissioning: {date: 2026/03/14, by: A}|cannot be|write 2026-03-14",
        "commissioning: {date: 20260314, by: A}|is the number 20260314|write 2026-03-14",
        "commissioning: {date: 12.5.2026, by: A}|cannot be \"12.5.2026\"|write for example 2026-03-14",
        "commissioning: {date: 2026-03-14, by: A, measured: {idle-voltage: 0.24}}|has no unit after 0.24|write 0.24 V",
        "commissioning: {date: 2026-03-14, by: A, measured: {idle-voltage: 240 mv}}|cannot be|write 240 mV",
        "supervision: {link: serial, zones: Propagation}|\"zones\" is \"Propagation\"|write [Propagation]",
        "supervision: {link: serial, zones: [], polling: {every: 20 sec, registers: 60}}|cannot be|write 20 s",
        "supervision: {link: serial, zones: [], polling: {every: 20 S, registers: 60}}|cannot be|write 20 s",
        "suppressions: [{rule: x, justification: in store, until: 2027-4-1}]|cannot be|write 2027-04-01"
      })
  void ofValuesInOtherKeys(String keys, String fact, String remedy) {
    assertMended(site(STAGE, STAGE + "\n" + keys), fact, remedy);
  }

  private static void assertMended(String site, String fact, String remedy) {
    Result result = only(site);
    assertThat(result.message().fact()).endsWith(fact.startsWith("\"") ? fact : "").contains(fact);
    assertThat(result.message().remedy()).isEqualTo(remedy);
    for (String value : offered(remedy)) {
      String mended = replaced(site, result.location().region(), value);
      assertThat(fromReading(mended)).as(mended).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "address: 2, address: 300, cannot be 300",
    "address: 2, address: -1, cannot be -1",
    "address: 2, address: three, is \"three\"",
    "address: 2, address: 2.5, is the number 2.5",
    "address: 2, address: '300', is the text \"300\"",
    "address: 2, address: [2], is a list",
    "address: 2, address:, has no value"
  })
  void ofWholeNumbersAreTheirRange(String text, String faulty, String fact) {
    String site = site(text, faulty);
    Result result = only(site);
    assertThat(result.message().fact()).isEqualTo("\"address\" " + fact);
    assertThat(result.message().remedy()).isEqualTo("write a whole number from 1 to 247");
    for (String value : List.of("0", "255")) {
      assertThat(fromReading(replaced(site, result.location().region(), value))).isEmpty();
    }
  }

  /** Who proposes an address proposes one that is taken, so the range is told. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "role: follower|it says what the unit is on the line|add \"role\": head or follower",
        "address: 2|it is the address that is set on the unit|add \"address\", a whole number from 1 to 247",
        "baud: 9600,|it is the rate that every unit is set to, in bit/s|add \"baud\", for example baud: 9600",
        "parity: even,|it is the parity that every unit is set to|add \"parity\": even, odd or none",
        "stop-bits: 1,|it is the stop bits that every unit is set to|add \"stop-bits\": 1 or 2",
        "gauge: 24 AWG,|it is the AWG number|add \"gauge\", for example gauge: 24 AWG",
        "shielded: true,|it says whether the cable has a shield|add \"shielded\": true or false"
      })
  void ofMissingKeys(String line, String reason, String remedy) {
    String site = Example.SITE.replaceFirst("(?m)^ +" + line + "\n|" + line + " ", "");
    Result result = only(site);
    assertThat(result.rule()).isEqualTo("schema.missing-key");
    assertThat(result.message().reason()).startsWith(reason).doesNotContain(":", ";");
    assertThat(result.message().remedy()).isEqualTo(remedy);
    for (String entry : entries(remedy)) {
      String mended = withEntry(site, result.location().region(), entry);
      assertThat(fromReading(mended)).as(mended).isEmpty();
    }
  }

  /** The entries that a remedy offers. */
  private static List<String> entries(String remedy) {
    String key = remedy.replaceFirst("add \"([^\"]+)\".*", "$1");
    String rest = remedy.substring(("add \"" + key + "\"").length());
    if (rest.startsWith(", for example ")) {
      return List.of(rest.substring(", for example ".length()));
    }
    List<String> entries = new ArrayList<>();
    for (String value :
        rest.replaceFirst(": |, a whole number from ", "").split(", | or | to ", -1)) {
      entries.add(key + ": " + value);
    }
    return entries;
  }

  /** The text with an entry in front of the first key of the block whose owner is pointed at. */
  private static String withEntry(String text, Region owner, String entry) {
    String[] lines = text.split("\n", -1);
    int at = owner.startLine() - 1;
    String key = lines[at].substring(owner.startColumn() - 1, owner.endColumn() - 1);
    lines[at] =
        lines[at].contains(key + ": {")
            ? lines[at].replace(key + ": {", key + ": {" + entry + ", ")
            : lines[at] + "\n" + " ".repeat(owner.startColumn() - 1) + entry;
    return String.join("\n", lines);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''|the file is empty",
        "# only a comment|the file is empty",
        "just text|the file is \"just text\"",
        "- a list|the file is a list"
      })
  void ofFilesWithoutKeysSayHowToStart(String text, String fact) {
    Result result = only(text + "\n");
    assertThat(result.message().fact()).isEqualTo(fact);
    assertThat(result.message().remedy()).isEqualTo("start with format: 1 and site: <name>");
    assertThat(fromReading("format: 1\nsite: example\n"))
        .isNotEmpty()
        .allMatch(one -> one.rule().equals("schema.missing-key"));
  }

  /** A plausible number would prove a line that nobody has measured. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "measured: {pair-resistance: '?'}",
        "measured: {pair-resistance: }",
        "measured: {idle-voltage: ~}",
        "measured: {idle-voltage: n/a}",
        "measured: {elsewhere: [{at: Hardening Bay, pair-resistance: tbd}]}",
        "storm-response-seen: [{unit: Hardening Bay, limit: 12 m/s, closed-in: '?'}]"
      })
  void noExampleOfWhatHasToBeMeasured(String keys) {
    assertThat(
            Checks.of(Example.SITE + "commissioning: {date: 2026-03-14, by: A, " + keys + "}\n")
                .results())
        .filteredOn(result -> result.rule().startsWith("schema."))
        .singleElement()
        .satisfies(
            result ->
                assertThat(result.message().remedy())
                    .isEqualTo("measure it, and write it as a number and a unit"));
  }
}
