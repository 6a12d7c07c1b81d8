package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.jspecify.annotations.Nullable;

/** What a check finds in the later state of sites: whoever follows a plan ends with it. */
public final class OpenResults {
  /** Nothing was checked, or nothing found. */
  public static final OpenResults NONE = new OpenResults(List.of());

  private static final int MOST_SHOWN = 20;

  private final Map<String, List<Result>> byFile = new LinkedHashMap<>();

  /** Results that are neither accepted nor milder than somebody on the site has to know. */
  public OpenResults(List<Result> results) {
    for (Result result : results) {
      byFile.computeIfAbsent(result.location().file(), file -> new ArrayList<>()).add(result);
    }
    // Of equal ones, each stays at its place in the file.
    byFile.values().forEach(all -> all.sort(Comparator.comparing(result -> !isError(result))));
  }

  private static boolean isError(Result result) {
    return result.level() == Level.ERROR;
  }

  /** Those of one file: errors first. */
  List<Result> of(String file) {
    return byFile.getOrDefault(file, List.of());
  }

  /** What the plan for a file is worth with them; null where there are none. */
  @Nullable String verdict(String file) {
    long errors = of(file).stream().filter(OpenResults::isError).count();
    if (errors > 0) {
      return "STOP: the later state has "
          + (errors == 1 ? "1 error" : errors + " errors")
          + ", and work by this file leads to a line with "
          + (errors == 1 ? "it" : "them")
          + ". Correct the file and plan again before anybody goes.";
    }
    return of(file).isEmpty()
        ? null
        : "The later state has warnings, and work by this file leads to a line with them. Read"
            + " them before you go.";
  }

  /** Each in one line. */
  List<String> lines(String file) {
    List<Result> all = of(file);
    List<String> lines = new ArrayList<>();
    all.stream().limit(MOST_SHOWN).map(TextReport::inOneLine).forEach(lines::add);
    if (all.size() > MOST_SHOWN) {
      lines.add(all.size() - MOST_SHOWN + " more: a check shows them");
    }
    return lines;
  }
}
