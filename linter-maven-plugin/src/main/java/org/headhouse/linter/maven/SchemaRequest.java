package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.PublishedSchemas;

/**
 * The schemas are written.
 *
 * @param output the folder for them
 * @param base what paths are shown from
 */
record SchemaRequest(Path output, BaseFolder base) implements GoalRequest {
  @Override
  public void run(Console console) throws UserError {
    for (FileKind kind : FileKind.values()) {
      Path file = output.resolve(kind.schemaFile());
      AtomicFile.write(file, out -> out.write(PublishedSchemas.text(kind).getBytes(UTF_8)));
      console.report(Level.NOTE, "Wrote " + base.shown(file));
    }
  }
}
