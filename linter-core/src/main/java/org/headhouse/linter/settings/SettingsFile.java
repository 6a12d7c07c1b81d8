package org.headhouse.linter.settings;

import java.io.IOException;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/** A file with settings for all sites, as it was read; the path is its name in results. */
@SuppressWarnings("ArrayRecordComponent") // Never compared.
public record SettingsFile(String path, byte[] bytes) {

  /** Reads a file, where there is one. */
  static @Nullable SettingsFile of(@Nullable InputFile input, Limits limits) throws IOException {
    return input == null ? null : new SettingsFile(input.path(), input.bytes(limits));
  }
}
