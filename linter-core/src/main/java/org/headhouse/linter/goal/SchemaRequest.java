package org.headhouse.linter.goal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.PublishedSchemas;

/**
 * The schemas are written. A file of that name is replaced only if it is a schema of this linter,
 * of any version.
 *
 * @param output the folder for them
 * @param base what paths are shown from
 */
public record SchemaRequest(Path output, BaseFolder base) implements GoalRequest {
  private static final String ID = "\"$id\": \"https://headhouse.org/linter/";

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    for (FileKind kind : FileKind.values()) {
      Path file = output.resolve(kind.schemaFile());
      OwnFile.require(file, base.shown(file), "a schema", start -> start.contains(ID));
    }
    for (FileKind kind : FileKind.values()) {
      Path file = output.resolve(kind.schemaFile());
      AtomicFile.write(file, out -> out.write(PublishedSchemas.text(kind).getBytes(UTF_8)));
      console.report(Level.NOTE, "Wrote " + base.shown(file));
    }
    return Outcome.good();
  }
}
