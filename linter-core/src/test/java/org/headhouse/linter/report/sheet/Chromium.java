package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The browser of the machine, without a window. */
final class Chromium {
  private static final int LONGEST_MINUTES = 3;

  private final Path program;
  private final Path folder;
  private int runs;

  /**
   * What a page came to.
   *
   * @param dom the elements once the page is loaded
   * @param console what the page, or the browser about it, wrote there
   */
  record Opened(String dom, List<String> console) {}

  private Chromium(Path program, Path folder) {
    this.program = program;
    this.folder = folder;
  }

  /**
   * The browser; where there is none the test is skipped, but in CI it fails.
   *
   * @param folder for pages and profiles
   */
  static Chromium in(Path folder) {
    for (String path : System.getenv("PATH").split(File.pathSeparator, -1)) {
      for (String name : List.of("chromium", "chromium-browser")) {
        Path program = Path.of(path, name);
        if (Files.isExecutable(program)) {
          return new Chromium(program, folder);
        }
      }
    }
    assertThat(System.getenv("CI"))
        .as("there is no chromium on the path, and CI must have one: apt-get install chromium")
        .isNotEqualTo("true");
    return abort("skipped: there is no chromium on the path (apt-get install chromium)");
  }

  /** Opens a page from disk, lets its scripts run out, and looks at it. */
  Opened open(String html, String... more) throws Exception {
    Path page = write(html);
    List<String> options = new ArrayList<>(List.of(more));
    options.addAll(List.of("--dump-dom", "--enable-logging=stderr", "--virtual-time-budget=60000"));
    options.add(page.toUri().toString());
    Path errors = Files.createTempFile(folder, "console", ".txt");
    String dom = run(errors, options);
    return new Opened(
        dom, Files.readAllLines(errors).stream().filter(line -> line.contains("CONSOLE")).toList());
  }

  /** Prints a page as its style sheet wants it. */
  PDDocument print(String html) throws Exception {
    Path page = write(html);
    Path pdf = folder.resolve(page.getFileName() + ".pdf");
    run(
        Files.createTempFile(folder, "print", ".txt"),
        List.of("--no-pdf-header-footer", "--print-to-pdf=" + pdf, page.toUri().toString()));
    return Loader.loadPDF(pdf.toFile());
  }

  private Path write(String html) throws IOException {
    runs++;
    return Files.writeString(folder.resolve("page-" + runs + ".html"), html);
  }

  private String run(Path errors, List<String> options) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(program.toString());
    command.addAll(
        Arrays.asList(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--disable-dev-shm-usage",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--user-data-dir=" + folder.resolve("profile-" + runs)));
    command.addAll(options);
    Path output = Files.createTempFile(folder, "output", ".txt");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(output.toFile())
            .redirectError(errors.toFile())
            .start();
    try {
      assertThat(process.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES)).as("it ended").isTrue();
    } finally {
      process.destroyForcibly();
    }
    return Files.readString(output, UTF_8);
  }
}
