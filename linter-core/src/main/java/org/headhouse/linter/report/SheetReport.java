package org.headhouse.linter.report;

import java.util.List;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.stability.Internal;

/**
 * The outcome once all sheets are made.
 *
 * @param html the page over all sites, which belongs beside those of the sites
 * @param papers what is made over several sites: a cover for each customer, and the days on which
 *     lines are due
 * @param bundles what each customer gets; empty where they are not wanted
 * @param notifications what the tool itself could not do, and files that have no sheets
 * @param sites how many sites have sheets
 * @param counts the results of all files, and of the settings
 * @param files how many files were read
 * @param units how many units their chains have
 */
@SuppressWarnings("ArrayRecordComponent") // Written to a file, and never compared.
public record SheetReport(
    byte[] html,
    List<SheetFile> papers,
    List<SiteBundle> bundles,
    List<Notification> notifications,
    int sites,
    ResultCounts counts,
    int files,
    int units) {

  /** The name of the page over all sites. */
  public static final String PAGE = "index.html";

  /** The name of the table of all units, to which that page has a link. */
  public static final String INVENTORY = "inventory.csv";

  /** The name of the table of all materials, to which that page has a link. */
  public static final String MATERIALS = "materials.csv";

  @Internal
  public SheetReport {
    papers = List.copyOf(papers);
    bundles = List.copyOf(bundles);
    notifications = List.copyOf(notifications);
  }
}
