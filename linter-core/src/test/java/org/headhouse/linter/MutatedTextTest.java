package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;
import org.junit.jupiter.api.Test;

/** Whatever is done to a site's text, the tool does not fail and points into the file. */
class MutatedTextTest {
  private static final String[] PIECES = {
    "\t",
    "\r",
    "\r\n",
    "\n\n",
    "\u0085",
    "\u2028",
    "\u2029",
    "\uFEFF",
    "\uD83C\uDF31",
    "\u0000",
    "\u200B",
    "e\u0301",
    "&a ",
    "*a",
    "<<: *a\n",
    "!!str ",
    "!x ",
    "---\n",
    "...\n",
    "%YAML 1.1\n",
    "# c\n",
    "? ",
    ": ",
    "- ",
    "'",
    "\"",
    "[",
    "]",
    "{",
    "}",
    ",",
    "|\n",
    ">-\n",
    "\\",
    "~",
    "NO",
    "010",
    "12:30",
    "1e20",
    ".nan",
    "-",
    "  ",
    "&a\n",
    "0 m",
    "repeater: x\n",
    "unit: x\n",
    "suppressions: [{rule: x, justification: y}]\n",
    "@",
    "`",
    "\uD800"
  };

  private static List<String> texts() throws IOException {
    List<String> texts = new ArrayList<>(List.of(Example.SITE));
    try (Stream<Path> files = Files.walk(Path.of("..", "sample-sites", "sites"))) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        texts.add(Files.readString(file));
      }
    }
    return texts;
  }

  @Test
  void neverFails() throws IOException {
    List<String> texts = texts();
    SiteLinter linter =
        SiteLinter.builder()
            .deviceTypes(Path.of("..", "sample-sites", "device-types.yaml"))
            .build();
    double broken =
        RandomCases.share(
            6_000,
            random -> check(linter, mutated(texts.get(random.nextInt(texts.size())), random)));
    assertThat(broken).isGreaterThan(0.5);
  }

  /** Whether there are results, all of them inside of the text. */
  private static boolean check(SiteLinter linter, byte[] bytes) {
    CheckReport report = linter.check(Stream.of(new SiteInput("example.yaml", most -> bytes)));
    String text = new String(bytes, UTF_8);
    assertThat(report.notifications()).as(text).isEmpty();
    Lines lines = new Lines(text);
    for (Result result : report.results()) {
      lines.assertInside(result.location());
      for (RelatedLocation related : result.related()) {
        if (related.location().file().equals("example.yaml")) {
          lines.assertInside(related.location());
        }
      }
    }
    return !report.results().isEmpty();
  }

  private static byte[] mutated(String text, Random random) {
    StringBuilder mutated = new StringBuilder(text);
    for (int edits = 1 + random.nextInt(4); edits > 0 && !mutated.isEmpty(); edits--) {
      int at = random.nextInt(mutated.length());
      int end = Math.min(mutated.length(), at + 1 + random.nextInt(random.nextBoolean() ? 3 : 60));
      String piece = PIECES[random.nextInt(PIECES.length)];
      switch (random.nextInt(5)) {
        case 0 -> mutated.delete(at, end);
        case 1 -> mutated.insert(at, mutated.substring(at, end));
        case 2 -> mutated.replace(at, at + 1, piece);
        case 3 -> mutated.setLength(Math.max(1, at));
        default -> mutated.insert(at, piece);
      }
    }
    byte[] bytes = mutated.toString().getBytes(UTF_8);
    if (bytes.length > 0 && random.nextInt(10) == 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  /** The lengths of a text's lines in code points, counted apart from the code under test. */
  private record Lines(String text, List<String> lines) {
    Lines(String text) {
      this(text, List.of(withoutMark(text).split("\r\n|[\n\r]", -1)));
    }

    private static String withoutMark(String text) {
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    void assertInside(Location location) {
      Region region = location.region();
      assertThat(region.startLine()).as(text).isBetween(1, lines.size());
      assertThat(region.endLine()).as(text).isBetween(region.startLine(), lines.size());
      // The line's end counts as one character more.
      assertThat(region.startColumn())
          .as("%s in %s", region, text)
          .isBetween(1, length(region.startLine()) + 1);
      assertThat(region.endColumn())
          .as("%s in %s", region, text)
          .isBetween(1, length(region.endLine()) + 2);
      if (region.startLine() == region.endLine()) {
        assertThat(region.endColumn()).as(text).isGreaterThanOrEqualTo(region.startColumn());
      }
      String line = lines.get(region.startLine() - 1);
      assertThat(line).as(text).startsWith(location.line());
    }

    private int length(int number) {
      String line = lines.get(number - 1);
      return line.codePointCount(0, line.length());
    }
  }
}
