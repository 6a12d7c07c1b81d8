package org.headhouse.linter.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/** What the parser tells of a text that our reader gives it, and of one from its own. */
public final class ParserEvents {
  private ParserEvents() {}

  public static void assertSameOfEitherReader(String text) {
    assertThat(told(ParserInput.of(text))).isEqualTo(told(new StreamReader(text)));
  }

  /** All events with their marks, and the fault that ends them; without the text around a mark. */
  private static List<String> told(StreamReader reader) {
    List<String> told = new ArrayList<>();
    try {
      Parser parser = new ParserImpl(reader, new LoaderOptions());
      while (!parser.checkEvent(Event.ID.StreamEnd)) {
        Event event = parser.getEvent();
        told.add(event + at(event.getStartMark()) + at(event.getEndMark()));
      }
    } catch (MarkedYAMLException fault) {
      told.add(fault.getProblem() + at(fault.getProblemMark()));
      told.add(fault.getContext() + at(fault.getContextMark()));
    } catch (YAMLException fault) {
      told.add(fault.getMessage());
    }
    return told;
  }

  private static String at(@Nullable Mark mark) {
    return mark == null
        ? ""
        : " " + mark.getLine() + ":" + mark.getColumn() + "=" + mark.getIndex();
  }
}
