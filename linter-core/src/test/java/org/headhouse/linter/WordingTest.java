package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * All that a user can read is in words that are understood at first reading. Those that are dropped
 * were read twice by people who had not seen the project.
 */
class WordingTest {
  private static final Pattern DROPPED =
      Pattern.compile(
          "\\b(?:is told|are told|told of|tells|thrown back|mend|mends|mended|grave|graver|stands"
              + " without|stands behind|stays? away|truth values?|something is in the way|besides)\\b",
          Pattern.CASE_INSENSITIVE);

  /** A text in the code; comments may explain in other words. */
  private static final Pattern TEXT =
      Pattern.compile("\"\"\"\\n.*?\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"", Pattern.DOTALL);

  private static final Pattern COMMENT =
      Pattern.compile("(?m)/\\*.*?\\*/|^\\s*//[^\\n]*$", Pattern.DOTALL);

  /** What the goal help and the page on goals say of a parameter or a goal. */
  private static final Pattern DESCRIPTION =
      Pattern.compile("/\\*\\*((?:(?!\\*/).)*)\\*/\\s*@(?:Parameter|Mojo)\\b", Pattern.DOTALL);

  @Test
  void pagesSayItPlainly() throws IOException {
    List<Path> pages =
        new ArrayList<>(List.of(Path.of("../README.md"), Path.of("../DEVELOPERS.md")));
    pages.addAll(files(Path.of("docs"), ".md"));
    pages.addAll(files(Path.of("src/main/resources"), ".md"));
    pages.addAll(files(Path.of("src/main/resources"), ".json"));
    pages.addAll(files(Path.of("src/main/jte"), ".jte"));
    pages.add(Path.of("../sample-sites/faulty/expected.txt"));
    assertThat(pages).hasSizeGreaterThan(100);
    List<String> found = new ArrayList<>();
    for (Path page : pages) {
      look(page, withoutCode(Files.readString(page)), found);
    }
    assertThat(found).isEmpty();
  }

  /** The name of a variable in a block of Java is not read as a sentence. */
  private static String withoutCode(String page) {
    return Pattern.compile("```java\\n.*?```", Pattern.DOTALL).matcher(page).replaceAll("");
  }

  @Test
  void messagesSayItPlainly() throws IOException {
    List<String> found = new ArrayList<>();
    for (String module : List.of(".", "../linter-maven-plugin")) {
      for (Path file : files(Path.of(module, "src/main/java"), ".java")) {
        String code = Files.readString(file);
        DESCRIPTION.matcher(code).results().forEach(match -> look(file, match.group(1), found));
        TEXT.matcher(COMMENT.matcher(code).replaceAll(""))
            .results()
            .forEach(match -> look(file, match.group(), found));
      }
    }
    assertThat(found).isEmpty();
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static void look(Path file, String text, List<String> found) {
    Matcher matcher = DROPPED.matcher(text);
    while (matcher.find()) {
      int from = Math.max(0, matcher.start() - 40);
      int to = Math.min(text.length(), matcher.end() + 40);
      found.add(file + ": …" + text.substring(from, to) + "…");
    }
  }
}
