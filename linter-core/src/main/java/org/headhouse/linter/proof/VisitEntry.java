package org.headhouse.linter.proof;

import java.util.List;

/** One thing that somebody enters on a visit, as a list to fill in names it. */
public enum VisitEntry {
  /** Of which site the list is. */
  SITE("site"),
  READINGS("outdoor readings seen"),
  STORM_RESPONSE("storm response: vents shut in"),
  WIND_LIMIT("storm response: wind limit"),
  STALE_RESPONSE("vents shut without readings"),
  PAIR_RESISTANCE("pair resistance"),
  IDLE_VOLTAGE("idle voltage");

  /** The columns of the list, in the order in which they are written. */
  public static final List<String> COLUMNS =
      List.of("what", "where", "acceptable", "found", "by", "date", "remark");

  private final String words;

  VisitEntry(String words) {
    this.words = words;
  }

  /** For people, without a unit. */
  public String words() {
    return words;
  }

  /** The same with what is to be entered: {@code idle voltage (V)}. */
  public String asked(String unit) {
    return words + " (" + unit + ")";
  }
}
