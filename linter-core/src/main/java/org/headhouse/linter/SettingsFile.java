package org.headhouse.linter;

import java.io.IOException;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/** One file that holds for all sites, with the name that it is told by. */
@SuppressWarnings("ArrayRecordComponent") // Never compared.
record SettingsFile(String path, byte[] bytes) {

  /** Reads a file, where there is one. */
  static @Nullable SettingsFile of(@Nullable SiteInput input, Limits limits) throws IOException {
    return input == null ? null : new SettingsFile(input.path(), input.bytes(limits));
  }
}
