package org.headhouse.linter.fix;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.Checks;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds of every fix, tried on random faulty sites in random styles. */
@Tag("long")
class MendingPropertiesTest {
  /** One for all: each linter loads the schema once. */
  private final MendingProperty property = new MendingProperty(Checks.linter());

  @ParameterizedTest
  @EnumSource
  void mendsWithoutHarm(FixKind kind) {
    Set<String> mended = new TreeSet<>();
    double changed =
        RandomCases.share(
            1500,
            random -> {
              FixedSite fixed = property.tryWith(new FaultySite(random).bytes(), kind);
              fixed.applied().forEach(one -> mended.add(one.result().rule()));
              return !fixed.applied().isEmpty();
            });
    assertThat(mended).containsAll(commonlyMended(kind));
    assertThat(changed).isGreaterThan(0.6);
  }

  private static List<String> commonlyMended(FixKind kind) {
    List<String> rules =
        new ArrayList<>(
            List.of(
                "address.duplicate",
                "address.gap",
                "address.order",
                "address.reserved",
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
