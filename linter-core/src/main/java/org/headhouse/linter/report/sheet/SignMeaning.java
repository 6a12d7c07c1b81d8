package org.headhouse.linter.report.sheet;

import java.util.List;

/**
 * A numbered sign of a wiring diagram, and what it means.
 *
 * @param item the place in the chain of the item that it is about, from 0; -1 for the line as a
 *     whole
 * @param level the most severe of its results, in a word
 * @param place what it stands at
 * @param facts what is wrong there; at least one
 */
public record SignMeaning(int number, int item, String level, String place, List<String> facts) {
  public SignMeaning {
    place = PlainText.sentence(place);
    facts = facts.stream().map(PlainText::sentence).toList();
  }
}
