package org.headhouse.linter.yaml;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Reads the first document of a text into a located tree.
 *
 * <p>{@link #read} returns for any text: faults of syntax are findings, and so is a document over
 * the limits.
 */
public final class YamlReader {
  private final Limits limits;
  private final LoaderOptions options;

  public YamlReader(Limits limits) {
    this.limits = limits;
    this.options = options();
  }

  private static LoaderOptions options() {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE); // the size of the file was checked in bytes
    return options;
  }

  /** The comments of a text that was read without a fault of syntax. */
  static List<Comment> comments(SourceText source) {
    return Comments.of(source, options());
  }

  /** Reads a text. */
  public Document read(SourceText source) {
    List<Finding> findings = new ArrayList<>(LineSeparators.findings(source));
    List<Scalar> ambiguous = new ArrayList<>();
    Node.@Nullable Valued root = null;
    StreamReader reader = ParserInput.of(LineSeparators.hidden(source));
    try {
      Parser parser = TokenAhead.parser(reader, options);
      TreeBuilder builder = new TreeBuilder(parser, source, limits, ambiguous, findings);
      root = firstDocument(parser, builder);
      reportSecondDocument(parser, findings);
      if (builder.hasScalarOverLines()) {
        // Between brackets or quotes, a mark is a part of a text that YAML can read.
        List<Finding> conflicts = MergeMarks.findings(source);
        findings.addAll(conflicts);
        root = conflicts.isEmpty() ? root : null;
      }
    } catch (Unreadable unreadable) {
      findings.add(unreadable.finding());
    } catch (YAMLException exception) {
      List<Finding> conflicts = MergeMarks.findings(source);
      if (conflicts.isEmpty()) {
        findings.add(SyntaxFaults.of(exception, source, reached(reader)));
      }
      findings.addAll(conflicts);
      root = null;
    } catch (NumberFormatException noNumber) {
      // The parser fails so for an escape at the end of the text, or for one that is no character.
      findings.add(SyntaxFaults.escape(reached(reader)));
      root = null;
    }
    // Later stages do not get what was read before a fault: half a chain would seem to have faults
    // of its own.
    return new Document(source, root, List.copyOf(ambiguous), List.copyOf(findings));
  }

  private static Region reached(StreamReader reader) {
    Mark mark = reader.getMark();
    return Region.onLine(mark.getLine() + 1, mark.getColumn() + 1, 0);
  }

  private static Node.Valued firstDocument(Parser parser, TreeBuilder builder) {
    parser.getEvent(); // start of the stream
    if (!parser.checkEvent(Event.ID.DocumentStart)) {
      return Scalar.of(Region.START_OF_FILE, "", true, null);
    }
    parser.getEvent();
    Node.Valued root = builder.root();
    parser.getEvent(); // end of the document
    return root;
  }

  private static void reportSecondDocument(Parser parser, List<Finding> findings) {
    if (parser.checkEvent(Event.ID.DocumentStart)) {
      var start = (DocumentStartEvent) parser.getEvent();
      findings.add(SyntaxFaults.severalDocuments(ParserMarks.region(start)));
    }
  }
}
