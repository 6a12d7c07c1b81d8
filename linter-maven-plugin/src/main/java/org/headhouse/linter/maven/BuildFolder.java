package org.headhouse.linter.maven;

import java.io.File;
import java.nio.file.Path;
import org.headhouse.linter.files.BaseFolder;

/**
 * The folder that a build runs in.
 *
 * @param base of the project, or of where Maven was started without one
 */
record BuildFolder(BaseFolder base) {
  private static final String UNKNOWN = "${project.basedir}" + File.separator;

  static BuildFolder of(File basedir) {
    return new BuildFolder(new BaseFolder(basedir.toPath()));
  }

  /**
   * The folder for output. Without a project, Maven gives a build directory in which the name of
   * the project's folder still stands as an expression.
   */
  Path output(File configured) {
    return base.path().resolve(Path.of(configured.getPath().replace(UNKNOWN, "")));
  }
}
