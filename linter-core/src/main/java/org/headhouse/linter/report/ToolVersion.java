package org.headhouse.linter.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.Properties;
import org.headhouse.linter.stability.Internal;

/**
 * The version of the linter, from a file beside this class. What the manifest says would be the
 * version of the program that the linter is packed into.
 */
@Internal
public final class ToolVersion {
  private static final String FILE = "version.properties";

  private ToolVersion() {}

  /** The version, or empty where the linter was not built by Maven. */
  public static Optional<String> text() {
    try (InputStream in = ToolVersion.class.getResourceAsStream(FILE)) {
      if (in == null) {
        return Optional.empty();
      }
      Properties properties = new Properties();
      properties.load(in);
      return Optional.ofNullable(properties.getProperty("version"));
    } catch (IOException unreadableJar) {
      throw new UncheckedIOException(unreadableJar);
    }
  }
}
