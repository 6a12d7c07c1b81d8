package org.headhouse.linter.diagram;

import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;

/**
 * A faulty place of the drawing.
 *
 * @param number as its sign has it, from 1
 * @param item the place in the chain of the item that it is about, from 0; -1 for the line as a
 *     whole
 * @param place in words
 * @param results what is wrong there, in the order of the file; at least one
 */
public record Mark(int number, int item, String place, List<Result> results) {

  public Mark {
    results = List.copyOf(results);
  }

  /** The most severe level of its results. */
  public Level level() {
    return results.stream().map(Result::level).min(Level::compareTo).orElse(Level.NOTE);
  }
}
