package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Site;

/**
 * One line of a customer on the cover; small, as one is kept for every site.
 *
 * @param link to its certificate
 * @param heading of its certificate
 * @param proved when and by whom; empty where nobody has
 * @param due when it is to be proved again; empty where no day is set
 */
public record CoverRow(String link, String title, String heading, String proved, String due) {

  /** The line of a site whose page has a name. */
  public static CoverRow of(SiteFacts facts, String name, SheetSettings settings) {
    Site site = facts.site();
    LocalDate due = facts.proof().next();
    return new CoverRow(
        PageNames.link(PageNames.certificate(name)),
        SheetHead.title(site),
        CertificateVerdict.of(facts, settings).heading().words(),
        site.commissioning().optional().map(CoverRow::proved).orElse(""),
        due == null ? "" : SpokenText.day(due));
  }

  private static String proved(Commissioning commissioning) {
    ProvingRecord last = commissioning.records().get(commissioning.records().size() - 1);
    LocalDate day = last.dayOrNull();
    return (day == null ? "no date" : SpokenText.day(day))
        + ", by "
        + PlainText.name(last.by().or("nobody"));
  }

  /** Whether it counts as proved, with exceptions or without. */
  boolean isProved() {
    return !heading.equals(CertificateVerdict.Heading.NOT_PROVED.words());
  }
}
