package org.headhouse.linter.files;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A file that may be a site.
 *
 * @param path by which it was found
 * @param refused why it is not read, or null where it is
 */
public record FoundFile(Path path, @Nullable IOException refused) {
  FoundFile(Path path) {
    this(path, null);
  }
}
