package org.headhouse.linter.change;

import java.util.List;

/** What is done at one item in the course of a piece of wiring. */
public record WiringPlace(String item, List<FieldAction> actions) {

  public WiringPlace {
    actions = List.copyOf(actions);
  }
}
