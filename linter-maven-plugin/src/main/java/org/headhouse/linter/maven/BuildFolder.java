package org.headhouse.linter.maven;

import java.io.File;
import java.nio.file.Path;

/**
 * The folder that a build runs in: paths inside it are shown from it.
 *
 * @param path of the project, or of where Maven was started without one
 */
record BuildFolder(Path path) {
  private static final String UNKNOWN = "${project.basedir}" + File.separator;

  BuildFolder {
    path = path.toAbsolutePath().normalize();
  }

  static BuildFolder of(File basedir) {
    return new BuildFolder(basedir.toPath());
  }

  /** A path as it is shown, with forward slashes. */
  String shown(Path file) {
    Path absolute = path.resolve(file).normalize();
    Path shown = absolute.startsWith(path) ? path.relativize(absolute) : absolute;
    return shown.toString().replace('\\', '/');
  }

  /**
   * The folder for output. Without a project, Maven gives a build directory in which the name of
   * the project's folder still stands as an expression.
   */
  Path output(File configured) {
    return path.resolve(Path.of(configured.getPath().replace(UNKNOWN, "")));
  }
}
