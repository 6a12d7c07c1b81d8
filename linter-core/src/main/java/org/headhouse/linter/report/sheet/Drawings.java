package org.headhouse.linter.report.sheet;

import java.util.List;

/**
 * The drawings of a site. Each text is a complete {@code svg} element that a page can contain as it
 * is: text of a site's file is escaped, and the drawing has a text alternative.
 *
 * @param wiring the wiring diagram, one text a row of it
 * @param inWords the same in a smaller size, for a sheet beside a table of what is landed; empty
 *     for a short line
 * @param signs what its numbered signs mean
 * @param voltages along the chain; empty where nothing is computed
 * @param time how that of the line is spent; empty where nothing is computed
 */
public record Drawings(
    List<String> wiring,
    List<String> inWords,
    List<SignMeaning> signs,
    String voltages,
    String time) {

  /** No drawings. */
  public static final Drawings NONE = new Drawings(List.of(), List.of(), List.of(), "", "");

  public Drawings {
    wiring = List.copyOf(wiring);
    inWords = List.copyOf(inWords);
    signs = List.copyOf(signs);
  }
}
