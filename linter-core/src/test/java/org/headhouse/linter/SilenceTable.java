package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of the page on what can silence a result: each row has what silences, then what it can
 * silence, then what it never can, several cells of each with semicolons between.
 */
public final class SilenceTable {
  private static final String NOTHING = "nothing";

  private SilenceTable() {}

  /** One cell, which is a test. */
  public record Cell(String by, boolean silences, String what, Check check) {
    @Override
    public String toString() {
      return by + (silences ? " silences " : " never silences ") + what;
    }
  }

  /** What a cell says, tried. */
  @FunctionalInterface
  public interface Check {
    /** Whether the result is told, without and with what may silence it. */
    boolean isTold(boolean withIt) throws Exception;
  }

  /** Tries what a cell says. */
  public static void check(Cell cell) throws Exception {
    assertThat(cell.check().isTold(false)).as("without: %s", cell).isTrue();
    assertThat(cell.check().isTold(true)).as("with: %s", cell).isNotEqualTo(cell.silences());
  }

  /** Compares the cells with those of the table under a heading. */
  public static void compare(Path page, String heading, List<Cell> cells) throws IOException {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (Cell cell : cells) {
      List<String> both = rows.computeIfAbsent(cell.by(), any -> new ArrayList<>(List.of("", "")));
      int column = cell.silences() ? 0 : 1;
      String before = both.get(column);
      both.set(column, before.isEmpty() ? cell.what() : before + "; " + cell.what());
    }
    StringBuilder table =
        new StringBuilder("| by | can silence | can never silence |\n|---|---|---|\n");
    rows.forEach(
        (by, both) ->
            table
                .append("| " + by + " | ")
                .append((both.get(0).isEmpty() ? NOTHING : both.get(0)) + " | ")
                .append((both.get(1).isEmpty() ? NOTHING : both.get(1)) + " |\n"));
    String text = Files.readString(page);
    assertThat(text)
        .as("the table of the page under %s", heading)
        .contains(heading + "\n\n" + table);
  }
}
