package org.headhouse.linter.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page on lists says what the reader does. */
class ListsPageTest {
  private static final Path PAGE = Path.of("docs", "lists.md");

  private static String block(String mark) throws IOException {
    Matcher matcher =
        Pattern.compile("<!-- " + mark + " -->\n```[a-z]+\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(PAGE));
    assertThat(matcher.find()).as("the block %s", mark).isTrue();
    return matcher.group(1);
  }

  @Test
  void theHeadingsAreThose() throws IOException {
    List<String> rows = new ArrayList<>();
    Matcher matcher =
        Pattern.compile("(?m)^\\| (`.*?`) \\| ?(.*?) ?\\| [^|]+ \\|$")
            .matcher(Files.readString(PAGE));
    while (matcher.find()) {
      rows.add(matcher.group(1) + " | " + matcher.group(2).strip());
    }
    List<String> wanted = new ArrayList<>();
    for (Column column : Column.values()) {
      List<String> others = column.headings().subList(1, column.headings().size());
      wanted.add(
          "`"
              + column.heading()
              + "` | "
              + (others.isEmpty() ? "" : "`" + String.join("`, `", others) + "`"));
    }
    assertThat(rows).containsExactlyElementsOf(wanted);
  }

  @Test
  void theLineThatExistsIsDrafted() throws IOException {
    String text = Lists.made(block("example: existing"));
    assertThat(text).endsWith(block("output: existing").split("…\n", 2)[1]);
    String result = block("output: results").strip();
    assertThat(Lists.results(Lists.linter(""), text)).anyMatch(line -> line.contains(result));
  }
}
