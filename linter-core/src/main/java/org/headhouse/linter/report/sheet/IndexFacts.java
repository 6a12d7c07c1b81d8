package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.materials.MaterialTotals;

/**
 * The input of the page over all sites, collected while the sites go by: a row for each site, and
 * sums. For one thread.
 */
public final class IndexFacts {
  private final List<IndexRow> rows = new ArrayList<>();
  private final FirmwareCounts firmware = new FirmwareCounts();
  private final MaterialTotals planned;
  private final SheetSettings settings;

  public IndexFacts(SheetSettings settings) {
    this.settings = settings;
    this.planned = new MaterialTotals(settings.slack());
  }

  /** Adds a site with a page of a name. */
  public void add(SiteFacts site, String name) {
    rows.add(IndexRow.of(site, name, settings));
    firmware.add(site.site());
    if (site.site().isPlanned()) {
      planned.add(site.materials());
    }
  }

  /** Adds a file without a page. */
  public void add(IndexRow unread) {
    rows.add(unread);
  }

  List<IndexRow> rows() {
    return rows;
  }

  FirmwareCounts firmware() {
    return firmware;
  }

  MaterialTotals planned() {
    return planned;
  }
}
