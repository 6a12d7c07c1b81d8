package org.headhouse.linter.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;

/**
 * JSON with a line for each value, written piece by piece. An object mapper takes a fifth of a
 * second to start, which is longer than the check of a site.
 */
final class PrettyJson {
  private static final JsonFactory JSON =
      ((JsonFactoryBuilder) JsonFactory.builder())
          .characterEscapes(new InvisibleEscapes())
          .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
          .build();

  private static final JsonFactory LINES =
      ((JsonFactoryBuilder) JsonFactory.builder())
          .rootValueSeparator("")
          .characterEscapes(new InvisibleEscapes())
          .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
          .build();

  private PrettyJson() {}

  /** A writer on a stream, which is left open. */
  static JsonWriter to(OutputStream out) {
    return writer(new DefaultPrettyPrinter(), out);
  }

  /** One without any line end, for values that get a line each; the stream is left open. */
  static JsonWriter onALine(OutputStream out) {
    return new JsonWriter(generator(LINES, out));
  }

  /**
   * The same with one line for each item of some lists, of which there may be so many that
   * indentation would be a third of the file.
   *
   * @param lists the property that has them
   */
  static JsonWriter withItemsOnALine(String lists, OutputStream out) {
    DefaultPrettyPrinter.Indenter lines = new ItemLines(lists);
    return writer(
        new DefaultPrettyPrinter().withArrayIndenter(lines).withObjectIndenter(lines), out);
  }

  private static JsonWriter writer(PrettyPrinter printer, OutputStream out) {
    return new JsonWriter(generator(JSON, out).setPrettyPrinter(printer));
  }

  private static JsonGenerator generator(JsonFactory factory, OutputStream out) {
    try {
      return factory.createGenerator(out);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private record ItemLines(String lists) implements DefaultPrettyPrinter.Indenter {
    @Override
    public void writeIndentation(JsonGenerator json, int level) throws IOException {
      if (isInsideItem(json.getOutputContext())) {
        json.writeRaw(' ');
      } else {
        DefaultIndenter.SYSTEM_LINEFEED_INSTANCE.writeIndentation(json, level);
      }
    }

    private boolean isInsideItem(JsonStreamContext value) {
      for (JsonStreamContext list = value.getParent(); list != null; list = list.getParent()) {
        JsonStreamContext owner = list.getParent();
        if (list.inArray() && owner != null && lists.equals(owner.getCurrentName())) {
          return true;
        }
      }
      return false;
    }

    @Override
    public boolean isInline() {
      return false;
    }
  }
}
