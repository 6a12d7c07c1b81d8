package org.headhouse.linter.draft;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Random;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults in lists are told where they stand, all at once; what no list is never ends the tool. */
class FaultyListsTest {

  /** {@code |} stands for the end of a row. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '\0',
      value = {
        "name,cable|A,4 m|B~-",
        "title,cable|A,4 m|B,~1:1 no heading of the first row is \"name\"",
        "nmae,cable|A,4 m|B,~1:1 the heading \"nmae\" is not known: the column would be left out; write name",
        "name|A|B~1:1 no heading of the first row is \"cable-to-next\"",
        "name,cable,divice type|A,4 m,eight-way|B,,~1:12 the heading \"divice type\" is not known",
        "name,cable,length|A,4 m,4 m|B~1:12 the heading \"length\" names the column cable-to-next again",
        "name,cable|A,4 m~2:1 the list has 1 unit",
        "name,cable~1:1 the list has no unit",
        "||~1:1 the list has no unit",
        "name,cable|,4 m|B,~2:1 the unit has no name",
        "name,cable|A,4 m|a,4 m|B~3:1 the name \"a\" is used twice, first for unit 1 of the list",
        "name,cable|A,4|B~2:3 the length \"4\" has no unit",
        "name,cable|A,4 yd|B~2:3 the length \"4 yd\" is not understood",
        "name,cable|A,-4 m|B~2:3 the length \"-4 m\" is not understood",
        "name;cable|A;1,200 m|B~2:3 the length \"1,200 m\" can be read in two ways",
        "name,cable|A,1200,5 m|B~2:3 the length \"1200\" has no unit",
        "name,cable|A,4 m,5 m|B~2:7 the cell \"5 m\" has no heading",
        "name,cable|A,4 m|B,5 m~3:3 the last unit has 5 m of cable to the next",
        "name,cable,type|A,4 m,eightway|B~2:7 the device type \"eightway\" is not known: polarity, load and communication module depend on it; write eight-way, or",
        "name,cable,type|A,4 m,Eight Way|B~2:7 the device type \"Eight Way\" is not known",
        "name,cable|A \"x\",4 m|B~2:1 there is a quote inside the cell",
        "name,cable|\"A\" x,4 m|B~2:5 text follows the quotes around the cell \"A\"",
        "name,cable|\"A,4 m|B~2:1 the quote that starts here is never closed",
        "name,cable|\uD83C\uDF31\uD83C\uDF31,4|B~2:4 the length \"4\" has no unit",
      })
  void oneFault(String list, String wanted) {
    String text = list.replace('|', '\n');
    if (wanted.equals("-")) {
      assertThat(Lists.made(text)).contains("- unit: A\n");
      return;
    }
    String[] placeAndFact = wanted.split(" ", 2);
    assertThat(Lists.faults(text))
        .first()
        .asString()
        .startsWith("units.csv:" + placeAndFact[0] + ": error: " + placeAndFact[1]);
  }

  @Test
  void allFaultsAreToldAtOnceInTheirOrder() {
    assertThat(
            Lists.faults(
                """
                name,cable-to-next,device-type
                Propagation,42,eigth-way
                ,12 m,
                "Bay "2"",12 m,
                propagation,5 m,
                """))
        .extracting(fault -> fault.split(": error: ", 2)[0])
        .containsExactly(
            "units.csv:2:13",
            "units.csv:2:16",
            "units.csv:3:1",
            "units.csv:4:7",
            "units.csv:5:1",
            "units.csv:5:13");
  }

  @Test
  void moreUnitsThanAddresses() {
    String list = "name,cable\n" + unitRows(247) + "\n" + unitRows(1).replace("Bay", "Shed");
    assertThat(Lists.faults(list))
        .singleElement()
        .asString()
        .startsWith("units.csv:250:1: error: the list has 248 units");
    assertThat(Lists.made("name,cable\n" + unitRows(247))).contains("address: 247\n");
  }

  private static String unitRows(int number) {
    StringBuilder rows = new StringBuilder();
    for (int i = 1; i <= number; i++) {
      rows.append("Bay ").append(i).append(",\n");
    }
    return rows.toString();
  }

  /** The é of Latin 1 is byte 14; UTF-16 starts with its mark. */
  @ParameterizedTest
  @CsvSource({"ISO-8859-1, 2:4, byte 14 (hexadecimal e9)", "UTF-16, 1:1, byte 0 (hexadecimal fe)"})
  void listsThatAreNotUtf8(String charset, String place, String fact) {
    byte[] bytes = "name,cable\nCafé,4 m\nB,".getBytes(Charset.forName(charset));
    assertThat(Lists.faults((Draft.Refused) Lists.draft(bytes)))
        .singleElement()
        .asString()
        .startsWith("units.csv:" + place + ": error: " + fact + " is not UTF-8");
  }

  @Test
  void aListThatIsTooLarge() {
    assertThat(Lists.faults("name,cable\n" + " ".repeat(1 << 20)))
        .containsExactly(
            "units.csv:1:1: error: the file is larger than 1048576 bytes: no list of units is as"
                + " long, and the file is not read; write one row for each unit of one line");
  }

  /** Bytes without any order, and lists with single characters replaced. */
  @Test
  void noBytesEndTheTool() {
    Drafting drafting =
        new Drafting(
            Lists.settings("elm-row", null),
            DeviceTypes.NONE,
            SitePolicy.DEFAULT,
            new Limits(4000, 64, 1000));
    String sound =
        "name,cable-to-next,device-type\nPropagation,42 m,eight-way\r\n\"B, 2\",3 ft,\nC;\n";
    String marks = "\",;\r\n m'4 #\u0000\uFEFF\u2028é\uD83C";
    double made =
        RandomCases.share(
            20_000,
            random -> {
              byte[] bytes = new byte[random.nextInt(200)];
              random.nextBytes(bytes);
              if (random.nextBoolean()) {
                StringBuilder text = new StringBuilder(sound);
                for (int i = random.nextInt(4); i > 0; i--) {
                  char mark = marks.charAt(random.nextInt(marks.length()));
                  text.setCharAt(random.nextInt(text.length()), mark);
                }
                bytes =
                    text.toString().getBytes(random.nextInt(20) == 0 ? ISO_8859_1 : anyUtf(random));
              }
              Draft draft = drafting.draft("units.csv", bytes);
              if (draft instanceof Draft.Made one) {
                assertThat(one.text()).startsWith("# Drafted");
                return true;
              }
              assertThat(((Draft.Refused) draft).faults()).isNotEmpty();
              return false;
            });
    assertThat(made).isBetween(0.05, 0.5);
  }

  private static Charset anyUtf(Random random) {
    return random.nextInt(20) == 0 ? UTF_16 : UTF_8;
  }

  /** A single line of a megabyte with a fault in every cell is told in time. */
  @Test
  void veryLongLines() {
    String list = "name,cable\n" + "A,".repeat(500_000);
    assertThat(Lists.faults(list)).hasSizeBetween(1, 1000);
    String many = "name,cable\n" + "A\",".repeat(300_000);
    assertThat(Lists.faults(many)).hasSize(1000);
    assertThat(List.of(list.length(), many.length())).allMatch(length -> length < 1 << 20);
  }
}
