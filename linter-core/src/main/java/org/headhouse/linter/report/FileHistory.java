package org.headhouse.linter.report;

import java.io.IOException;
import java.util.List;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The history of one file.
 *
 * @param isKnown whether there is a history at all
 * @param revision the revision that has the file as it is now, or that it was changed since one;
 *     empty where nothing is known
 * @param earlier the states of the file before that, the newest first; one content may come again
 *     with other device types
 * @param isWhole whether these are all of them
 */
@Internal
public record FileHistory(
    boolean isKnown, String revision, List<Version> earlier, boolean isWhole) {

  /** Nothing is known. */
  public static final FileHistory UNKNOWN = new FileHistory(false, "", List.of(), false);

  public FileHistory {
    earlier = List.copyOf(earlier);
  }

  /** Reads the content of a file as it was. */
  @FunctionalInterface
  public interface Content {
    byte[] read() throws IOException;
  }

  /**
   * One state of the file, or of the device types beside it.
   *
   * @param revision as people name it
   * @param deviceTypes those of the revision, or null where they are as they are now
   */
  public record Version(String revision, Content content, @Nullable Content deviceTypes) {
    /** A state with the device types of now. */
    public Version(String revision, Content content) {
      this(revision, content, null);
    }
  }
}
