package org.headhouse.linter.fuzz;

import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.Utf8;
import org.headhouse.linter.yaml.Comment;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.ParserEvents;
import org.headhouse.linter.yaml.YamlReader;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * The parser tells the same whichever reader gives it the text. A text is read just where the
 * library's own parser takes it and the limits allow it; then the tree is the one that the library
 * composes, and its regions lie in the text and in each other.
 */
final class YamlProperty implements Property {
  private static final String FILE = "a.yaml";

  @Override
  public void tryWith(byte[] input) {
    if (!(Utf8.decode(FILE, input) instanceof Utf8.Decoded.Text decoded)) {
      return;
    }
    SourceText source = decoded.text();
    ParserEvents.assertSameOfEitherReader(source.text());
    Document document = new YamlReader(Limits.DEFAULT).read(source);
    var root = document.root();
    Told told = new Told(FILE, input);
    document.findings().forEach(finding -> told.region(finding.place().region()));
    document.findings().forEach(finding -> Told.message(finding.message()));
    if (root == null) {
      Demand.that(
          !parses(WrittenTree.asRead(source.text())) || isBeyondParser(document),
          "not read: %s",
          source.text());
      return;
    }
    Demand.that(
        parses(WrittenTree.asRead(source.text())),
        "read although it is no YAML: %s",
        source.text());
    new WrittenTree(source, told).look(root);
    for (Comment comment : document.comments()) {
      told.region(comment.region());
      Demand.that(
          WrittenTree.slice(source, comment.region()).startsWith("#"),
          "no comment at %s",
          comment.region());
    }
    if (document.findings().isEmpty()) {
      ComposedTree.compare(root, source.text());
    }
  }

  /** The first document, and whether another one follows. */
  private static boolean parses(String text) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    try {
      ParserImpl parser = new ParserImpl(new StreamReader(text), options);
      while (!parser.checkEvent(Event.ID.DocumentEnd) && !parser.checkEvent(Event.ID.StreamEnd)) {
        parser.getEvent();
      }
      parser.getEvent();
      parser.checkEvent(Event.ID.DocumentStart);
      return true;
    } catch (YAMLException fault) {
      return false;
    }
  }

  /** What the parser leaves to those who use it. */
  private static boolean isBeyondParser(Document document) {
    return document.findings().stream()
        .anyMatch(
            finding ->
                finding.rule().equals("file.too-large")
                    || finding.rule().equals("file.merge-marks")
                    || finding.message().fact().startsWith("the alias *"));
  }
}
