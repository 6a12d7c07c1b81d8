package org.headhouse.linter.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The page of a rule, taken apart.
 *
 * @param title the heading
 * @param requirement what stands between the heading and the first section
 * @param sections by their headings, in the order of the page
 */
record RulePage(String title, String requirement, Map<String, Section> sections) {
  private static final Path FOLDER =
      Path.of("src", "main", "resources", "org", "headhouse", "linter", "rules");

  /** The sections that a page may have, in their order. */
  static final List<String> SECTIONS =
      List.of(
          "Why", "Breaks the rule", "Message", "Keeps the rule", "Fix", "Parameters", "Sources");

  static RulePage of(String id) {
    String[] parts = text(id).split("\n## ", -1);
    Map<String, Section> sections = new LinkedHashMap<>();
    for (int i = 1; i < parts.length; i++) {
      String[] section = parts[i].split("\n", 2);
      if (sections.put(section[0], new Section(section[1])) != null) {
        throw new AssertionError(id + " has two sections \"" + section[0] + "\"");
      }
    }
    String[] start = parts[0].split("\n", 2);
    return new RulePage(start[0], start[1].strip(), sections);
  }

  /** From the sources, where a page that was just written is as well. */
  private static String text(String id) {
    try {
      return Files.readString(FOLDER.resolve(id + ".md"));
    } catch (IOException noPage) {
      throw new UncheckedIOException(noPage);
    }
  }

  /** A section, empty where the page lacks it. */
  Section section(String title) {
    return sections.getOrDefault(title, new Section(""));
  }

  /** Writes the page into the sources, with what the code says of its rule. */
  void write(String id, String requirement, String message) {
    Map<String, Section> written = new LinkedHashMap<>(sections);
    written.put("Message", new Section("\n" + message + "\n\n"));
    StringBuilder text = new StringBuilder("# " + id + "\n\n" + requirement + "\n");
    for (String title : SECTIONS) {
      if (written.containsKey(title)) {
        text.append("\n## ").append(title).append("\n\n");
        text.append(written.get(title).text().strip()).append('\n');
      }
    }
    try {
      Files.writeString(FOLDER.resolve(id + ".md"), text);
    } catch (IOException notWritable) {
      throw new UncheckedIOException(notWritable);
    }
  }

  record Section(String text) {
    /** The text of the block with an info string; empty where there is none. */
    String block(String info) {
      Matcher matcher = Pattern.compile("```" + info + "\n(.*?)```", Pattern.DOTALL).matcher(text);
      return matcher.find() ? matcher.group(1) : "";
    }
  }
}
