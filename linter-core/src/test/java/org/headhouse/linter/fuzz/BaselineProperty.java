package org.headhouse.linter.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.baseline.SitePaths;
import org.headhouse.linter.baseline.UnusableBaseline;
import org.headhouse.linter.result.AbsentResult;

/** A baseline is damaged in a certain line, or what is read of it is written and read alike. */
final class BaselineProperty implements Property {
  private final Path file;
  private final SitePaths paths;

  BaselineProperty() throws IOException {
    this.file = Files.createTempFile("baseline", ".jsonl");
    file.toFile().deleteOnExit();
    this.paths = SitePaths.of(file, file.resolveSibling(""));
  }

  @Override
  public void tryWith(byte[] input) throws IOException {
    Baseline baseline;
    try {
      baseline = read(input);
    } catch (UnusableBaseline unusable) {
      String message = String.valueOf(unusable.getMessage());
      Demand.that(message.matches("(?s)known:[1-9][0-9]*: .+"), "no place in: %s", message);
      Told.printable(List.of(message));
      return;
    }
    Demand.that(baseline.size() >= 0, "%d results", baseline.size());
    byte[] written = written(baseline);
    Demand.that(
        new String(written(read(written)), UTF_8).equals(new String(written, UTF_8)),
        "written otherwise: %s",
        new String(written, UTF_8));
    for (AbsentResult absent : baseline.compare(List.of(), Set.of(), Set.of()).absent()) {
      Demand.that(absent.times() > 0, "%s", absent);
    }
    baseline.renewed(List.of(), Set.of(), true);
  }

  private Baseline read(byte[] bytes) throws IOException {
    Files.write(file, bytes);
    return Baseline.read(file, "known", paths);
  }

  private static byte[] written(Baseline baseline) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    baseline.write(out);
    return out.toByteArray();
  }
}
