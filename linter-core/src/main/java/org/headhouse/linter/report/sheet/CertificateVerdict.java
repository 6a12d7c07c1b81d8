package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.proof.GivenProofs;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.RequiredProofs;
import org.headhouse.linter.proof.Signature;
import org.headhouse.linter.proof.StaleResponse;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.OpenMark;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.jspecify.annotations.Nullable;

/**
 * Whether a line counts as proved. What the record has to prove is looked at here, whatever the
 * policy has switched off and whatever is accepted: an accepted gap is still one.
 *
 * @param heading of the three that there are
 * @param reasons why it is not proved; empty where it is
 * @param exceptions what to know of a line that is proved
 */
record CertificateVerdict(Heading heading, List<String> reasons, List<String> exceptions) {

  /** The heading of a certificate. */
  enum Heading {
    PROVED("Proved"),
    WITH_EXCEPTIONS("Proved, with exceptions"),
    NOT_PROVED("Not proved");

    private final String words;

    Heading(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  private static final int MOST_NAMES = 8;

  /** So that the page stays one. */
  private static final int MOST_POINTS = 3;

  /** What is said of the record itself here, so that its results are not counted once more. */
  private static final Set<String> SAID =
      Set.of(
          "commissioning.missing",
          "commissioning.placeholder",
          "commissioning.date",
          "commissioning.unit-unseen",
          "commissioning.response-unseen");

  CertificateVerdict {
    reasons = List.copyOf(reasons);
    exceptions = List.copyOf(exceptions);
  }

  /** Whether the line counts as proved, with exceptions or without. */
  boolean isProved() {
    return heading != Heading.NOT_PROVED;
  }

  /** Whether a line is in use, and its certificate does not call it proved. */
  static boolean isUnproved(SiteFacts facts, SheetSettings settings) {
    return facts.site().stage().is(Stage.COMMISSIONED) && !of(facts, settings).isProved();
  }

  static CertificateVerdict of(SiteFacts facts, SheetSettings settings) {
    List<String> reasons = new ArrayList<>();
    Site site = facts.site();
    if (!site.stage().is(Stage.COMMISSIONED)) {
      reasons.add("The file says that the line is planned, and not that it is in use.");
    }
    Commissioning commissioning = site.commissioning().orNull();
    if (commissioning == null) {
      reasons.add("The file has no record of a proof.");
    } else {
      signatures(commissioning, settings.date(), reasons);
      missing(site, unproved(site, commissioning), reasons);
    }
    ProofHistory history = facts.provenance().history();
    if (history.isOutdated()) {
      reasons.add("The line was changed after its record, and nobody proved the change.");
      missing(site, history.unproved(), reasons);
    }
    reasons.addAll(notSeen(site));
    errors(facts, reasons);
    List<String> exceptions = exceptions(facts, settings);
    Heading heading =
        !reasons.isEmpty()
            ? Heading.NOT_PROVED
            : exceptions.isEmpty() ? Heading.PROVED : Heading.WITH_EXCEPTIONS;
    return new CertificateVerdict(heading, reasons, exceptions);
  }

  private static void signatures(
      Commissioning commissioning, LocalDate today, List<String> reasons) {
    Set<String> found = new LinkedHashSet<>();
    for (ProvingRecord record : commissioning.records()) {
      String by = record.by().orNull();
      LocalDate day = record.dayOrNull();
      if (by == null || Signature.isStandIn(by)) {
        found.add("Nobody has signed the record.");
      }
      if (day == null) {
        found.add("The record has no date.");
      } else if (day.isAfter(today)) {
        found.add("The record has a date that is still to come.");
      }
    }
    if (commissioning.renewed().isFaulty()) {
      found.add("A part of the record cannot be read.");
    }
    reasons.addAll(found);
  }

  /** What the record has to prove and does not, accepted or not. */
  static List<Proof> unproved(Site site, Commissioning commissioning) {
    Set<Proof> unproved = new LinkedHashSet<>(RequiredProofs.of(site));
    unproved.removeAll(GivenProofs.of(site, commissioning.records()));
    return List.copyOf(unproved);
  }

  private static void missing(Site site, Collection<Proof> unproved, List<String> reasons) {
    Set<String> staying =
        site.units().stream()
            .filter(StaleResponse::staysOpen)
            .map(unit -> unit.name().or(""))
            .collect(Collectors.toSet());
    Map<Proof.Kind, List<String>> places = new EnumMap<>(Proof.Kind.class);
    List<String> held = new ArrayList<>();
    for (Proof proof : unproved) {
      boolean stays = proof.kind() == Proof.Kind.STALE_RESPONSE && staying.contains(proof.at());
      (stays ? held : places.computeIfAbsent(proof.kind(), kind -> new ArrayList<>()))
          .add(PlainText.name(proof.at()));
    }
    places.forEach((kind, names) -> reasons.add(start(kind) + listed(names)));
    if (!held.isEmpty()) {
      reasons.add("Nobody saw what the vents do when readings are lost at " + listed(held));
    }
  }

  private static String listed(List<String> names) {
    String joined = SpokenText.names(names.stream().distinct().toList(), MOST_NAMES);
    return joined + PlainText.stop(joined);
  }

  private static String start(Proof.Kind kind) {
    return switch (kind) {
      case READINGS -> "Nobody saw the outdoor readings at ";
      case STORM_RESPONSE -> "Nobody saw wind close the vents at ";
      case STALE_RESPONSE -> "Nobody saw lost readings close the vents at ";
      case PAIR_RESISTANCE -> "The resistance of the line was not measured at ";
      case IDLE_VOLTAGE -> "The idle voltage of the line was not measured at ";
    };
  }

  /** What visits did not see: none of it is proved, whatever is accepted or turned off. */
  static List<String> notSeen(Site site) {
    List<String> points = OpenMark.notSeenIn(site.source().text());
    List<String> said = new ArrayList<>();
    for (String point : points.stream().limit(MOST_POINTS).toList()) {
      String shown = PlainText.sentence(point);
      said.add("A visit left this open: " + shown + PlainText.stop(shown));
    }
    if (points.size() > MOST_POINTS) {
      int more = points.size() - MOST_POINTS;
      said.add("Visits left " + SpokenText.count(more, "more point") + " open.");
    }
    return said;
  }

  private static void errors(SiteFacts facts, List<String> reasons) {
    boolean isSaid = !reasons.isEmpty();
    int open = 0;
    for (Result result : facts.results()) {
      if (result.level() == Level.ERROR
          && !result.suppressed()
          && !(isSaid && SAID.contains(result.rule()))) {
        open++;
      }
    }
    if (open > 0) {
      reasons.add(
          "The check of the file finds "
              + SpokenText.count(open, "open error")
              + ": part 1 of the sheets for the site lists "
              + (open == 1 ? "it." : "them."));
    }
    if (!facts.provenance().fullyChecked()) {
      reasons.add("A part of the check could not run.");
    }
  }

  private static List<String> exceptions(SiteFacts facts, SheetSettings settings) {
    List<String> exceptions = new ArrayList<>();
    if (facts.site().units().stream().anyMatch(StaleResponse::staysOpen)) {
      exceptions.add(
          "Not all vents close by themselves when readings are lost: see the houses named at the"
              + " top.");
    }
    List<String> calm =
        facts.site().units().stream().filter(VentWords::getsNoWind).map(PlainText::name).toList();
    if (!calm.isEmpty()) {
      exceptions.add(
          "The file gives no reading of the wind to "
              + SpokenText.names(calm, calm.size())
              + ": wind does not close the vents there.");
    }
    LastSeen last = LastSeen.of(facts.site());
    if (facts.site().units().stream().anyMatch(last::disputesNoVents)) {
      exceptions.add("The file and its record disagree whether there are vents: see below.");
    }
    int accepted = AcceptedException.of(facts, settings).size();
    if (accepted > 0) {
      exceptions.add(SpokenText.count(accepted, "exception") + " accepted on purpose: see below.");
    }
    if (!settings.notJudged().isEmpty()) {
      exceptions.add(
          SpokenText.count(settings.notJudged().size(), "rule")
              + " not applied in full, by the policy: see below.");
    }
    LocalDate due = facts.proof().next();
    if (due != null && due.isBefore(settings.date())) {
      exceptions.add("The next proof was due on " + SpokenText.day(due) + ".");
    }
    if (meterExpired(facts.site().commissioning().orNull())) {
      exceptions.add("The calibration of a meter had ended on the day it was used.");
    }
    return exceptions;
  }

  private static boolean meterExpired(@Nullable Commissioning commissioning) {
    return commissioning != null
        && commissioning.records().stream().anyMatch(ProvingRecord::wasMeterExpired);
  }
}
