package org.headhouse.linter.rules.commissioning;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.proof.GivenProofs;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.ProofWords;
import org.headhouse.linter.proof.RequiredProofs;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.OldNames;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Measured;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.Unit;

/** {@code commissioning.unmeasured}: common practice, no source. */
public final class CommissioningUnmeasured implements SiteRule {
  private static final String LACKS = "the record lacks ";

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "commissioning.unmeasured",
              "The record has the meter readings at the head unit and at the ends of every segment.",
              Level.WARNING)
          .yieldingTo(
              "commissioning.missing", "head.missing", "head.duplicate", "reference.unknown");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Commissioning record = site.commissioning().orNull();
    Unit head = site.head();
    if (record == null
        || head == null
        || !site.stage().is(Stage.COMMISSIONED)
        || record.records().stream().anyMatch(CommissioningUnmeasured::isFaulty)) {
      return;
    }
    Set<Proof> missing = RequiredProofs.measurements(site);
    missing.removeAll(
        GivenProofs.of(site, record.records(), new OldNames(site, context)::nowCalled));
    if (!missing.isEmpty()) {
      Setting<Measured> measured = record.first().measured();
      context.report(
          context
              .finding(
                  measured.isMissing() ? record.place() : measured.place(),
                  new Message(
                      ProofWords.fact(LACKS, missing),
                      "a missing, wrong or extra terminator or bias goes unnoticed there",
                      "measure "
                          + ProofWords.remedied(LACKS, missing)
                          + ", and then enter "
                          + places(missing, head)))
              .about(Proof.cases(missing)));
    }
  }

  private static boolean isFaulty(ProvingRecord one) {
    Measured measured = one.measured().orNull();
    return one.measured().isFaulty()
        || (measured != null
            && (measured.elsewhere().isFaulty()
                || measured.elsewhere().or(List.of()).stream().anyMatch(Setting::isFaulty)));
  }

  /** Where in the record each of them belongs. */
  private static String places(Set<Proof> missing, Unit head) {
    boolean atHead = missing.stream().anyMatch(one -> head.name().is(one.at()));
    String elsewhere =
        missing.stream()
            .filter(one -> !head.name().is(one.at()))
            .map(CommissioningUnmeasured::keys)
            .distinct()
            .collect(Collectors.joining("; "));
    if (elsewhere.isEmpty()) {
      return "it under measured";
    }
    return (atHead ? "that of the head unit under measured, the rest" : "it")
        + " under measured.elsewhere with "
        + elsewhere;
  }

  private static String keys(Proof one) {
    return "at: " + one.at() + (one.side() == null ? "" : ", side: " + one.side().word());
  }
}
