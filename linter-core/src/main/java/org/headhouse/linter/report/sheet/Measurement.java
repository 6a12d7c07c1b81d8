package org.headhouse.linter.report.sheet;

/**
 * One value to measure.
 *
 * @param state of the supplies and the line
 * @param what and between which terminals
 * @param where the item whose terminals they are, and of a repeater the side
 * @param computed for the line as it is written, or why there is none
 * @param acceptable what the meter may show over all tolerances and temperatures; empty where
 *     nothing is known
 * @param last what the record in the file has; empty for nothing
 * @param limits what an acceptable reading does not tell; empty where there is nothing to say
 */
record Measurement(
    String state,
    String what,
    String where,
    String computed,
    String acceptable,
    String last,
    String limits) {

  /** {@code Power off}: what the state begins with. */
  String stateInShort() {
    int end = state.indexOf(',');
    return end < 0 ? state : state.substring(0, end);
  }

  /** Whether it is taken of the line as it is in use, with nothing taken off. */
  boolean isOfWholeLine() {
    return !what.contains(Measurements.TERMINATORS_OFF);
  }
}
