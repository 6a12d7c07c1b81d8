package org.headhouse.linter.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/** What the parser tells by our reader and look at tokens, and what by its own. */
public final class ParserEvents {
  private ParserEvents() {}

  /** Of a text in which separators of lines are hidden, as the reader of files does. */
  public static void assertSameOfEitherReader(String written) {
    String text = LineSeparators.hidden(new SourceText("a.yaml", written));
    LoaderOptions options = new LoaderOptions();
    assertThat(
            told(
                () -> TokenAhead.parser(ParserInput.of(text), options),
                mark -> mark.getLine() + ":" + mark.getColumn()))
        .isEqualTo(
            told(
                () -> new ParserImpl(new StreamReader(text), options),
                mark -> counted(text, mark)));
  }

  /** All events with their marks, and the fault that ends them; without the text around a mark. */
  private static List<String> told(Supplier<Parser> start, Function<Mark, String> place) {
    List<String> told = new ArrayList<>();
    try {
      Parser parser = start.get();
      while (!parser.checkEvent(Event.ID.StreamEnd)) {
        Event event = parser.getEvent();
        told.add(event + at(event.getStartMark(), place) + at(event.getEndMark(), place));
      }
    } catch (MarkedYAMLException fault) {
      told.add(fault.getProblem() + at(fault.getProblemMark(), place));
      told.add(fault.getContext() + at(fault.getContextMark(), place));
    } catch (YAMLException fault) {
      told.add(fault.getMessage());
    }
    return told;
  }

  /**
   * Where the parser's own reader says it is, counted from its index: its lines and columns pass
   * over most byte order marks, and over a return that ends the text.
   */
  private static String counted(String text, Mark mark) {
    int[] characters = text.codePoints().toArray();
    int line = 0;
    int start = 0;
    for (int i = 0; i < mark.getIndex(); i++) {
      boolean halfOfEnd =
          characters[i] == '\r' && i + 1 < characters.length && characters[i + 1] == '\n';
      if (!halfOfEnd && "\n\r".indexOf(characters[i]) >= 0) {
        line++;
        start = i + 1;
      }
    }
    return line + ":" + (mark.getIndex() - start);
  }

  private static String at(@Nullable Mark mark, Function<Mark, String> place) {
    return mark == null ? "" : " " + place.apply(mark) + "=" + mark.getIndex();
  }
}
