package org.headhouse.linter.rules.commissioning;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.proof.GivenProofs;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.ProofWords;
import org.headhouse.linter.proof.RequiredProofs;
import org.headhouse.linter.proof.StaleResponse;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.OldNames;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.Place;

/** {@code commissioning.response-unseen}: common practice, no source. */
public final class CommissioningResponseUnseen implements SiteRule {
  private static final String LACKS = "the record lacks ";

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "commissioning.response-unseen",
              "For every unit with vents, the record says that a storm closed them, and that they"
                  + " did as set without readings.",
              Level.ERROR)
          .yieldingTo("commissioning.missing", "reference.unknown");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Commissioning record = site.commissioning().orNull();
    if (record == null
        || !site.stage().is(Stage.COMMISSIONED)
        || record.records().stream().anyMatch(CommissioningResponseUnseen::isFaulty)) {
      return;
    }
    Set<Proof> unseen = RequiredProofs.responses(site);
    unseen.removeAll(
        GivenProofs.of(site, record.records(), new OldNames(site, context)::nowCalled));
    if (!unseen.isEmpty()) {
      Set<String> units = unseen.stream().map(Proof::at).collect(Collectors.toSet());
      List<String> silent = sayingNothingOfVents(site, units);
      String staying = stayingOpen(site, unseen);
      context.report(
          context
              .finding(
                  place(record.first(), unseen),
                  new Message(
                      ProofWords.fact(LACKS, unseen),
                      "vents that nobody has seen shut may stay open in the next storm"
                          + (silent.isEmpty()
                              ? ""
                              : ", and a unit may have vents that the file does not mention"),
                      (silent.isEmpty()
                              ? ""
                              : "check "
                                  + String.join(", ", silent)
                                  + ", and set vents: none "
                                  + (silent.size() == 1 ? "if it" : "for each that")
                                  + " moves none; ")
                          + "in calm, mild weather and with nobody near the vents, watch "
                          + ProofWords.remedied(LACKS, unseen)
                          + (staying.isEmpty()
                              ? ""
                              : " (without readings the vents of "
                                  + staying
                                  + " stay where they are, as set)")
                          + ", and then add "
                          + (units.size() == 1 ? "the unit" : "each unit")
                          + " to "
                          + lists(unseen)
                          + ProofWords.UNDER_RENEWED))
              .about(Proof.cases(unseen)));
    }
  }

  private static boolean isFaulty(ProvingRecord one) {
    return one.stormResponseSeen().isFaulty()
        || one.staleResponseSeen().isFaulty()
        || one.stormResponseSeen().or(List.of()).stream().anyMatch(Setting::isFaulty);
  }

  /** The list that lacks a name, where it is there. */
  private static Place place(ProvingRecord first, Set<Proof> unseen) {
    boolean storm = unseen.stream().anyMatch(one -> one.kind() == Proof.Kind.STORM_RESPONSE);
    Setting<?> list = storm ? first.stormResponseSeen() : first.staleResponseSeen();
    return list.isMissing() ? first.place() : list.place();
  }

  /** Where what lacks is to be written. */
  private static String lists(Set<Proof> unseen) {
    List<Proof.Kind> kinds = unseen.stream().map(Proof::kind).distinct().toList();
    if (kinds.size() > 1) {
      return "storm-response-seen and stale-response-seen";
    }
    return kinds.get(0) == Proof.Kind.STORM_RESPONSE
        ? "storm-response-seen"
        : "stale-response-seen";
  }

  /** Those that are named once their vents were seen to stay where they are. */
  private static String stayingOpen(Site site, Set<Proof> unseen) {
    return site.units().stream()
        .filter(StaleResponse::staysOpen)
        .filter(
            unit ->
                unseen.stream()
                    .anyMatch(
                        one -> one.kind() == Proof.Kind.STALE_RESPONSE && unit.name().is(one.at())))
        .map(Unit::called)
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static List<String> sayingNothingOfVents(Site site, Set<String> unseen) {
    return site.units().stream()
        .filter(unit -> unit.vents().isMissing())
        .filter(unit -> unseen.contains(unit.name().or("")))
        .map(Unit::called)
        .distinct()
        .toList();
  }
}
