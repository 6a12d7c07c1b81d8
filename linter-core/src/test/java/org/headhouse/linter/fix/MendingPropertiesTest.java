package org.headhouse.linter.fix;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.headhouse.linter.Checks;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds of every fix, tried on random faulty sites in random styles. */
@Tag("long")
class MendingPropertiesTest {
  private static final int SITES = 1500;

  /** One for all: each linter loads the schema once. */
  private final MendingProperty property = new MendingProperty(Checks.linter());

  @ParameterizedTest
  @EnumSource
  void mendsWithoutHarm(FixKind kind) {
    Map<String, Integer> mended = new TreeMap<>();
    for (long seed = 0; seed < SITES; seed++) {
      FixedSite fixed = property.tryWith(new FaultySite(seed).bytes(), kind);
      fixed.applied().forEach(one -> mended.merge(one.result().rule(), 1, Integer::sum));
    }
    assertThat(mended.keySet()).containsAll(commonlyMended(kind));
    assertThat(mended.values().stream().mapToInt(Integer::intValue).sum())
        .isGreaterThan(SITES + SITES / 2);
  }

  private static List<String> commonlyMended(FixKind kind) {
    List<String> rules =
        new ArrayList<>(
            List.of(
                "address.duplicate",
                "address.gap",
                "address.order",
                "address.reserved",
                "conductors.ground",
                "conductors.pair-missing",
                "head.address",
                "name.unreadable",
                "outdoor.head-not-local",
                "outdoor.not-from-head",
                "outdoor.unsafe-fallback",
                "reference.unknown",
                "schema.bad-value",
                "schema.unknown-key",
                "schema.wrong-type",
                "serial.framing",
                "supervision.zone-duplicate",
                "supervision.zone-missing",
                "supervision.zone-unknown",
                "termination.mid-line",
                "termination.undeclared",
                "yaml.ambiguous-scalar"));
    if (kind == FixKind.PROPOSED) {
      rules.addAll(
          List.of(
              "bias.out-of-range",
              "bias.weak",
              "cable.too-thin",
              "cable.unshielded",
              "module.absent",
              "outdoor.not-measured",
              "run.unprotected",
              "station.not-at-head",
              "termination.mismatch",
              "termination.missing-at-end"));
    }
    return rules;
  }
}
