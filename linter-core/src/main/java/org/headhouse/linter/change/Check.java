package org.headhouse.linter.change;

import java.util.List;
import org.headhouse.linter.site.Side;
import org.jspecify.annotations.Nullable;

/**
 * What has to be seen before the next step begins.
 *
 * @param at the devices at which it is seen; none where it is seen at the software
 * @param address with which a device answers, or null
 * @param side of a repeater, where something is measured; else null
 */
public record Check(Kind kind, List<String> at, @Nullable Integer address, @Nullable Side side) {

  /** What is seen. */
  public enum Kind {
    /** The software sends nothing. */
    SILENT_SOFTWARE("silent-software"),
    /** Each zone shows the values of its own unit. */
    ZONES_LIVE("zones-live"),
    /** The display went dark and came back, and shows an address. */
    RESTARTED("restarted"),
    /** The display shows what was set. */
    SETTINGS_SHOWN("settings-shown"),
    /** The display is dark. */
    DARK("dark"),
    /** Asked once by hand at an address, a device gives its name. */
    NAME_READ_BACK("name-read-back"),
    /** Asked once by hand at an address, a device without a name to read gives its values. */
    ANSWERS("answers"),
    /** Asked once by hand, nothing answers at an address. */
    NO_ANSWER("no-answer"),
    /** The displays show the outdoor readings of the head unit. */
    READINGS_SHOWN("readings-shown"),
    /** The resistance of the pair, with all supplies isolated. */
    PAIR_RESISTANCE("pair-resistance"),
    /** The voltage of the idle pair. */
    IDLE_VOLTAGE("idle-voltage");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** For machines. */
    public String word() {
      return word;
    }
  }

  public Check {
    at = List.copyOf(at);
  }

  static Check of(Kind kind, List<String> at) {
    return new Check(kind, at, null, null);
  }

  static Check of(Kind kind, String at, int address) {
    return new Check(kind, List.of(at), address, null);
  }
}
