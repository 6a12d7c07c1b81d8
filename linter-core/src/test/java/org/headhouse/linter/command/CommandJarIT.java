package org.headhouse.linter.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.headhouse.linter.Example;
import org.headhouse.linter.command.CommandProcess.Ended;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The jar of the command, as it is handed out. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class CommandJarIT {
  @TempDir private Path folder;
  private Path site = Path.of("");

  @BeforeEach
  void repository() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    site = Files.writeString(folder.resolve("sites/example.yaml"), Example.SITE);
  }

  @ParameterizedTest
  @CsvSource({
    "META-INF/services/com.fasterxml.jackson.core.JsonFactory, com.fasterxml.jackson.core.JsonFactory",
    "META-INF/services/com.fasterxml.jackson.core.ObjectCodec, com.fasterxml.jackson.databind.ObjectMapper",
    "META-INF/services/org.slf4j.spi.SLF4JServiceProvider, org.slf4j.nop.NOPServiceProvider",
    // Each library states its licence in its own way.
    "META-INF/LICENSE, Apache License",
    "META-INF/LICENSE.txt, QOS.ch",
    "META-INF/NOTICE, Jackson JSON processor",
    "META-INF/NOTICE, Indiana University",
    "META-INF/FastDoubleParser-LICENSE, MIT License",
    "licenses/extreme.indiana.edu.license.TXT, Indiana University",
    "licenses/re2j.txt, The Go Authors",
    "META-INF/maven/org.yaml/snakeyaml/pom.xml, Apache License",
    "META-INF/maven/com.networknt/json-schema-validator/pom.xml, Apache License",
    "META-INF/maven/gg.jte/jte-runtime/pom.xml, jte-runtime",
    "META-INF/maven/io.github.java-diff-utils/java-diff-utils/pom.xml, java-diff-utils",
    "about.html, Eclipse Distribution License",
    "META-INF/LICENSE.txt, Apache License",
    "META-INF/NOTICE.txt, Apache Commons Codec",
    "META-INF/maven/com.googlecode.javaewah/JavaEWAH/pom.xml, Apache 2",
  })
  void whatTheLibrariesNeedIsKept(String entry, String text) throws IOException {
    try (JarFile jar = new JarFile(CommandProcess.JAR.toFile())) {
      ZipEntry found = jar.getEntry(entry);
      assertThat(found).as(entry).isNotNull();
      assertThat(new String(jar.getInputStream(found).readAllBytes(), UTF_8)).contains(text);
    }
  }

  @Test
  void noEntryIsThereTwiceOrOnlyForSomeVersions() throws IOException {
    try (JarFile jar = new JarFile(CommandProcess.JAR.toFile())) {
      assertThat(jar.stream().map(ZipEntry::getName))
          .doesNotHaveDuplicates()
          .noneMatch(name -> name.endsWith("module-info.class"))
          .noneMatch(name -> name.startsWith("META-INF/versions/"));
    }
  }

  @Test
  void theVersionIsThatOfTheBuild() throws Exception {
    assertThat(CommandProcess.linter(folder, "--version"))
        .isEqualTo(
            new Ended(0, "Headhouse Linter " + System.getProperty("command.version") + "\n", ""));
  }

  @Test
  void aCleanSiteIsZero() throws Exception {
    assertThat(CommandProcess.linter(folder, "sites/example.yaml"))
        .isEqualTo(
            new Ended(
                0,
                "1 site, 3 units: 0 errors, 0 warnings, 0 notes\n",
                "No device types; no policy\n"));
  }

  /** For which the schema is asked, and with it most of the libraries. */
  @Test
  void aFaultOfTheFormIsOne() throws Exception {
    Files.writeString(site, Example.with("stage: planned", "stage: planed"));
    Ended ended = CommandProcess.linter(folder, "--outputDirectory=out");
    assertThat(ended.out()).contains("[schema.bad-value]").contains("planned");
    assertThat(ended.err()).isEqualTo("No device types; no policy\nResults are in out\n");
    assertThat(ended.code()).isEqualTo(1);
    assertThat(folder.resolve("out/results.sarif")).content(UTF_8).contains("schema.bad-value");
  }

  /** They take longer to load than a site takes to check. */
  @Test
  void aCleanSiteNeedsNeitherSchemaNorJacksonNorGit() throws Exception {
    Files.writeString(
        folder.resolve("linter.yaml"),
        "format: 1\nrule-set: 1\nrules: {firmware.mixed: {level: warning}}\n");
    Files.writeString(
        folder.resolve("device-types.yaml"),
        "format: 1\ndevice-types:\n  - {id: eight-way, unit-load: 1/8, baud-rates: [9600]}\n");
    List<String> command = new ArrayList<>(CommandProcess.command("sites/example.yaml"));
    command.add(1, "-Xlog:class+load:file=loaded.txt");
    assertThat(CommandProcess.run(folder, Map.of(), command).code()).isZero();
    assertThat(Files.readAllLines(folder.resolve("loaded.txt")))
        .anyMatch(line -> line.contains(" org.yaml.snakeyaml."))
        .noneMatch(
            line ->
                line.matches(
                    ".* (com\\.networknt|com\\.fasterxml|gg\\.jte|org\\.slf4j|org\\.eclipse\\.jgit"
                        + "|com\\.github\\.difflib|org\\.headhouse\\.linter\\.(revision|goal"
                        + "|command\\.(Goal|GoalDispatch|Help|UnknownOption)))[. ].*"));
  }

  /** Of the libraries, the jar has only the classes that are used. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          check     | 3 units: 1 error, 0 warnings, 0 notes | 1
          fix       | +    address: 3 | 0
          report --outputDirectory=o | goal fix shows it, and writes it with --write | 0
          changes --before=sites --outputDirectory=o | Changes since sites | 0
          draft --list=units.csv --site=example | +    cable-to-next: 41 m | 0
          draft --list=units.csv --site=oak | [draft.open-point] | 0
          draft --visit=visit.csv | +commissioning: | 0
          diagnose --asFound={at:~Propagation,~pair-resistance:~5~ohm} --outputDirectory=o | The readings | 0
          rules     | address.gap | 0
          rules address.gap | # address.gap | 0
          schema --outputDirectory=o | '' | 0
          completion | complete -o default -F _linter_complete linter | 0
          chek      | '' | 2
          """)
  void eachGoalIsThere(String arguments, String out, int code) throws Exception {
    Files.writeString(site, Example.with("address: 3", "address: 2"));
    Files.writeString(
        folder.resolve("units.csv"),
        "name,cable-to-next (m)\nPropagation,41\nSeedling North,60\nHardening Bay,\n");
    Files.writeString(
        folder.resolve("visit.csv"),
        """
        what,where,acceptable,found,by,date,remark
        site,example,,,,,
        outdoor readings seen (yes),Seedling North,,yes,R.O.,14 March 2026,
        """);
    String[] words = arguments.split(" ");
    for (int i = 0; i < words.length; i++) {
      words[i] = words[i].replace('~', ' ');
    }
    Ended ended = CommandProcess.linter(folder, words);
    assertThat(ended.code()).as(ended.toString()).isEqualTo(code);
    assertThat(ended.out()).contains(out);
    assertThat(ended.err()).doesNotContain("tool failed", "SLF4J");
  }

  @Test
  void aWrongOptionIsTwo() throws Exception {
    assertThat(CommandProcess.linter(folder, "--failevel=note"))
        .isEqualTo(
            new Ended(2, "", "error: there is no option --failevel: use --failLevel=<level>\n"));
  }

  @ParameterizedTest
  @CsvSource({"C, ISO-8859-1", "C, US-ASCII", "C.UTF-8, UTF-16", "POSIX, UTF-8"})
  void whatIsReportedIsInUtf8WhateverTheLocale(String locale, String encoding) throws Exception {
    Files.writeString(
        site,
        Example.SITE
            .replace("Seedling North", "Setzlinge Süd 苗")
            .replace("Hardening Bay", "Setzlinge Süd 苗"));
    List<String> command = new ArrayList<>(CommandProcess.command());
    command.add(1, "-Dfile.encoding=" + encoding);
    Ended ended = CommandProcess.run(folder, Map.of("LC_ALL", locale), command);
    assertThat(ended.out()).contains("\"Setzlinge Süd 苗\"").contains("[name.duplicate]");
  }

  /** What got lost is not a clean result. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void outputThatCannotBeWrittenIsTwo() throws Exception {
    assertThat(CommandProcess.shell(folder, "\"$@\" >/dev/full", array()).code()).isEqualTo(2);
  }

  private static String[] array() {
    return CommandProcess.command().toArray(String[]::new);
  }
}
