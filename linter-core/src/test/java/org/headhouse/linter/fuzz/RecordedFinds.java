package org.headhouse.linter.fuzz;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a record says was seen or measured, looked for in the rows of a list: at the unit that it
 * names, under what is asked for there, with the same digits.
 */
final class RecordedFinds {
  /** From a key of the record to how its row begins, as the goal report words it, letters only. */
  private static final Map<String, String> ASKED =
      Map.of(
          "outdoor-readings-seen", "outdoorreadingsseen",
          "stale-response-seen", "ventsshutwithoutreadings",
          "limit", "stormresponsewindlimit",
          "closed-in", "stormresponseventsshutin",
          "pair-resistance", "pairresistance",
          "idle-voltage", "idlevoltage");

  private static final Pattern SECTION = Pattern.compile("([a-z-]+):");
  private static final Pattern NAMED = Pattern.compile("- \\{(?:at|unit): ([^,}]+)(.*)}");
  private static final Pattern VALUE =
      Pattern.compile("(pair-resistance|idle-voltage|limit|closed-in): ([^,}]+)");
  private static final Pattern PLAIN = Pattern.compile("- ([^{:]+)");

  private final String head;
  private final List<List<String>> rows;

  /**
   * @param head the unit that values without a name are of
   * @param rows cells under what, where and found
   */
  RecordedFinds(String head, List<List<String>> rows) {
    this.head = head;
    this.rows = rows;
  }

  /** The first line of a record that no row says, or an empty text. */
  String unsaid(String record) {
    String section = "";
    for (String line : record.lines().map(String::strip).toList()) {
      Matcher start = SECTION.matcher(line);
      Matcher named = NAMED.matcher(line);
      Matcher plain = PLAIN.matcher(line);
      boolean said = true;
      if (start.matches()) {
        section = start.group(1);
      } else if (named.matches()) {
        said = saysValues(named.group(1), named.group(2));
      } else if (plain.matches()) {
        said = isSeen(section, plain.group(1));
      } else {
        said = saysValues(head, line);
      }
      if (!said) {
        return line;
      }
    }
    return "";
  }

  /** Of a storm, one row may say the limit and another one the time. */
  private boolean isSeen(String section, String name) {
    return section.equals("storm-response-seen")
        ? Stream.of("limit", "closed-in").anyMatch(key -> isSaid(key, name, ""))
        : isSaid(section, name, "");
  }

  private boolean saysValues(String name, String values) {
    Matcher value = VALUE.matcher(values);
    while (value.find()) {
      if (!isSaid(value.group(1), name, value.group(2))) {
        return false;
      }
    }
    return true;
  }

  private boolean isSaid(String key, String name, String value) {
    String asked = ASKED.get(key);
    return asked != null
        && rows.stream()
            .anyMatch(
                row ->
                    letters(row.get(0)).startsWith(asked)
                        && letters(row.get(1)).contains(letters(name))
                        && digits(row.get(2)).contains(digits(value)));
  }

  private static String letters(String text) {
    return text.replaceAll("[^\\p{L}\\p{N}]", "").toLowerCase(Locale.ROOT);
  }

  private static String digits(String text) {
    return text.replaceAll("[^0-9]", "");
  }
}
