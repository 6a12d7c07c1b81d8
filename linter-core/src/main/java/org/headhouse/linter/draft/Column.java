package org.headhouse.linter.draft;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The columns that are read, with the headings that they are known by. */
enum Column {
  NAME("name unit unit-name"),
  LENGTH("cable-to-next length-to-next cable-length-to-next cable-length cable length"),
  TYPE("device-type type device");

  private static final Pattern WITH_UNIT =
      Pattern.compile("(.+?)(?:-(?:in-)?(m|ft)|-?[(\\[](m|ft)[)\\]])");

  private final String headings;

  Column(String headings) {
    this.headings = headings;
  }

  /** All headings; the first is the one to write. */
  List<String> headings() {
    return List.of(headings.split(" "));
  }

  String heading() {
    return headings().get(0);
  }

  /** Whether a heading, as {@link #normal} has it, names this column. */
  boolean isNamed(String normal) {
    return headings().contains(this == LENGTH ? withoutUnit(normal) : normal);
  }

  /** Spaces and low lines count as hyphens, and case does not count. */
  static String normal(String heading) {
    return heading.toLowerCase(Locale.ROOT).strip().replaceAll("[\\s_-]+", "-");
  }

  private static String withoutUnit(String normal) {
    Matcher matcher = WITH_UNIT.matcher(normal);
    return matcher.matches() ? matcher.group(1) : normal;
  }

  /** The unit of length that a heading carries, as in {@code cable (ft)}; empty for none. */
  static String unit(String normal) {
    Matcher matcher = WITH_UNIT.matcher(normal);
    if (!matcher.matches()) {
      return "";
    }
    String bare = matcher.group(2);
    return bare == null ? matcher.group(3) : bare;
  }
}
