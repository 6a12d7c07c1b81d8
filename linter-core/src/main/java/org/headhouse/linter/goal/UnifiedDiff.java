package org.headhouse.linter.goal;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import java.util.ArrayList;
import java.util.List;

/** What differs between two states of a file, in the unified format of POSIX diff. */
final class UnifiedDiff {
  private static final int CONTEXT = 3;

  private UnifiedDiff() {}

  /** The lines of the difference; none where there is none. */
  static List<String> of(String path, byte[] before, byte[] after) {
    List<String> old = lines(before);
    List<String> diff =
        UnifiedDiffUtils.generateUnifiedDiff(
            "a/" + path, "b/" + path, old, DiffUtils.diff(old, lines(after)), CONTEXT);
    // The mark of a missing end of line is in one text with its line.
    return diff.stream().flatMap(line -> line.lines()).toList();
  }

  /**
   * The lines without their ends; the last one with a mark where the file does not end with one.
   */
  private static List<String> lines(byte[] bytes) {
    List<String> lines = new ArrayList<>(List.of(new String(bytes, UTF_8).split("\n", -1)));
    int last = lines.size() - 1;
    if (lines.get(last).isEmpty()) {
      lines.remove(last);
    } else {
      lines.set(last, lines.get(last) + "\n\\ No newline at end of file");
    }
    lines.replaceAll(line -> line.endsWith("\r") ? line.substring(0, line.length() - 1) : line);
    return lines;
  }
}
