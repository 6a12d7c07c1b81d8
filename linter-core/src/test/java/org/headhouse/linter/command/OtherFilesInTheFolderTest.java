package org.headhouse.linter.command;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.headhouse.linter.Example;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The goal report writes its own files again, and replaces nobody else's. */
class OtherFilesInTheFolderTest {
  private static final String REFUSED =
      "error: o/%s exists, but is not a report of this linter, and nothing is written: move it, or"
          + " name another folder";

  @TempDir private Path folder;

  @BeforeEach
  void twoLinesOfACustomer() throws IOException {
    Files.createDirectories(folder.resolve("sites"));
    Files.createDirectories(folder.resolve("o"));
    String commissioned =
        Example.with("stage: planned", "customer: oak\nstage: commissioned")
            + "commissioning: {date: 2026-03-14, by: R.O., measured: {idle-voltage: 0.3 V}}\n";
    Files.writeString(folder.resolve("sites/example.yaml"), commissioned);
    Files.writeString(
        folder.resolve("sites/other.yaml"),
        commissioned.replace("site: example", "site: \u00e9t\u00e9"));
    Files.writeString(
        folder.resolve("linter.yaml"),
        "format: 1\nrule-set: 1\nrules: {commissioning.retest-due: {parameters: {every: 12"
            + " months}}}\n");
  }

  private CommandCall report() {
    return CommandCall.of(folder, "report", "--outputDirectory=o", "--bundle");
  }

  private Map<String, String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("o"))) {
      return files.collect(
          Collectors.toMap(
              file -> file.getFileName().toString(),
              OtherFilesInTheFolderTest::text,
              (one, two) -> one,
              TreeMap::new));
    }
  }

  private static String text(Path file) {
    try {
      return new String(Files.readAllBytes(file), ISO_8859_1);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private void assertRefused(String name) throws IOException {
    Map<String, String> before = files();
    CommandCall call = report();
    assertThat(call.code()).isEqualTo(2);
    assertThat(call.lastError()).isEqualTo(REFUSED.formatted(name));
    assertThat(files()).isEqualTo(before);
  }

  /** What is in the place of any of them is somebody's, and stays. */
  @Test
  void eachFileIsWrittenAgainAndReplacesNoOther() throws IOException {
    assertThat(report().code()).isZero();
    Map<String, String> own = files();
    assertThat(own)
        .containsKeys(
            "index.html",
            "figures.json",
            "inventory.csv",
            "materials.csv",
            "due.ics",
            "oak-cover.html",
            "oak-bundle.zip",
            "example-zones.csv",
            "example-visit.csv");
    assertThat(report().code()).isZero();
    assertThat(files()).isEqualTo(own);
    for (String name : own.keySet()) {
      if (!name.endsWith("-visit.csv")) {
        Path file = folder.resolve("o").resolve(name);
        byte[] content = Files.readAllBytes(file);
        Files.writeString(file, "notes,of,somebody\n");
        assertRefused(name);
        Files.write(file, content);
      }
    }
    assertThat(report().code()).isZero();
  }

  /** Alone in the folder: nothing of the run is written beside it. */
  @ParameterizedTest
  @ValueSource(
      strings = {"index.html", "example.html", "oak-cover.html", "due.ics", "oak-bundle.zip"})
  void nothingIsWrittenBesideAFileOfSomebodyElse(String name) throws IOException {
    Files.writeString(folder.resolve("o").resolve(name), "mine");
    assertRefused(name);
  }

  /** Git may give text other line ends on checkout. */
  @Test
  void otherLineEndsMakeNoOtherFile() throws IOException {
    report();
    Map<String, String> own = files();
    for (String name : own.keySet()) {
      if (!name.endsWith(".zip") && !name.endsWith("-visit.csv")) {
        String unix = Files.readString(folder.resolve("o").resolve(name)).replace("\r\n", "\n");
        boolean wasUnix = own.get(name).indexOf('\r') < 0;
        Files.writeString(
            folder.resolve("o").resolve(name), wasUnix ? unix.replace("\n", "\r\n") : unix);
      }
    }
    assertThat(report().code()).isZero();
    assertThat(files()).isEqualTo(own);
  }

  @Test
  void filesThatAreNotInTheWayStay() throws IOException {
    for (String name : new String[] {"notes.html", "stock.csv", "oak.zip", "rota.ics"}) {
      Files.writeString(folder.resolve("o").resolve(name), "mine");
    }
    Files.createDirectories(folder.resolve("o/photos.html"));
    assertThat(CommandCall.of(folder, "report", "--outputDirectory=o").code()).isZero();
    assertThat(folder.resolve("o/notes.html")).hasContent("mine");
    assertThat(folder.resolve("o/oak.zip")).hasContent("mine");
    assertThat(folder.resolve("o/index.html")).exists();
    assertThat(folder.resolve("o/oak-bundle.zip")).doesNotExist();
  }

  /** What people make of such a file, or have under such a name. */
  @Test
  void whatOnlyLooksAlikeIsSomebodyElses() throws IOException {
    report();
    replace("inventory.csv", "open-exceptions", "open-exceptions,remark");
    replace("materials.csv", "customer,site", "customer;site");
    replace("index.html", "<meta charset=\"utf-8\">", "<meta charset=\"utf-8\" >");
    replace("due.ics", "headhouse.org", "example.org");
    replace("figures.json", "\"site\"", "\"house\"");
    replace("oak-bundle.zip", "oak-bundle/", "elm-bundle/");
    ByteArrayOutputStream zip = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(zip, UTF_8)) {
      out.putNextEntry(new ZipEntry("oak-bundle/index.html"));
    }
    Path bundle = folder.resolve("o/oak-bundle.zip");
    byte[] own = Files.readAllBytes(bundle);
    Files.write(bundle, zip.toByteArray());
    assertRefused("oak-bundle.zip");
    Files.write(bundle, own);
    Path index = folder.resolve("o/index.html");
    Files.delete(index);
    for (String target : new String[] {"lost.html", "sites"}) {
      Files.createSymbolicLink(index, folder.resolve(target));
      CommandCall call = report();
      assertThat(call.code()).isEqualTo(2);
      assertThat(call.lastError()).startsWith("error: o/index.html is there and cannot be read: ");
      assertThat(index).isSymbolicLink();
      Files.delete(index);
    }
  }

  private void replace(String name, String text, String other) throws IOException {
    Path file = folder.resolve("o").resolve(name);
    byte[] own = Files.readAllBytes(file);
    String before = text(file);
    assertThat(before).contains(text);
    Files.write(file, before.replace(text, other).getBytes(ISO_8859_1));
    assertRefused(name);
    Files.write(file, own);
  }
}
