package org.headhouse.linter.maven;

import java.io.File;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.goal.SchemaRequest;

/** Writes the JSON Schemas of the three kinds of file, for editors. */
@Mojo(name = "schema", requiresProject = false, threadSafe = true)
public final class SchemaMojo extends LinterMojo {
  /** The folder that the schemas are written to. */
  @Parameter(
      property = "linter.outputDirectory",
      defaultValue = "${project.build.directory}/linter")
  private File outputDirectory = new File("target/linter");

  /** The folder that paths are shown from. */
  @Parameter(defaultValue = "${basedir}", readonly = true)
  private File basedir = new File("");

  @Override
  SchemaRequest request() {
    BuildFolder folder = BuildFolder.of(basedir);
    return new SchemaRequest(folder.output(outputDirectory), folder.base());
  }
}
