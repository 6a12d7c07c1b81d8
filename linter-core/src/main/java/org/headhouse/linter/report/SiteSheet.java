package org.headhouse.linter.report;

import java.util.List;
import org.headhouse.linter.figures.SiteFigures;

/**
 * The sheets of one site.
 *
 * @param page the name of the file of the page
 * @param html the page, without references
 * @param zonesFile the name of the file of the zones; the page has a link to it
 * @param zones the zones for the supervising software, as RFC 4180 has it
 * @param papers the pages that are of one sheet of paper each: certificate, night card, yearly
 *     sheet
 * @param figures what is computed of its line
 */
@SuppressWarnings("ArrayRecordComponent") // Written to a file, and never compared.
public record SiteSheet(
    String page,
    byte[] html,
    String zonesFile,
    byte[] zones,
    List<SheetFile> papers,
    SiteFigures figures) {

  public SiteSheet {
    papers = List.copyOf(papers);
  }
}
