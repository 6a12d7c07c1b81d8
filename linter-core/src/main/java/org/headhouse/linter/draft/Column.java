package org.headhouse.linter.draft;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.site.ItemKind;
import org.jspecify.annotations.Nullable;

/** The columns that are read, with the headings that they are known by, in the order of a file. */
enum Column {
  NAME("name unit unit-name", Measure.NONE),
  ROLE("role kind", Measure.NONE),
  ADDRESS("address server-address modbus-address", Measure.NONE),
  TYPE("device-type type device", Measure.NONE),
  SERIAL("serial-number serial serial-no", Measure.NONE),
  FIRMWARE("firmware firmware-version", Measure.NONE),
  MODULE("comm-module communication-module", Measure.NONE),
  CONDUCTORS("conductors", Measure.NONE),
  PAIR("pair", Measure.NONE),
  TERMINATION("termination terminator", Measure.RESISTANCE),
  VENTS("vents", Measure.NONE),
  STALE("on-stale-readings", Measure.NONE),
  STUB("stub stub-length", Measure.LENGTH),
  LENGTH(
      "cable-to-next length-to-next cable-length-to-next cable-length cable length",
      Measure.LENGTH),
  RUN("run-to-next", Measure.NONE),
  PROTECTION("surge-protection-to-next surge-protection", Measure.NONE);

  /**
   * What may be measured in a column, and the words for its units, each after how a site has it.
   */
  enum Measure {
    NONE(""),
    LENGTH("m metre metres meter meters|ft foot feet"),
    RESISTANCE("ohm ohms \u03C9|kohm kohms k\u03C9");

    private final String words;

    Measure(String words) {
      this.words = words;
    }

    /** The unit as a site has it, or null for a word that is none; case does not count. */
    @Nullable String unit(String word) {
      String lower = word.toLowerCase(Locale.ROOT);
      for (String unit : words.split("\\|", -1)) {
        List<String> names = List.of(unit.split(" ", -1));
        if (!lower.isEmpty() && names.contains(lower)) {
          return names.get(0);
        }
      }
      return null;
    }
  }

  private static final Pattern WITH_UNIT =
      Pattern.compile("(.+?)(?:-(?:in-)?(\\p{L}+)|-?[(\\[](\\p{L}+)[)\\]])");

  private final String headings;
  private final Measure measure;

  Column(String headings, Measure measure) {
    this.headings = headings;
    this.measure = measure;
  }

  /** All headings; the first is the one to write, and the key of the column in a site. */
  List<String> headings() {
    return List.of(headings.split(" "));
  }

  String heading() {
    return headings().get(0);
  }

  /** What may be measured in it. */
  Measure measure() {
    return measure;
  }

  /** Whether an item of a kind can have a value there. */
  boolean isOf(ItemKind kind) {
    return switch (this) {
      case ADDRESS -> kind == ItemKind.UNIT || kind == ItemKind.EQUIPMENT;
      case FIRMWARE, MODULE, VENTS, STALE -> kind == ItemKind.UNIT;
      default -> true;
    };
  }

  /** Whether what it has is any text, and no word of the format. */
  private boolean isText() {
    return this == NAME || this == TYPE || this == SERIAL || this == FIRMWARE;
  }

  /** A value as it is written in a site. */
  String written(String value) {
    return isText() ? YamlScalar.of(value) : value;
  }

  /** Whether a heading, as {@link #normal} has it, names this column. */
  boolean isNamed(String normal) {
    return headings().contains(normal) || headings().contains(withoutUnit(normal));
  }

  /** Spaces of all kinds and low lines count as hyphens, and case does not count. */
  static String normal(String heading) {
    return Cell.withPlainSpaces(heading)
        .strip()
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s_-]+", "-");
  }

  private String withoutUnit(String normal) {
    Matcher matcher = WITH_UNIT.matcher(normal);
    return matcher.matches() && measure.unit(word(matcher)) != null ? matcher.group(1) : normal;
  }

  /** The unit that a heading carries, as in {@code cable (ft)}; empty for none. */
  String unit(String normal) {
    Matcher matcher = WITH_UNIT.matcher(normal);
    String unit =
        headings().contains(normal) || !matcher.matches() ? null : measure.unit(word(matcher));
    return unit == null ? "" : unit;
  }

  private static String word(Matcher matcher) {
    String bare = matcher.group(2);
    return bare == null ? matcher.group(3) : bare;
  }
}
