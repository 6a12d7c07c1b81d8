package org.headhouse.linter.report;

import java.util.List;

/**
 * What one customer gets: the sheets of the sites, and what belongs to them.
 *
 * @param name of the bundle, without an ending
 * @param sheets the names of the files of sheets that are in it, as they were handed over
 * @param further the files that are in it alone; their names may have a folder, with a slash
 */
public record SiteBundle(String name, List<String> sheets, List<SheetFile> further) {
  public SiteBundle {
    sheets = List.copyOf(sheets);
    further = List.copyOf(further);
  }

  /** The name of the file that it is written to. */
  public String file() {
    return name + ".zip";
  }
}
