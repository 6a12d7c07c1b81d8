package org.headhouse.linter.schema;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The texts of the published schemas. */
public final class PublishedSchemas {
  private PublishedSchemas() {}

  /** The schema of a kind of file, as JSON. */
  public static String text(FileKind kind) {
    try (InputStream in = PublishedSchemas.class.getResourceAsStream(kind.schemaFile())) {
      if (in == null) {
        throw new IllegalStateException("the jar lacks " + kind.schemaFile());
      }
      return new String(in.readAllBytes(), UTF_8);
    } catch (IOException unreadableJar) {
      throw new UncheckedIOException(unreadableJar);
    }
  }
}
