package org.headhouse.linter.maven;

import java.nio.file.Path;
import java.time.Instant;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.CheckOutput;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ResultFiles;
import org.jspecify.annotations.Nullable;

/**
 * Which execution of a build runs.
 *
 * @param buildStart when the build began, or null where nobody knows
 * @param name its id in the POM, or null where nobody knows
 */
record OwnExecution(@Nullable Instant buildStart, @Nullable String name) {

  /**
   * The output of this execution. Where another of the same build has written into the folder, it
   * goes into one of its own inside, and nothing is replaced.
   */
  CheckOutput of(CheckOutput asked, BaseFolder base, Console console) {
    Path folder = asked.folder();
    if (folder == null || !isTaken(folder)) {
      return asked;
    }
    Path own = name == null ? folder : folder.resolve(name);
    if (name == null || isTaken(own)) {
      console.report(
          Level.WARNING,
          "The results of another execution of this build are in "
              + base.shown(own)
              + " and are replaced: give each execution its own outputDirectory");
      return asked.into(own);
    }
    console.report(
        Level.NOTE,
        "The results of another execution of this build are in "
            + base.shown(folder)
            + ": those of "
            + name
            + " go into a subfolder of that name");
    return asked.into(own);
  }

  private boolean isTaken(Path folder) {
    return buildStart != null && ResultFiles.areWrittenSince(buildStart, folder);
  }
}
