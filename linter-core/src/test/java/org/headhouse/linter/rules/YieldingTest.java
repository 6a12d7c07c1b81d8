package org.headhouse.linter.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One mistake gives one result: a rule is silent where another one reports the cause. */
class YieldingTest {
  private static final String TYPES =
      """
      format: 1
      device-types:
        - {id: small, address-limit: 63}
        - {id: heavy, unit-load: 32}
        - {id: laden, unit-load: 30}
        - {id: on-a, positive-terminal: A}
        - {id: on-b, positive-terminal: B}
      """;

  /** Takes two files: {@link SitesOfOneCustomerTest}. */
  private static final String TWO_FILES = "site.duplicate-id";

  private static final String KEPT_FREE =
      "format: 1\nrule-set: 1\nrules: {address.kept-free: {parameters: {ranges: [20, 64, 250]}}}\n";
  private static final String PATTERN =
      "format: 1\nrule-set: 1\nrules: {name.pattern: {parameters: {pattern: '[A-Z][A-Za-z ]+'}}}\n";

  private static final String LINE = "resistors: 510 ohm, supply: 5 V -> resistors: %s, supply: %s";
  private static final String TRAFFIC =
      "120 ohm}, -> 120 ohm}, traffic: {broadcast: {registers: %d, every: %s}},";
  private static final String STATION_AT_SEEDLING = "at: Propagation -> at: Seedling North";
  private static final String NO_HEAD = "role: head -> role: follower";
  private static final String TWO_HEADS =
      "Hardening Bay\n    role: follower -> Hardening Bay\n    role: head";
  private static final String SEEDLING_IS_LOCAL =
      "outdoor: {light: head, temperature: head} -> outdoor: {light: local, temperature: local}";

  /** At the end of the site. */
  private static String added(String block) {
    return " -> " + block;
  }

  private static String zones(String names) {
    return added("supervision: {link: serial, zones: [" + names + "]}\n");
  }

  private static String record(String more) {
    return added("commissioning: {date: 2026-03-14, by: R.O., " + more + "}\n");
  }

  private static final String RECORD_GONE = "commissioning: -> remarks:";

  private static final String COMMISSIONED = "stage: planned -> stage: commissioned";

  private static Mistake mistake(String rule, String... edits) {
    return new Mistake(rule, "", "", List.of(edits), List.of());
  }

  /** What distorts the figures of a segment, or hides them. */
  private static Mistake ofComputedVoltages(Mistake mistake) {
    return mistake
        .yieldsTo("termination.undeclared", "    termination: none\n -> ")
        .yieldsTo("termination.mid-line", "termination: none -> termination: 120 ohm")
        .yieldsTo("cable.length-unknown", "    cable-to-next: 60 m\n -> ")
        .yieldsTo("cable.too-long", "cable-to-next: 60 m -> cable-to-next: 1300 m")
        .yieldsTo("segment.overloaded", "address: 2\n -> address: 2\n    device-type: heavy\n")
        .yieldsTo(
            "bias.several",
            "supply: 4.8 V} -> supply: 4.8 V}, {at: Hardening Bay, resistors: 560 ohm, supply: 5 V}");
  }

  static Stream<Case> cases() {
    return Stream.of(
            mistake("address.beyond-limit", "address: 3 -> address: 64\n    device-type: small")
                .yieldsTo("address.reserved", "address: 64 -> address: 250"),
            mistake("address.gap", "address: 3 -> address: 4")
                .yieldsTo("head.address", "address: 1 -> address: 5")
                .yieldsTo("address.duplicate", "address: 2 -> address: 1")
                .yieldsTo("address.reserved", "address: 2 -> address: 250")
                .yieldsTo(
                    "address.beyond-limit", "address: 2 -> address: 65\n    device-type: small"),
            mistake("address.gap", "address: 3 -> address: 4")
                .withPolicy(KEPT_FREE)
                .yieldsTo("address.kept-free", "address: 2 -> address: 20"),
            mistake("address.order", "address: 2 -> address: 90")
                .yieldsTo(
                    "head.missing",
                    NO_HEAD,
                    "address: 1\n -> address: 2\n",
                    "address: 90 -> address: 1")
                .yieldsTo("head.duplicate", TWO_HEADS)
                .yieldsTo(
                    "head.not-first",
                    "role: head\n    address: 1 -> role: follower\n    address: 2",
                    "role: follower\n    address: 90 -> role: head\n    address: 1")
                .yieldsTo("head.address", "address: 1 -> address: 4", "address: 90 -> address: 2")
                .yieldsTo("address.duplicate", "address: 3 -> address: 1")
                .yieldsTo("address.reserved", "address: 3 -> address: 0")
                .yieldsTo(
                    "address.beyond-limit", "address: 3 -> address: 65\n    device-type: small"),
            mistake("address.order", "address: 2 -> address: 90")
                .withPolicy(KEPT_FREE)
                .yieldsTo("address.kept-free", "address: 3 -> address: 20"),
            mistake("address.kept-free", "address: 3 -> address: 20")
                .withPolicy(KEPT_FREE)
                .yieldsTo("head.address", "address: 20 -> address: 3", "address: 1 -> address: 20")
                .yieldsTo("address.reserved", "address: 20 -> address: 250")
                .yieldsTo(
                    "address.beyond-limit", "address: 20 -> address: 64\n    device-type: small"),
            mistake("head.address", "address: 1 -> address: 4")
                .yieldsTo("head.duplicate", TWO_HEADS),
            mistake(
                    "head.not-first",
                    NO_HEAD,
                    "Seedling North\n    role: follower -> Seedling North\n    role: head")
                .yieldsTo("head.duplicate", TWO_HEADS),
            mistake("name.confusable", "Seedling North -> Bay 0", "Hardening Bay -> Bay O")
                .yieldsTo("name.duplicate", "Bay 0 -> Bay O"),
            mistake("name.pattern", "unit: Hardening Bay -> unit: hardening bay")
                .withPolicy(PATTERN)
                .yieldsTo("name.unreadable", "unit: hardening bay -> unit: ' hardening bay'"),
            mistake("station.not-at-head", STATION_AT_SEEDLING)
                .yieldsTo("head.missing", NO_HEAD)
                .yieldsTo("head.duplicate", TWO_HEADS),
            mistake("outdoor.not-from-head", SEEDLING_IS_LOCAL)
                .yieldsTo("station.not-at-head", STATION_AT_SEEDLING),
            mistake("outdoor.not-from-head", "temperature: head} -> temperature: local}")
                .yieldsTo(
                    "head.missing",
                    "temperature: local}\n    cable-to-next: 60 m -> temperature: head}\n    cable-to-next: 60 m",
                    NO_HEAD),
            mistake("outdoor.head-not-local", "light: local -> light: none")
                .yieldsTo("head.missing", NO_HEAD)
                .yieldsTo("head.duplicate", TWO_HEADS)
                .yieldsTo("station.not-at-head", STATION_AT_SEEDLING),
            mistake(
                    "outdoor.too-old",
                    "temperature]} -> temperature], maximum-age: 4 s}",
                    TRAFFIC.formatted(12, "5 s"))
                .yieldsTo(
                    "traffic.overrun",
                    "registers: 12, every: 5 s -> registers: 100, every: 100 ms"),
            mistake(
                    "outdoor.stale-time",
                    TRAFFIC.formatted(12, "5 s"),
                    "temperature: head}\n    cable-to-next: 60 m -> temperature: head}\n    vents: roof\n"
                        + "    on-stale-readings: close\n    stale-after: 5 s\n    cable-to-next: 60 m")
                .yieldsTo(
                    "traffic.overrun", "registers: 12, every: 5 s -> registers: 100, every: 100 ms")
                .yieldsTo(
                    "outdoor.closes-too-late",
                    "temperature]} -> temperature], averaging: 10 s, close-within: 15 s}"),
            mistake("termination.missing-at-end", "termination: 120 ohm -> termination: none")
                .yieldsTo("termination.undeclared", "    termination: none\n -> "),
            mistake("termination.mismatch", "termination: 120 ohm -> termination: 180 ohm")
                .yieldsTo(
                    "termination.mid-line",
                    "termination: 180 ohm -> termination: 120 ohm",
                    "termination: none -> termination: 180 ohm")
                .yieldsTo("driver.overloaded", "termination: 180 ohm -> termination: 60 ohm"),
            mistake(
                    "driver.overloaded",
                    "cable-to-next: 40 m -> cable-to-next: 2 m",
                    "cable-to-next: 60 m -> cable-to-next: 2 m",
                    "address: 2\n -> address: 2\n    device-type: laden\n")
                .yieldsTo("segment.overloaded", "device-type: laden -> device-type: heavy")
                .yieldsTo("bias.out-of-range", "510 ohm -> 400 ohm"),
            mistake(
                    "bias.missing",
                    ", bias: [{at: Propagation, resistors: 510 ohm, supply: 5 V}]} -> }")
                .yieldsTo(
                    "reference.unknown",
                    "120 ohm}} -> 120 ohm}, bias: [{at: Propagatoin, resistors: 510 ohm, supply: 5 V}]}"),
            mistake(
                    "bias.missing",
                    "  - unit: Hardening Bay -> "
                        + "  - repeater: Road\n    termination: {in: 120 ohm, out: 120 ohm}\n"
                        + "    cable-to-next: 20 m\n  - unit: Hardening Bay")
                .yieldsTo(
                    "bias.several",
                    "supply: 5 V}] -> supply: 5 V}, "
                        + "{at: Road, side: in, resistors: 510 ohm, supply: 5 V}]"),
            mistake("conductors.ground", "[A, B]\n -> [A, B, G]\n")
                .yieldsTo("head.missing", NO_HEAD)
                .yieldsTo("head.duplicate", TWO_HEADS),
            mistake(
                    "conductors.polarity",
                    "address: 1 -> address: 1\n    device-type: on-b",
                    "address: 2 -> address: 2\n    device-type: on-a")
                .yieldsTo("head.missing", NO_HEAD)
                .yieldsTo("head.duplicate", TWO_HEADS),
            mistake("bias.out-of-range", LINE.formatted("680 ohm", "5.5 V"))
                .yieldsTo("bias.weak", "supply: 5.5 V -> supply: 3 V"),
            ofComputedVoltages(mistake("bias.weak", LINE.formatted("640 ohm", "4.8 V")))
                .yieldsTo("bias.out-of-range", "640 ohm, supply: 4.8 V -> 680 ohm, supply: 5.4 V")
                .yieldsTo("driver.overloaded", "termination: 120 ohm -> termination: 12 ohm"),
            ofComputedVoltages(
                    mistake(
                        "signal.weak",
                        LINE.formatted("450 ohm", "4.8 V"),
                        "baud: 9600 -> maximum-temperature: 60 degC, baud: 9600",
                        "cable-to-next: 40 m -> cable-to-next: 920 m"))
                .yieldsTo("driver.overloaded", "termination: 120 ohm -> termination: 12 ohm"),
            ofComputedVoltages(
                    mistake(
                        "signal.disturbed",
                        LINE.formatted("510 ohm", "4.8 V"),
                        "baud: 9600 -> baud: 115200",
                        "cable-to-next: 40 m -> cable-to-next: 26 m",
                        "termination: 120 ohm\n    outdoor: {light: head -> termination: 120 ohm + 100 pF\n    outdoor: {light: head"))
                .yieldsTo(
                    "termination.missing-at-end",
                    "termination: 120 ohm + 100 pF -> termination: none")
                .yieldsTo("stub.too-long", "address: 2\n -> address: 2\n    stub: 25 m\n")
                .yieldsTo(
                    "driver.overloaded", "termination: 120 ohm + 100 pF -> termination: 12 ohm")
                .yieldsTo(
                    "signal.weak",
                    "supply: 4.8 V -> supply: 5.5 V",
                    "gauge: 24 AWG -> gauge: 30 AWG",
                    "cable-to-next: 60 m -> cable-to-next: 700 m"),
            ofComputedVoltages(
                mistake(
                    "commissioning.measured-off",
                    LINE.formatted("560 ohm", "4.8 V"),
                    COMMISSIONED,
                    record("measured: {pair-resistance: 30 ohm}"))),
            mistake(
                    "commissioning.measured-off",
                    COMMISSIONED,
                    record("measured: {idle-voltage: 0.1 V}"))
                .yieldsTo(
                    "reference.unknown", "bias: [{at: Propagation -> bias: [{at: Propagatoin"),
            mistake("traffic.busy", TRAFFIC.formatted(100, "400 ms"))
                .yieldsTo("traffic.overrun", "every: 400 ms -> every: 200 ms"),
            mistake(
                    "traffic.two-clients",
                    TRAFFIC.formatted(12, "5 s"),
                    zones("Propagation, Seedling North, Hardening Bay"))
                .yieldsTo("head.missing", NO_HEAD)
                .yieldsTo("head.duplicate", TWO_HEADS),
            mistake("supervision.zone-missing", zones("Propagation, Seedling North"))
                .yieldsTo(
                    "supervision.zone-unknown",
                    "Seedling North] -> Seedling North, Hardenign Bay]"),
            mistake(
                    "supervision.zone-unknown",
                    zones("Propagation, Seedling North, Hardening Bay, Hardenign Bay"))
                .yieldsTo("name.duplicate", "unit: Seedling North -> unit: Hardening Bay")
                .yieldsTo("name.unreadable", "unit: Hardening Bay -> unit: ' Hardening Bay'"),
            mistake("reference.unknown", "at: Propagation -> at: Hardenign Bay")
                .yieldsTo("name.duplicate", "unit: Seedling North -> unit: Hardening Bay")
                .yieldsTo("name.unreadable", "unit: Hardening Bay -> unit: ' Hardening Bay'"),
            mistake(
                    "network.duplicate-ip",
                    "address: 2 -> address: 2\n    network: {ip: 192.168.40.12/24}",
                    "address: 3 -> address: 3\n    network: {ip: 192.168.40.12/24}")
                .yieldsTo("network.bad-address", "40.12/24 -> 40.255/24", "40.12/24 -> 40.255/24"),
            mistake(
                    "network.outside-subnet",
                    "address: 2 -> address: 2\n    network: {ip: 192.168.40.12/24}",
                    "address: 3 -> address: 3\n    network: {ip: 192.168.41.13/24}")
                .yieldsTo("network.bad-address", "41.13/24 -> 41.0/24"),
            mistake(
                    "commissioning.response-unseen",
                    COMMISSIONED,
                    "local}\n -> local}\n    vents: none\n",
                    "head}\n -> head}\n    vents: none\n",
                    record("stale-response-seen: [Hardening Bay]"))
                .yieldsTo("commissioning.missing", RECORD_GONE)
                .yieldsTo(
                    "reference.unknown",
                    "stale-response-seen: -> storm-response-seen: [Hardenign Bay],"
                        + " stale-response-seen:"),
            mistake(
                    "commissioning.unmeasured",
                    COMMISSIONED,
                    record(
                        "measured: {pair-resistance: 62 ohm, idle-voltage: 0.29 V, elsewhere:"
                            + " [{at: Hardening Bay, idle-voltage: 0.26 V}]}"))
                .yieldsTo("commissioning.missing", RECORD_GONE)
                .yieldsTo("head.missing", NO_HEAD)
                .yieldsTo("head.duplicate", TWO_HEADS)
                .yieldsTo(
                    "reference.unknown",
                    "0.26 V}] -> 0.26 V}, {at: Hardenign Bay, pair-resistance: 62 ohm}]"),
            mistake(
                    "commissioning.unit-unseen",
                    COMMISSIONED,
                    record("outdoor-readings-seen: [Seedling North]"))
                .yieldsTo("commissioning.missing", RECORD_GONE)
                .yieldsTo(
                    "reference.unknown",
                    "seen: [Seedling North -> seen: [Seedling North, Hardenign Bay")
                .yieldsTo(
                    "head.missing",
                    "seen: [Seedling North -> seen: [Seedling North, Hardening Bay",
                    NO_HEAD)
                .yieldsTo(
                    "station.not-at-head",
                    "seen: [Seedling North -> seen: [Hardening Bay",
                    STATION_AT_SEEDLING),
            mistake(
                    "commissioning.meter-expired",
                    COMMISSIONED,
                    record(
                        "outdoor-readings-seen: [Seedling North, Hardening Bay], meter: {calibrated-until: 2026-01-31}"))
                .yieldsTo("commissioning.date", "date: 2026-03-14 -> date: 2126-03-14"),
            mistake(
                    "change.record-kept",
                    COMMISSIONED,
                    "address: 2\n -> address: 2\n    firmware: '3.2'\n",
                    record("outdoor-readings-seen: [Seedling North, Hardening Bay]"))
                .comparedWith(
                    COMMISSIONED, record("outdoor-readings-seen: [Seedling North, Hardening Bay]"))
                .yieldsTo(
                    "commissioning.date",
                    "Hardening Bay]} -> Hardening Bay], renewed: [{date: 2025-03-14, by: R.O.}]}"),
            mistake(
                    "suppression.unused",
                    added(
                        "suppressions: [{rule: name.placeholder, unit: Seedling North, justification: It was so before.}]\n"))
                .yieldsTo("reference.unknown", "unit: Seedling North, -> unit: Seedling Nort,")
                .yieldsTo("suppression.expired", "before.} -> before., until: 2020-01-31}")
                .yieldsTo("suppression.unknown-rule", "name.placeholder -> name.place-holder"))
        .flatMap(mistake -> mistake.cases().stream());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theRuleIsSilentWhereItsCauseIsReported(Case one) throws IOException {
    assertThat(rules(one, one.alone())).contains(one.rule()).doesNotContain(one.cause());
    assertThat(rules(one, one.withCause())).contains(one.cause()).doesNotContain(one.rule());
  }

  @Test
  void everyPairIsTried() {
    assertThat(cases().map(Case::toString).distinct())
        .containsExactlyInAnyOrderElementsOf(
            BuiltInRules.all().stream()
                .map(rule -> rule.descriptor())
                .flatMap(rule -> rule.yieldsTo().stream().map(cause -> rule.id() + " < " + cause))
                .filter(pair -> !pair.endsWith(" < " + TWO_FILES))
                .toList());
  }

  private static List<String> rules(Case one, String site) throws IOException {
    SiteLinter.Builder builder =
        SiteLinter.builder().deviceTypes(SiteInput.text("device-types.yaml", TYPES));
    if (!one.policy().isEmpty()) {
      builder.policy(SiteInput.text("linter.yaml", one.policy()));
    }
    if (!one.before().isEmpty()) {
      builder.before(SiteState.of(Stream.of(SiteInput.text("example.yaml", one.before())), null));
    }
    return builder.build().checkText("example.yaml", site).results().stream()
        .filter(result -> !result.suppressed())
        .map(Result::rule)
        .distinct()
        .toList();
  }

  /** What breaks a rule, and what else makes the rule yield. */
  private record Mistake(
      String rule, String policy, String before, List<String> edits, List<Case> cases) {
    Mistake withPolicy(String text) {
      return new Mistake(rule, text, before, edits, cases);
    }

    /** The earlier state, as edits of the same site. */
    Mistake comparedWith(String... earlier) {
      return new Mistake(rule, policy, edited(Example.SITE, List.of(earlier)), edits, cases);
    }

    Mistake yieldsTo(String cause, String... more) {
      String alone = edited(Example.SITE, edits);
      List<Case> all = new ArrayList<>(cases);
      all.add(new Case(rule, cause, policy, before, alone, edited(alone, Arrays.asList(more))));
      return new Mistake(rule, policy, before, edits, all);
    }

    /** The first place of what is left of each arrow becomes what is right of it. */
    private static String edited(String site, List<String> edits) {
      String text = site;
      for (String edit : edits) {
        String[] parts = edit.split(" -> ", -1);
        int at = parts[0].isEmpty() ? text.length() : text.indexOf(parts[0]);
        if (at < 0) {
          throw new IllegalArgumentException("the site has no " + parts[0]);
        }
        text = text.substring(0, at) + parts[1] + text.substring(at + parts[0].length());
      }
      return text;
    }
  }

  private record Case(
      String rule, String cause, String policy, String before, String alone, String withCause) {
    @Override
    public String toString() {
      return rule + " < " + cause;
    }
  }
}
