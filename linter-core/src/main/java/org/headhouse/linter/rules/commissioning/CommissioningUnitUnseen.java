package org.headhouse.linter.rules.commissioning;

import java.util.List;
import java.util.Set;
import org.headhouse.linter.proof.GivenProofs;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.RequiredProofs;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.OldNames;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;

/** {@code commissioning.unit-unseen}: common practice, no source. */
public final class CommissioningUnitUnseen implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "commissioning.unit-unseen",
              "For every follower, the record says that its display showed the outdoor readings.",
              Level.ERROR)
          .yieldingTo(
              "commissioning.missing", "head.missing", "station.not-at-head", "reference.unknown");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Commissioning record = site.commissioning().orNull();
    if (record == null
        || !site.stage().is(Stage.COMMISSIONED)
        || record.records().stream().anyMatch(one -> one.outdoorReadingsSeen().isFaulty())) {
      return;
    }
    Set<Proof> unseen = RequiredProofs.readings(site);
    unseen.removeAll(
        GivenProofs.of(site, record.records(), new OldNames(site, context)::nowCalled));
    unseen.forEach(proof -> report(proof, record, context));
  }

  /** One result a unit, so that it can be accepted of that unit alone. */
  private static void report(Proof proof, Commissioning record, RuleContext context) {
    context.report(
        context
            .finding(
                record.outdoorReadingsSeen().isMissing()
                    ? record.place()
                    : record.outdoorReadingsSeen().place(),
                new Message(
                    "the record does not say that the outdoor readings were seen at "
                        + proof.place(),
                    "a follower without them leaves its vents open in a storm",
                    "look at its display, and then add \""
                        + proof.at()
                        + "\" to outdoor-readings-seen"))
            .about(List.of(new Finding.Case(proof.at(), null))));
  }
}
