package org.headhouse.linter.report;

import java.io.OutputStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.TokenStreamContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * JSON with a line for each value, written piece by piece. An object mapper takes a fifth of a
 * second to start, which is longer than the check of a site.
 */
final class PrettyJson {
  private static final JsonFactory JSON =
      JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();

  private static final JsonFactory LINES = JSON.rebuild().rootValueSeparator("").build();

  private PrettyJson() {}

  /** A generator on a stream, which is left open. */
  static JsonGenerator to(OutputStream out) {
    return JSON.createGenerator(new Indented(null), out);
  }

  /** One without any line end, for values that get a line each; the stream is left open. */
  static JsonGenerator onALine(OutputStream out) {
    return LINES.createGenerator(ObjectWriteContext.empty(), out);
  }

  /**
   * The same with one line for each item of some lists, of which there may be so many that
   * indentation would be a third of the file.
   *
   * @param lists the property that has them
   */
  static JsonGenerator withItemsOnALine(String lists, OutputStream out) {
    return JSON.createGenerator(new Indented(lists), out);
  }

  private static final class Indented extends ObjectWriteContext.Base {
    private final @Nullable String lists;

    Indented(@Nullable String lists) {
      this.lists = lists;
    }

    @Override
    public boolean hasPrettyPrinter() {
      return true;
    }

    @Override
    public PrettyPrinter getPrettyPrinter() {
      DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
      if (lists == null) {
        return printer;
      }
      DefaultPrettyPrinter.Indenter lines = new ItemLines(lists);
      return printer.withArrayIndenter(lines).withObjectIndenter(lines);
    }
  }

  private record ItemLines(String lists) implements DefaultPrettyPrinter.Indenter {
    @Override
    public void writeIndentation(JsonGenerator json, int level) {
      if (isInsideItem(json.streamWriteContext())) {
        json.writeRaw(' ');
      } else {
        DefaultIndenter.SYSTEM_LINEFEED_INSTANCE.writeIndentation(json, level);
      }
    }

    private boolean isInsideItem(TokenStreamContext value) {
      for (TokenStreamContext list = value.getParent(); list != null; list = list.getParent()) {
        TokenStreamContext owner = list.getParent();
        if (list.inArray() && owner != null && lists.equals(owner.currentName())) {
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
