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
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The circuit simulator ngspice, a program of its own, run on operating points and edges. */
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
    Path raw = folder.resolve("line.raw");
    Files.deleteIfExists(raw);
    run(
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
            .formatted(elements, raw.getFileName()));
    assertThat(raw).as("%s", log()).exists();
    return voltages(Files.readAllLines(raw));
  }

  /**
   * When the voltages of some nodes pass a value for the last time, in seconds, by the name of the
   * node.
   */
  Map<String, Double> lastCrossings(
      String elements, List<String> nodes, double volts, double stepSeconds, double endSeconds)
      throws IOException, InterruptedException {
    StringBuilder measured = new StringBuilder();
    for (String node : nodes) {
      measured.append(
          String.format(
              Locale.ROOT, "meas tran at_%s WHEN v(%s)=%.9g CROSS=LAST%n", node, node, volts));
    }
    run(
        """
        * segments
        %s
        .control
        tran %s %s 0 %s
        %s
        quit
        .endc
        .end
        """
            .formatted(elements, stepSeconds, endSeconds, stepSeconds, measured));
    Map<String, Double> crossings = new HashMap<>();
    for (String line : log().split("\n", -1)) {
      if (line.startsWith("at_") && line.contains("=")) {
        String[] words = line.split("\\s+", -1);
        crossings.put(words[0].substring(3), Double.parseDouble(words[2]));
      }
    }
    assertThat(crossings.keySet()).as("%s", log()).containsAll(nodes);
    return crossings;
  }

  private String log() throws IOException {
    return Files.readString(folder.resolve("line.log"));
  }

  private void run(String netlist) throws IOException, InterruptedException {
    Path file = folder.resolve("line.cir");
    Files.writeString(file, netlist, StandardCharsets.US_ASCII);
    Process process =
        new ProcessBuilder(program.toString(), "-b", file.getFileName().toString())
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("line.log").toFile())
            .start();
    process.getOutputStream().close();
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).as("ngspice ends").isTrue();
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
