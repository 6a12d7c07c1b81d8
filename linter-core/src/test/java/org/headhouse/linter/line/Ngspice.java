package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The circuit simulator ngspice, a program of its own, run on operating points. */
public final class Ngspice {
  private final Path program;
  private final Path folder;

  private Ngspice(Path program, Path folder) {
    this.program = program;
    this.folder = folder;
  }

  /**
   * The simulator; where there is none the test is skipped, but in CI it fails.
   *
   * @param folder for netlists and what comes of them
   */
  public static Ngspice in(Path folder) {
    for (String path : System.getenv("PATH").split(File.pathSeparator, -1)) {
      Path program = Path.of(path, "ngspice");
      if (Files.isExecutable(program)) {
        return new Ngspice(program, folder);
      }
    }
    assertThat(System.getenv("CI"))
        .as("there is no ngspice on the path, and CI must have one: apt-get install ngspice")
        .isNotEqualTo("true");
    return abort("skipped: there is no ngspice on the path (apt-get install ngspice)");
  }

  /** The voltages of all nodes of a netlist against node 0, by the name of the node. */
  public Map<String, Double> operatingPoint(String elements)
      throws IOException, InterruptedException {
    Path netlist = folder.resolve("line.cir");
    Path raw = folder.resolve("line.raw");
    Files.deleteIfExists(raw);
    Files.writeString(
        netlist,
        """
        * segments
        %s
        .control
        set filetype=ascii
        set numdgt=15
        op
        write %s all
        quit
        .endc
        .end
        """
            .formatted(elements, raw.getFileName()),
        StandardCharsets.US_ASCII);
    Path log = folder.resolve("line.log");
    Process process =
        new ProcessBuilder(program.toString(), "-b", netlist.getFileName().toString())
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    process.getOutputStream().close();
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).as("ngspice ends").isTrue();
    assertThat(raw).as("%s", Files.readString(log)).exists();
    return voltages(Files.readAllLines(raw));
  }

  /** The variables stand with a number each, then their values in that order. */
  private static Map<String, Double> voltages(List<String> lines) {
    List<String> names =
        lines.stream()
            .dropWhile(line -> !line.startsWith("Variables:"))
            .skip(1)
            .takeWhile(line -> !line.startsWith("Values:"))
            .map(line -> line.trim().split("\\s+", -1)[1])
            .toList();
    List<String> values =
        lines.stream()
            .dropWhile(line -> !line.startsWith("Values:"))
            .skip(1)
            .map(String::trim)
            .filter(line -> !line.isEmpty())
            .map(line -> line.substring(line.lastIndexOf('\t') + 1).trim())
            .toList();
    assertThat(values).hasSameSizeAs(names);
    Map<String, Double> voltages = new HashMap<>();
    for (int at = 0; at < names.size(); at++) {
      String name = names.get(at);
      if (name.startsWith("v(")) {
        voltages.put(name.substring(2, name.length() - 1), Double.parseDouble(values.get(at)));
      }
    }
    return voltages;
  }
}
