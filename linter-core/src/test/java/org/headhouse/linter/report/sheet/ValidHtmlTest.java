package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import nu.validator.client.SimpleCommandLineValidator;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.report.Paper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages are HTML as the checker of the standard's editors (nu.validator) knows it. */
class ValidHtmlTest {
  private static final Path ICU = Path.of("target/html-checker/icu4j.jar");

  @TempDir private static Path folder;

  @BeforeAll
  static void writePages() throws IOException {
    write("good-", Sheets.ofSamples());
    write("faulty-", Sheets.ofFaultySamples());
    write("proved-", Papers.of(Papers.YEARLY, Papers.PROVED, Papers.line(20)));
    write("hostile-", Papers.of(Papers.YEARLY, Hostile.site()));
    Files.writeString(
        folder.resolve("start.html"), Papers.start(Paper.A4, Papers.PROVED, Papers.line(5)));
    Files.writeString(folder.resolve("hostile-start.html"), Papers.start(Paper.A4, Hostile.site()));
    Files.writeString(folder.resolve("hostile.html"), Sheets.html(Hostile.site()));
    Files.writeString(
        folder.resolve("hostile-faults.html"), Sheets.faults(Hostile.site(), Paper.A4));
    Files.writeString(
        folder.resolve("hostile-materials.html"), Sheets.materials(Hostile.site(), Paper.A4));
    Files.writeString(
        folder.resolve("bare-materials.html"), Sheets.materials("format: 1\n", Paper.LETTER));
    Files.writeString(folder.resolve("too-long.html"), Sheets.html(Hostile.tooLong()));
    Files.writeString(folder.resolve("bare.html"), Sheets.html("format: 1\n"));
  }

  private static void write(String prefix, Sheets sheets) throws IOException {
    for (Map.Entry<String, String> file : sheets.files().entrySet()) {
      if (file.getKey().endsWith(".html")) {
        Files.writeString(folder.resolve(prefix + file.getKey()), file.getValue());
      }
    }
  }

  @Test
  void allPagesAreValid() throws Exception {
    assertThat(messages(folder)).isEmpty();
  }

  /** So that it is known that the checker looks. */
  @Test
  void theCheckerFindsWhatIsWrong(@TempDir Path other) throws Exception {
    Files.writeString(
        other.resolve("wrong.html"),
        Sheets.html(Hostile.site())
            .replaceFirst("<main id=\"content\">", "<main id=content wide>"));
    assertThat(messages(other)).hasSize(1).first().asString().contains("wide");
  }

  private static List<String> messages(Path pages) throws Exception {
    Path output = Files.createTempFile("html-checker", ".json");
    try {
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  ICU + File.pathSeparator + System.getProperty("java.class.path"),
                  SimpleCommandLineValidator.class.getName(),
                  "--format",
                  "json",
                  "--stdout",
                  "--skip-non-html",
                  pages.toString())
              .redirectErrorStream(true)
              .redirectOutput(output.toFile())
              .start();
      process.waitFor();
      List<String> messages = new ArrayList<>();
      for (JsonNode message : JsonText.read(Files.readString(output)).get("messages")) {
        messages.add(
            message.path("url").asText()
                + ":"
                + message.path("lastLine").asInt()
                + ": "
                + message.path("message").asText());
      }
      return messages;
    } finally {
      Files.delete(output);
    }
  }
}
