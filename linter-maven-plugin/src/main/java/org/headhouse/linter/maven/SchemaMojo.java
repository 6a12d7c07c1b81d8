package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.nio.file.Path;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.PublishedSchemas;

/** Writes the JSON Schemas of the three kinds of file, for editors. */
@Mojo(name = "schema", requiresProject = false, threadSafe = true)
public final class SchemaMojo extends LinterMojo {
  /** Where the schemas are written. */
  @Parameter(
      property = "linter.outputDirectory",
      defaultValue = "${project.build.directory}/linter")
  private File outputDirectory = new File("target/linter");

  /** The folder that paths are shown from. */
  @Parameter(defaultValue = "${basedir}", readonly = true)
  private File basedir = new File("");

  @Override
  void work() throws UserError {
    checkProperties();
    BuildFolder build = BuildFolder.of(basedir);
    BaseFolder base = build.base();
    Path output = build.output(outputDirectory);
    for (FileKind kind : FileKind.values()) {
      Path file = output.resolve(kind.schemaFile());
      AtomicFile.write(file, out -> out.write(PublishedSchemas.text(kind).getBytes(UTF_8)));
      new BuildConsole(getLog()).tell(Level.NOTE, "Wrote " + base.shown(file));
    }
  }
}
