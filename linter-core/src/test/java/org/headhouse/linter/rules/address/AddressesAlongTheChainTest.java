package org.headhouse.linter.rules.address;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Result;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 1, 2, 3 and so on along the chain: common practice, no source. Each unique: MODBUS over Serial
 * Line V1.02 §2.2.
 */
class AddressesAlongTheChainTest {

  /** Head House, Bay 2, Bay 3 and so on with these addresses, each unit of a type. */
  private static LineCheck of(String addresses) {
    List<String> each = List.of(addresses.split(" ", -1));
    SiteText text = new SiteText().unit("120 ohm", "10 m", "device-type: box");
    text.units(each.size() - 2, "10 m", "device-type: box");
    String site = text.unit("120 ohm", "", "device-type: box").toString();
    for (int i = each.size(); i > 0; i--) {
      site = site.replace("address: " + i + "\n", "address: @" + each.get(i - 1) + "\n");
    }
    return LineCheck.of(site.replace("@", "")).types("id: box, unit-load: 1/8");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 2 3     |",
        "1 2 5     | address.gap",
        "1 3 2     | address.order",
        "1 5 2     | address.gap, address.order",
        // A wrong address explains the gap and the order that come of it.
        "1 2 2     | address.duplicate",
        "1 4 4     | address.duplicate",
        "1 3 2 2   | address.duplicate",
        "1 250 3   | address.reserved",
        "1 2 250 4 | address.reserved",
        "1 255 2 3 | address.reserved",
        "1 0 2 3   | address.reserved",
        "2 3 4     | head.address",
        "2 1 3     | head.address",
        "3 2 1     | head.address",
        // Of several that are out of order, the first.
        "1 4 2 3   | address.order",
        "1 5 4 3 2 | address.order",
      })
  void oneMistakeIsReportedOnce(String addresses, String rules) {
    assertThat(String.join(", ", of(addresses).rules().stream().sorted().toList()))
        .isEqualTo(rules == null ? "" : rules);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 3 4   | 3 | no unit has address 2:          | give \"Bay 2\" address 2 and renumber those",
        "1 4 5   | 4 | no unit has addresses 2 to 3: | give \"Bay 2\" address 2 and renumber those",
        "1 2 4   | 4 | no unit has address 3:          | give \"Bay 3\" address 3 and renumber those",
        "1 2 9 4 | 4 | no unit has address 3; there is another gap further on: | give \"Bay 4\" address 3 and renumber those",
      })
  void theFirstGapIsReported(String addresses, String marked, String fact, String remedy) {
    assertReported("address.gap", of(addresses), marked, fact, remedy);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 3 2   | 2 | address 2 comes after address 3",
        "1 4 2 3 | 2 | address 2 comes after address 4",
        "1 2 4 3 | 3 | address 3 comes after address 4",
        "1 3 4 2 | 2 | address 2 comes after address 4",
      })
  void theFirstOutOfOrderIsReported(String addresses, String marked, String fact) {
    assertReported("address.order", of(addresses), marked, fact, "renumber them in chain order");
  }

  private static void assertReported(
      String rule, LineCheck check, String marked, String fact, String remedy) {
    assertThat(check.reportedBy(rule)).singleElement().asString().contains(fact, remedy);
    assertThat(check.marked(rule)).isEqualTo(marked);
  }

  /**
   * What is offered is free, the lowest first, and none twice; where it would not rise along the
   * chain, the units are to be numbered anew.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 2 2     | give \"Bay 3\" address 3",
        "1 2 2 4   | give \"Bay 3\" address 3",
        "1 2 2 3   | number the units in the order of the chain",
        "1 250 2   | number the units in the order of the chain",
        "1 2 1 3   | number the units in the order of the chain",
        // Out of order before.
        "1 4 3 3   | give \"Bay 4\" address 2",
        "1 4 4 5   | number the units in the order of the chain",
        "1 2 2 2   | give \"Bay 3\" address 3; give \"Bay 4\" address 4",
        "1 2 2 250 | give \"Bay 3\" address 3; give \"Bay 4\" address 4",
      })
  void freeAddressesAreOffered(String addresses, String remedies) {
    assertThat(of(addresses).results().stream().map(result -> result.message().remedy()))
        .containsExactly(remedies.split("; ", -1));
  }

  /** The highest address of a server is 247 (MODBUS over Serial Line V1.02 §2.2). */
  @Test
  void aFullLineHasNoFreeAddress() {
    StringBuilder addresses = new StringBuilder();
    for (int address = 1; address <= 247; address++) {
      addresses.append(address).append(' ');
    }
    assertThat(of(addresses + "248").reportedBy("address.reserved"))
        .singleElement()
        .asString()
        .contains("give \"Bay 248\" a line of its own");
    assertThat(
            of(addresses.toString().replace(" 100 ", " ") + "248").reportedBy("address.reserved"))
        .singleElement()
        .asString()
        .contains("number the units in the order of the chain");
    assertThat(
            of(addresses.toString().replace(" 247 ", " ") + "248").reportedBy("address.reserved"))
        .singleElement()
        .asString()
        .contains("give \"Bay 247\" address 247");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 2 9 4 | 8 | give \"Bay 3\" address 3",
        "1 2 9   | 8 | give \"Bay 3\" address 3",
        "1 2 9   | 3 | give \"Bay 3\" address 3",
        "1 2 3 4 | 3 | swap the address of \"Bay 4\" with that of a unit of another type",
        "1 2 3 4 | 4 |",
      })
  void anAddressAboveTheTypesLimit(String addresses, int limit, String remedy) {
    LineCheck check = of(addresses).types("id: box, address-limit: " + limit);
    assertThat(check.results().stream().map(result -> result.message().remedy()))
        .isEqualTo(remedy == null ? List.of() : List.of(remedy));
  }

  /** Why no unit has such an address: MODBUS over Serial Line V1.02 §2.2. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 2 0   | Modbus uses 0 for broadcasts",
        "1 2 248 | the Modbus standard reserves 248 to 255",
      })
  void aReservedAddress(String addresses, String reason) {
    assertThat(of(addresses).results().stream().map(result -> result.message().reason()))
        .containsExactly(reason);
  }

  /**
   * An address that is not understood may be the one that is missing; the order shows all the same.
   */
  @ParameterizedTest
  @CsvSource({"1 2 3 5, false", "1 2 4 3, true", "1 3 2 4, false"})
  void withAnAddressThatIsNotUnderstood(String addresses, boolean outOfOrder) {
    List<String> rules = of(addresses).with("address: 2", "address: two").rules();
    assertThat(rules).contains("schema.wrong-type").doesNotContain("address.gap");
    assertThat(rules.contains("address.order")).isEqualTo(outOfOrder);
  }

  /** What lies far from a head unit that is not there, or has another address, is out of order. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 2 4 3 | role: head | role: follower | head.missing, address.order",
        "1 3 2 4 | role: head | role: follower | head.missing, address.order",
        "1 2 3 4 | role: head | role: follower | head.missing",
        "5 2 4 3 | role: head | role: head     | head.address, address.order",
        "5 2 3 4 | role: head | role: head     | head.address",
      })
  void farFromTheHeadUnit(String addresses, String text, String other, String rules) {
    assertThat(of(addresses).with(text, other).rules())
        .filteredOn(rule -> rule.startsWith("head.") || rule.equals("address.order"))
        .containsExactlyInAnyOrder(rules.split(", "));
  }

  /** Those further on are known to a baseline and accepted one by one, so they are named. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "address.gap   | 1 3 4 5 | no unit has address 2: |",
        "address.gap   | 1 3 4 6 | no unit has address 2; there is another gap further on: | no unit has address 5",
        "address.gap   | 1 3 5 7 | no unit has address 2; there are 2 other gaps further on: | no unit has address 4; no unit has address 6",
        "address.order | 1 3 2 4 | comes after address 3 on the chain: | address 3 is used here, by \"Bay 2\"",
        "address.order | 1 3 2 5 4 | comes after address 3 on the chain; it happens once more further on: | address 3 is used here, by \"Bay 2\"; address 4 comes after address 5",
      })
  void furtherOnesAreRelated(String rule, String addresses, String fact, String related) {
    LineCheck check = of(addresses);
    assertThat(check.reportedBy(rule)).singleElement().asString().contains(fact);
    assertThat(check.results())
        .filteredOn(result -> result.rule().equals(rule))
        .flatExtracting(result -> result.related())
        .extracting(one -> one.text())
        .containsExactly(related == null ? new String[0] : related.split("; "));
  }

  /** All rules on addresses are mended by the same numbers. */
  @ParameterizedTest
  @CsvSource({"1 3 2", "1 2 4", "1 2 2", "1 250 3", "2 1 3", "1 0 2"})
  void theUnitsAreNumberedAlongTheChain(String addresses) {
    LineCheck check = of(addresses);
    Fix fix = requireNonNull(check.results().get(0).fix());
    assertThat(fix.kind()).isEqualTo(FixKind.SAFE);
    assertThat(fix.description()).isEqualTo("Number the units 1 to 3 along the chain");
    assertThat(fix.replacements()).hasSize(different(addresses));
  }

  private static int different(String addresses) {
    int different = 0;
    String[] each = addresses.split(" ", -1);
    for (int i = 0; i < each.length; i++) {
      different += each[i].equals(String.valueOf(i + 1)) ? 0 : 1;
    }
    return different;
  }

  @Test
  void aUnitCanHaveTheNumberOfItsLimit() {
    LineCheck check = of("1 2 2").types("id: box, unit-load: 1/8, address-limit: 3");
    assertThat(fixOf(check, "address.duplicate")).isNotNull();
  }

  /** Numbers that a unit cannot have, and a chain that begins with another than the head unit. */
  @Test
  void numberingIsNotOfferedWhereItCannotBe() {
    LineCheck limited = of("1 2 2 4").types("id: box, address-limit: 3");
    assertThat(limited.results()).isNotEmpty().extracting(Result::fix).containsOnlyNulls();
    LineCheck follower = of("1 2 2").with("role: head", "role: follower");
    assertThat(fixOf(follower, "address.duplicate")).isNull();
    LineCheck headSecond =
        follower.with("unit: Bay 2\n    role: follower", "unit: Bay 2\n    role: head");
    assertThat(fixOf(headSecond, "address.duplicate")).isNull();
    LineCheck faulty = of("1 2 2 4").with("address: 4", "address: four");
    assertThat(fixOf(faulty, "address.duplicate")).isNull();
  }

  private static @Nullable Fix fixOf(LineCheck check, String rule) {
    List<Result> found = check.results().stream().filter(one -> one.rule().equals(rule)).toList();
    assertThat(found).hasSize(1);
    return found.get(0).fix();
  }
}
