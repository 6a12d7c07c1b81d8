package org.headhouse.linter.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Runs programs in processes of their own, above all the jar of the command, as users do. */
final class CommandProcess {
  static final Path JAR = Path.of(System.getProperty("command.jar", "")).toAbsolutePath();

  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

  private CommandProcess() {}

  /** How a process ended, and what it wrote, read as UTF-8. */
  record Ended(int code, String out, String err) {}

  /** What to call for the command. */
  static List<String> command(String... arguments) {
    List<String> command =
        new ArrayList<>(List.of(JAVA.toString(), "-XX:-UsePerfData", "-jar", JAR.toString()));
    command.addAll(List.of(arguments));
    return command;
  }

  static Ended linter(Path folder, String... arguments) throws Exception {
    return run(folder, Map.of(), command(arguments));
  }

  /** Runs a script in a shell. */
  static Ended shell(Path folder, String script, String... arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of("bash", "-c", script, "bash"));
    command.addAll(List.of(arguments));
    return run(folder, Map.of(), command);
  }

  static Ended run(Path folder, Map<String, String> environment, List<String> command)
      throws Exception {
    Path out = Files.createTempFile("command", ".out");
    Path err = Files.createTempFile("command", ".err");
    try {
      ProcessBuilder builder =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectInput(ProcessBuilder.Redirect.from(nothing()))
              .redirectOutput(out.toFile())
              .redirectError(err.toFile());
      builder.environment().putAll(environment);
      Process process = builder.start();
      boolean ended = process.waitFor(5, TimeUnit.MINUTES);
      process.destroyForcibly();
      assertThat(ended).as("the process ended: " + command).isTrue();
      return new Ended(process.exitValue(), text(out), text(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  private static File nothing() {
    return new File("/dev/null");
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file, UTF_8);
  }
}
