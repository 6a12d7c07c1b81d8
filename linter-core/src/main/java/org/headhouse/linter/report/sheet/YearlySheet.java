package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.proof.WholeLineProof;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SurgeProtection;

/**
 * The content of the sheet that is taken along each year: what was measured and seen last beside
 * what is acceptable, with room for what is found.
 *
 * @param name of the page of the site, without its ending
 * @param last of which day and by whom the record of the line is, with which meter, and when it is
 *     due
 * @param open what visits did not see
 * @param scope what there is at the site
 * @param measurements of the line as it is in use
 * @param units in the order of the chain
 * @param byHand the names of the units whose vents stay where they are when readings are lost,
 *     joined; empty for none
 * @param runs the runs of cable between buildings, each with what is to be looked at there
 */
record YearlySheet(
    String name,
    PageFrame frame,
    String title,
    List<Fact> last,
    List<String> open,
    ProvingScope scope,
    List<Measurement> measurements,
    List<UnitProof> units,
    String byHand,
    List<String> runs) {

  YearlySheet {
    last = List.copyOf(last);
    open = List.copyOf(open);
    measurements = List.copyOf(measurements);
    units = List.copyOf(units);
    runs = List.copyOf(runs);
  }

  static YearlySheet of(SiteFacts facts, String name, SheetSettings settings) {
    Site site = facts.site();
    return new YearlySheet(
        name,
        PageFrame.ofSite(name, facts, settings.paper()),
        SheetHead.title(site),
        last(facts, settings),
        CertificateVerdict.notSeen(site),
        ProvingScope.of(site),
        Measurements.of(site, facts.figures(), settings.policy().ohmmeter()).stream()
            .filter(Measurement::isOfWholeLine)
            .toList(),
        UnitProof.of(site),
        VentWords.stayingOpen(site),
        runs(site));
  }

  private static List<Fact> last(SiteFacts facts, SheetSettings settings) {
    Site site = facts.site();
    List<Fact> last = new ArrayList<>();
    Commissioning commissioning = site.commissioning().orNull();
    if (commissioning == null) {
      last.add(new Fact("Last record", "none"));
    } else {
      ProvingRecord whole = WholeLineProof.record(site, commissioning);
      LocalDate day = whole.dayOrNull();
      last.add(new Fact("Last record", day == null ? "no date" : SpokenText.day(day)));
      last.add(new Fact("By", PlainText.name(whole.by().or("nobody"))));
      whole
          .meter()
          .optional()
          .map(ProofRow::meter)
          .filter(meter -> !meter.isEmpty())
          .ifPresent(meter -> last.add(new Fact("Meter", meter)));
    }
    LocalDate due = facts.proof().next();
    if (CertificateVerdict.isUnproved(facts, settings)) {
      last.add(new Fact("Due", "now: it is not proved, as its certificate says"));
    } else if (due != null) {
      last.add(new Fact("Due", SpokenText.day(due)));
    }
    return last;
  }

  private static List<String> runs(Site site) {
    List<String> runs = new ArrayList<>();
    List<ChainItem> items = site.items();
    for (int i = 0; i + 1 < items.size(); i++) {
      ChainItem from = items.get(i);
      if (from.runToNext().is(Run.BETWEEN_BUILDINGS)) {
        boolean fitted = from.surgeProtectionToNext().is(SurgeProtection.FITTED);
        runs.add(
            PlainText.name(from)
                + " to "
                + PlainText.name(items.get(i + 1))
                + (fitted
                    ? ": surge protectors at both ends look sound and are bonded to earth"
                    : ": the file has no surge protectors here"));
      }
    }
    return runs;
  }

  /** What the record has of the storm response of a unit: {@code 63 s at 12 m/s}. */
  String lastInShort(UnitProof unit) {
    if (!unit.mayMove()) {
      return "no vents";
    }
    String doubt = unit.isDisputed() ? unit.vents() + ". Last: " : "";
    if (unit.lastStorm().isEmpty()) {
      return doubt + "never seen";
    }
    return doubt
        + (unit.lastClosedIn().isEmpty() ? "seen, not timed" : unit.lastClosedIn())
        + (unit.lastLimit().isEmpty() ? "" : " at " + unit.lastLimit());
  }

  /** The sheets of the site, beside this page. */
  String sheetsLink() {
    return PageNames.link(PageNames.page(name));
  }
}
