package org.headhouse.linter.proof;

import java.util.List;
import org.headhouse.linter.site.Side;
import org.jspecify.annotations.Nullable;

/** One thing that somebody enters on a visit, as a list to fill in names it. */
public enum VisitEntry {
  /** Of which site the list is. */
  SITE("site"),
  READINGS("outdoor readings seen"),
  STORM_RESPONSE("storm response: vents shut in"),
  WIND_LIMIT("storm response: wind limit"),
  STALE_RESPONSE("vents shut without readings"),
  /** Of a unit whose vents do not close by themselves then, as its file sets it. */
  STALE_HOLD("vents stay where they are without readings"),
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

  /**
   * How a row says where: {@code East Boiler Room, side out}.
   *
   * @param item its name
   * @param side of a repeater; null for any other item
   */
  public static String where(String item, @Nullable Side side) {
    return item + (side == null ? "" : ", side " + side.word());
  }
}
