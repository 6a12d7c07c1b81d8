package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.SiteFigures;

/**
 * The sheets of one site, and what it adds to those over all sites.
 *
 * @param page the name of the file of the page
 * @param html the page, without references
 * @param zonesFile the name of the file of the zones; the page has a link to it
 * @param zones the zones for the supervising software, as RFC 4180 has it
 * @param papers the pages beside it, to which it has links: certificate, night card and yearly
 *     sheet of one sheet of paper each; the sheet for the van; materials and labels; what to
 *     measure when the line does not work
 * @param figures what is computed of its line
 * @param inventory one row for each unit
 * @param materials of its line
 */
@SuppressWarnings("ArrayRecordComponent") // Written to a file, and never compared.
public record SiteSheet(
    String page,
    byte[] html,
    String zonesFile,
    byte[] zones,
    List<SheetFile> papers,
    SiteFigures figures,
    List<InventoryRow> inventory,
    SiteMaterials materials) {

  public SiteSheet {
    papers = List.copyOf(papers);
    inventory = List.copyOf(inventory);
  }

  /** All files that belong to the site, in the order in which people need them. */
  public List<SheetFile> files() {
    List<SheetFile> files = new ArrayList<>();
    files.add(new SheetFile(page, html));
    files.add(new SheetFile(zonesFile, zones));
    files.addAll(papers);
    return files;
  }
}
