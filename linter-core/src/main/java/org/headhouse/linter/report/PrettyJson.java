package org.headhouse.linter.report;

import java.io.OutputStream;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * JSON with a line for each value, written piece by piece. An object mapper takes a fifth of a
 * second to start, which is longer than the check of a site.
 */
final class PrettyJson {
  private static final JsonFactory JSON =
      JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();

  private PrettyJson() {}

  /** A generator on a stream, which is left open. */
  static JsonGenerator to(OutputStream out) {
    return JSON.createGenerator(new Indented(), out);
  }

  private static final class Indented extends ObjectWriteContext.Base {
    @Override
    public boolean hasPrettyPrinter() {
      return true;
    }

    @Override
    public PrettyPrinter getPrettyPrinter() {
      return new DefaultPrettyPrinter();
    }
  }
}
