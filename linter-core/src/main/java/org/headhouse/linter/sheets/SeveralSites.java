package org.headhouse.linter.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.report.SheetFile;
import org.headhouse.linter.report.sheet.CoverPage;
import org.headhouse.linter.report.sheet.CoverRow;
import org.headhouse.linter.report.sheet.DueCalendar;
import org.headhouse.linter.report.sheet.DueEntry;
import org.headhouse.linter.report.sheet.PageNames;
import org.headhouse.linter.report.sheet.SheetSettings;
import org.headhouse.linter.report.sheet.SiteFacts;

/**
 * Collects what is made over several sites: the cover for each customer who has several, and the
 * days on which lines are due. For one thread, in the order of the sites.
 */
final class SeveralSites {
  private final SheetSettings settings;
  private final Map<String, List<CoverRow>> byCustomer = new LinkedHashMap<>();
  private final List<DueEntry> due = new ArrayList<>();
  private final Map<String, String> covers = new HashMap<>();

  SeveralSites(SheetSettings settings) {
    this.settings = settings;
  }

  /**
   * @param name of the page of the site
   */
  void add(SiteFacts facts, String name) {
    facts
        .site()
        .customer()
        .optional()
        .ifPresent(
            customer ->
                byCustomer
                    .computeIfAbsent(customer, any -> new ArrayList<>())
                    .add(CoverRow.of(facts, name, settings)));
    DueEntry entry = DueEntry.of(facts, name, settings);
    if (entry != null) {
      due.add(entry);
    }
  }

  /** The files, once all sites have their names. */
  List<SheetFile> files(PageNames names) {
    List<SheetFile> files = new ArrayList<>();
    byCustomer.forEach(
        (customer, rows) -> {
          if (rows.size() > 1) {
            String cover = names.takeCover(customer);
            covers.put(customer, cover);
            files.add(new SheetFile(cover, CoverPage.html(customer, rows, settings)));
          }
        });
    if (!due.isEmpty()) {
      files.add(new SheetFile(DueCalendar.FILE, DueCalendar.of(due, settings.date())));
    }
    return files;
  }

  /** The names of the covers among these files, by customer. */
  Map<String, String> covers() {
    return covers;
  }
}
