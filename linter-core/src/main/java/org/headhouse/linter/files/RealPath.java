package org.headhouse.linter.files;

import java.io.IOException;
import java.nio.file.Path;

/** The one path of a file that several names may lead to. */
public final class RealPath {
  private RealPath() {}

  /** Without links; where a name leads nowhere, what it would be. */
  public static Path of(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException leadsNowhere) {
      return file.toAbsolutePath().normalize();
    }
  }
}
