package org.headhouse.linter.report.sheet;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.UUID;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * The day on which a line is to be proved again; small, as one is kept for every site.
 *
 * @param uid the same each time the calendar is made, and another for each site
 * @param recorded the day of the record of the whole line
 * @param isProved whether its certificate says that it is proved
 * @param sheet the file to take along
 */
public record DueEntry(
    String uid,
    String title,
    LocalDate day,
    @Nullable LocalDate recorded,
    boolean isProved,
    String sheet) {

  /** That of a site whose page has a name; null where the policy sets no period. */
  public static @Nullable DueEntry of(SiteFacts facts, String name, SheetSettings settings) {
    Site site = facts.site();
    LocalDate due = facts.proof().next();
    if (due == null) {
      return null;
    }
    boolean isProved = CertificateVerdict.of(facts, settings).isProved();
    String key = "commissioning.retest-due/" + site.id().or(site.source().path());
    return new DueEntry(
        UUID.nameUUIDFromBytes(key.getBytes(StandardCharsets.UTF_8)).toString(),
        SheetHead.title(site),
        isProved ? due : settings.date(),
        facts.proof().day(),
        isProved,
        PageNames.yearly(name));
  }
}
