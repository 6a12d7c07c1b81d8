package org.headhouse.linter.report.sheet;

import java.util.List;

/**
 * What is drawn of a site. Each text is a complete {@code svg} element that may stand in a page as
 * it is: whatever it holds of a site's file is escaped, and it has a name for those who cannot see
 * it.
 *
 * @param wiring the wiring diagram, one text a page of paper
 * @param plots the course of voltages along the chain, and how the time of the line is spent
 */
public record Drawings(List<String> wiring, List<String> plots) {

  /** Where nothing is drawn. */
  public static final Drawings NONE = new Drawings(List.of(), List.of());

  public Drawings {
    wiring = List.copyOf(wiring);
    plots = List.copyOf(plots);
  }
}
