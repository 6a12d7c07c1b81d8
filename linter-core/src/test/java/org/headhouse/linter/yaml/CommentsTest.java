package org.headhouse.linter.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.comments.CommentType;
import org.yaml.snakeyaml.events.CommentEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/** Comments against YAML 1.2.2 §6.6 and against the comments that SnakeYAML's own parser tells. */
class CommentsTest {

  @ParameterizedTest
  @MethodSource("sampleSites")
  void areThoseOfTheParserInTheSampleSites(Path file) throws IOException {
    assertSameAsParser(Files.readString(file));
  }

  static Stream<Path> sampleSites() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("../sample-sites/sites"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "# first\na: 1 # second\n# third\n",
        "a: \"no # comment\" # one\nb: 'nor # here'\n",
        "a: b#c # one\nurl: x#y\n",
        "list: # head\n  - a # first\n  # between\n  - b\n",
        "flow: [a, # one\n  b] # two\n",
        "a: &x 1 # anchored\nb: *x # alias\n",
        "a: 1 # wide \uD83C\uDF3F sign\n\uD83C\uDF3F: 2 # after a wide one\n",
      })
  void areThoseOfTheParser(String text) {
    assertSameAsParser(text);
  }

  @Test
  void doNotStandInBlockScalarsButMayFollowTheirIndicator() {
    String text = "a: | # of the indicator\n  text # no comment\nb: 1 # last\n";
    assertThat(read(text).comments())
        .extracting(Comment::text)
        .containsExactly("of the indicator", "last");
  }

  @Test
  void areFoundBehindADuplicateKeyToo() {
    assertThat(read("a: 1\na: 'x # y' # told\n").comments())
        .extracting(Comment::text)
        .containsExactly("told");
  }

  /** What follows a first document is not read, so it may be no YAML. */
  @Test
  void endWithTheFirstDocument() {
    assertThat(read("a: 1 # one\n---  - b # two\n").comments())
        .extracting(Comment::text)
        .containsExactly("one");
    assertThat(read("--- # first\na: 1\n... # end\n# last\n").comments())
        .extracting(Comment::text)
        .containsExactly("first", "end", "last");
  }

  @Test
  void areNoneWhereTheTextCannotBeRead() {
    assertThat(read("a: [1 # open\n").comments()).isEmpty();
  }

  private static void assertSameAsParser(String text) {
    SourceText source = new SourceText("a.yaml", text);
    List<Comment> comments = read(text).comments();
    assertThat(comments).extracting(Comment::text).containsExactlyElementsOf(ofParser(text));
    assertThat(comments)
        .allSatisfy(
            comment ->
                assertThat(slice(source, comment.region()))
                    .startsWith("#")
                    .endsWith(comment.text()));
  }

  private static String slice(SourceText source, Region region) {
    assertThat(region.endLine()).isEqualTo(region.startLine());
    String line = source.line(region.startLine(), Integer.MAX_VALUE);
    return line.substring(
        line.offsetByCodePoints(0, region.startColumn() - 1),
        line.offsetByCodePoints(0, region.endColumn() - 1));
  }

  private static Document read(String text) {
    return new YamlReader(Limits.DEFAULT).read(new SourceText("a.yaml", text));
  }

  private static List<String> ofParser(String text) {
    LoaderOptions options = new LoaderOptions();
    options.setProcessComments(true);
    ParserImpl parser = new ParserImpl(new StreamReader(text), options);
    List<String> comments = new ArrayList<>();
    while (!parser.checkEvent(Event.ID.StreamEnd)) {
      if (parser.getEvent() instanceof CommentEvent comment
          && comment.getCommentType() != CommentType.BLANK_LINE) {
        comments.add(comment.getValue().strip());
      }
    }
    return comments;
  }
}
