package org.headhouse.linter.goal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
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
import org.headhouse.linter.source.RegularFile;

/**
 * The schemas are written. A file of that name is replaced only if it is a schema of this linter,
 * of any version.
 *
 * @param output the folder for them
 * @param base what paths are shown from
 */
public record SchemaRequest(Path output, BaseFolder base) implements GoalRequest {
  private static final String ID = "\"$id\": \"https://headhouse.org/linter/";

  /** Of a file that is there: the id is among the first lines. */
  private static final int START = 1000;

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    for (FileKind kind : FileKind.values()) {
      refuseToReplaceOther(output.resolve(kind.schemaFile()));
    }
    for (FileKind kind : FileKind.values()) {
      Path file = output.resolve(kind.schemaFile());
      AtomicFile.write(file, out -> out.write(PublishedSchemas.text(kind).getBytes(UTF_8)));
      console.report(Level.NOTE, "Wrote " + base.shown(file));
    }
    return Outcome.good();
  }

  private void refuseToReplaceOther(Path file) throws UserError {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    String start;
    try (InputStream in = RegularFile.open(file)) {
      start = new String(in.readNBytes(START), UTF_8);
    } catch (IOException unreadable) {
      throw UserError.of(base.shown(file) + " is there and cannot be read", unreadable);
    }
    if (!start.contains(ID)) {
      throw new UserError(
          base.shown(file)
              + " exists, but is not a schema of this linter, and nothing is written: move it, or"
              + " name another folder");
    }
  }
}
