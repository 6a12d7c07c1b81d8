package org.headhouse.linter.report;

import java.util.List;
import org.headhouse.linter.figures.SiteFigures;

/**
 * The sheets of one site, and what it adds to those over all sites.
 *
 * @param page the name of the file of the page
 * @param html the page, without references
 * @param zonesFile the name of the file of the zones; the page has a link to it
 * @param zones the zones for the supervising software, as RFC 4180 has it
 * @param materialsPage the name of the file of materials and labels; the page has a link to it
 * @param materialsHtml that page, without references
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
    String materialsPage,
    byte[] materialsHtml,
    SiteFigures figures,
    List<InventoryRow> inventory,
    SiteMaterials materials) {

  public SiteSheet {
    inventory = List.copyOf(inventory);
  }
}
