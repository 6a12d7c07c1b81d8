package org.headhouse.linter.report.sheet;

import java.util.List;

/**
 * The drawings of a site. Each text is a complete {@code svg} element that a page can contain as it
 * is: text of a site's file is escaped, and the drawing has a text alternative.
 *
 * @param wiring the wiring diagram, one text a page of paper
 * @param plots the course of voltages along the chain, and how the time of the line is spent
 */
public record Drawings(List<String> wiring, List<String> plots) {

  /** No drawings. */
  public static final Drawings NONE = new Drawings(List.of(), List.of());

  public Drawings {
    wiring = List.copyOf(wiring);
    plots = List.copyOf(plots);
  }
}
