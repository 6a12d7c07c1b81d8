package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.site.Site;

/**
 * The content of the certificate of a line: for those who grow under it, without symbols and ids of
 * rules.
 *
 * @param name of the page of the site, without its ending
 * @param customer empty for none
 * @param byHand the names of the units whose vents do not close by themselves when readings are
 *     lost, joined; empty for none
 * @param houses what was seen of the vents
 * @param still the names of the units that move no vents, joined; empty for none
 * @param disputed the names of those of them whose vents the record says to have closed, joined;
 *     empty for none
 * @param history what the earlier states of the file say
 * @param due what is due, each with its day
 * @param voids the changes after which a line that is proved has to be proved again
 * @param keeps the changes after which it does not
 * @param origin which file this page is made of
 * @param fingerprint the SHA-256 of that file, in groups of eight digits
 */
record Certificate(
    String name,
    PageFrame frame,
    String title,
    String customer,
    CertificateVerdict verdict,
    String byHand,
    List<HouseProof> houses,
    String still,
    String disputed,
    List<ProofRow> proofs,
    String history,
    List<AcceptedException> accepted,
    List<String> notJudged,
    List<String> due,
    List<String> voids,
    List<String> keeps,
    List<Fact> origin,
    String fingerprint) {

  private static final int GROUP = 8;
  private static final int MOST_STILL = 24;

  static Certificate of(SiteFacts facts, String name, SheetSettings settings) {
    Site site = facts.site();
    LastSeen last = LastSeen.of(site);
    List<String> still = new ArrayList<>();
    List<String> disputed = new ArrayList<>();
    site.units().stream()
        .filter(unit -> !VentWords.mayMove(unit))
        .forEach(unit -> (last.disputesNoVents(unit) ? disputed : still).add(PlainText.name(unit)));
    ProofHistory history = facts.provenance().history();
    CertificateVerdict verdict = CertificateVerdict.of(facts, settings);
    return new Certificate(
        name,
        PageFrame.ofSite(name, facts, settings.paper()),
        SheetHead.title(site),
        PlainText.name(site.customer().or("")),
        verdict,
        VentWords.stayingOpen(site),
        HouseProof.of(facts),
        SpokenText.names(still, MOST_STILL),
        SpokenText.names(disputed, disputed.size()),
        ProofRow.of(site, history),
        history(history),
        AcceptedException.of(facts, settings),
        settings.notJudged(),
        due(facts, settings, verdict.isProved()),
        VoidingChanges.words(true),
        VoidingChanges.words(false),
        origin(facts, settings),
        facts.provenance().fingerprint().replaceAll("(.{" + GROUP + "})(?=.)", "$1 "));
  }

  private static String history(ProofHistory history) {
    if (!history.isKnown()) {
      return "The history of the file was not at hand: whether the line was changed after this"
          + " record, and what was proved before, is not known here.";
    }
    return history.isWhole()
        ? ""
        : "Only a part of the history of the file was at hand: earlier changes and proofs may be"
            + " missing here.";
  }

  private static List<String> due(SiteFacts facts, SheetSettings settings, boolean isProved) {
    List<String> due = new ArrayList<>();
    LocalDate next = facts.proof().next();
    if (!isProved) {
      due.add("The line is to be proved now: nobody can rely on it until that is done.");
    } else if (next != null) {
      boolean over = next.isBefore(settings.date());
      due.add(
          "The whole line "
              + (over ? "was to be proved again by " : "is to be proved again by ")
              + SpokenText.day(next)
              + (over ? ", and is overdue." : "."));
    } else {
      due.add("No day is set for the next proof: agree on one with the person in charge.");
    }
    for (AcceptedException exception : AcceptedException.of(facts, settings)) {
      if (!exception.until().isEmpty()) {
        due.add(
            "The exception"
                + (exception.where().isEmpty() ? "" : " for " + exception.where())
                + " ends on "
                + exception.until()
                + ".");
      }
    }
    return due.stream().distinct().collect(Collectors.toList());
  }

  private static List<Fact> origin(SiteFacts facts, SheetSettings settings) {
    List<Fact> origin = new ArrayList<>();
    origin.add(new Fact("Made on", SpokenText.day(settings.date())));
    origin.add(new Fact("File", PlainText.sentence(facts.site().source().path())));
    String revision = facts.provenance().history().revision();
    origin.add(
        new Fact("Revision", revision.isEmpty() ? "not known" : PlainText.sentence(revision)));
    return origin;
  }

  /** The sheets of the site, beside this page. */
  String sheetsLink() {
    return PageNames.link(PageNames.page(name));
  }
}
