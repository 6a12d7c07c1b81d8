package org.headhouse.linter.rules.commissioning;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.proof.GivenProofs;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.ProofWords;
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
    if (!unseen.isEmpty()) {
      report(unseen, record, context);
    }
  }

  /** One result a record; each unit in it can be accepted alone. */
  private static void report(Set<Proof> unseen, Commissioning record, RuleContext context) {
    List<String> units = unseen.stream().map(Proof::at).toList();
    String named = units.stream().collect(Collectors.joining("\", \"", "\"", "\""));
    context.report(
        context
            .finding(
                record.outdoorReadingsSeen().isMissing()
                    ? record.place()
                    : record.outdoorReadingsSeen().place(),
                new Message(
                    ProofWords.fact("the record lacks ", unseen),
                    "a follower without them leaves its vents open in a storm",
                    (units.size() == 1
                            ? "check its display, and then add " + named
                            : "check the displays of " + named + ", and then add each name")
                        + " to outdoor-readings-seen"
                        + ProofWords.UNDER_RENEWED))
            .about(units.stream().map(unit -> new Finding.Case(unit, null)).toList()));
  }
}
