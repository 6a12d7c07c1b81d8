package org.headhouse.linter.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandTest {
  private static final String GAP = Example.with("address: 3", "address: 4");
  private static final String CLEAN = "1 site, 3 units: 0 errors, 0 warnings, 0 notes\n";

  private static final String DEVICE_TYPES =
      "format: 1\ndevice-types:\n  - {id: eight-way, unit-load: 1/8, baud-rates: [9600]}\n";

  @TempDir private Path folder;
  private String out = "";
  private String err = "";

  @BeforeEach
  void repository() throws IOException {
    write("sites/example.yaml", Example.SITE);
    write("device-types.yaml", DEVICE_TYPES);
  }

  private Path write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private void warning() throws IOException {
    write("sites/example.yaml", GAP);
    write("linter.yaml", "format: 1\nrule-set: 1\nrules: {address.gap: {level: warning}}\n");
  }

  private int run(String... arguments) {
    return run(InputStream.nullInputStream(), arguments);
  }

  private int run(InputStream in, String... arguments) {
    CommandCall call = CommandCall.of(in, folder, arguments);
    out = call.out();
    err = call.err();
    return call.code();
  }

  @Test
  void aCleanFolderIsCounted() {
    assertThat(run()).isZero();
    assertThat(out).isEqualTo(CLEAN);
    assertThat(err).isEqualTo("Device types: device-types.yaml; no policy\n");
  }

  @ParameterizedTest
  @CsvSource({
    "--name=sites/example.yaml, sites/example.yaml",
    "--name=sites/example/site.yaml, sites/example/site.yaml",
    "--printLevel=note, <standard input>"
  })
  void aTextFromTheStandardInputIsCheckedWithWhatHoldsForItsFile(String option, String shown)
      throws IOException {
    warning();
    write("sites/example.yaml", Example.SITE);
    assertThat(run(new ByteArrayInputStream(GAP.getBytes(UTF_8)), option, "-")).isZero();
    assertThat(out).startsWith(shown + ":25:14: warning: ").contains("[address.gap]");
    assertThat(err).isEqualTo("Device types: device-types.yaml; policy: linter.yaml\n");
  }

  /** Of a device that never ends, no more is read than a check needs. */
  @Test
  void aTextThatDoesNotEndIsTooLarge() {
    InputStream endless =
        new InputStream() {
          @Override
          public int read() {
            return '#';
          }
        };
    assertThat(run(endless, "-")).isEqualTo(1);
    assertThat(out).contains("[file.too-large]");
  }

  @Test
  void aResultIsReportedInTheFormOfTheGoal() throws IOException {
    warning();
    assertThat(run("--failLevel=note")).isEqualTo(1);
    assertThat(out)
        .startsWith("sites/example.yaml:25:14: warning: ")
        .contains(" [address.gap]\n  25 |     address: 4\n     |              ^\n")
        .contains("\n1 site, 3 units: 0 errors, 1 warning, 0 notes\n")
        .contains("\n     1  address.gap\n")
        .endsWith("with an example: java -jar <this jar> --rule=address.gap\n");
    assertThat(err).isEqualTo("Device types: device-types.yaml; policy: linter.yaml\n");
  }

  @Test
  void thePageOfARuleIsShown() {
    assertThat(run("--rule=address.gap")).isZero();
    assertThat(out).startsWith("# address.gap").contains("## Breaks the rule");
    assertThat(run("--rule=adress.gap")).isEqualTo(2);
    assertThat(err).contains("there is no rule \"adress.gap\": use address.gap");
  }

  @ParameterizedTest
  @CsvSource({
    "'', 0",
    "--failLevel=error, 0",
    "--failLevel=warning, 1",
    "--failLevel=note, 1",
    "--failLevel=none, 0",
    "--failLevel warning, 1"
  })
  void theFailLevelDecides(String option, int code) throws IOException {
    warning();
    assertThat(run(option.isEmpty() ? new String[0] : option.split(" "))).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource({"note, true", "warning, true", "error, false", "none, false"})
  void thePrintLevelDecidesWhatIsPrinted(String level, boolean printed) throws IOException {
    warning();
    run("--printLevel=" + level);
    assertThat(out.contains("[address.gap]")).isEqualTo(printed);
  }

  @Test
  void optionsSayWhereEverythingIs() throws IOException {
    write("elsewhere/fine.yml", GAP.replace("site: example", "site: fine"));
    write("elsewhere/draft/oak.yaml", "nonsense");
    write("policy.yaml", "format: 1\nrule-set: 1\nrules: {address.gap: {level: error}}\n");
    write("types.yaml", DEVICE_TYPES);
    assertThat(
            run(
                "--sites=elsewhere",
                "--includes=*.yml",
                "--includes=**/oak.yaml",
                "--excludes=draft/**",
                "--policy=policy.yaml",
                "--deviceTypes=types.yaml",
                "--threads=3"))
        .isEqualTo(1);
    assertThat(err).isEqualTo("Device types: types.yaml; policy: policy.yaml\n");
    assertThat(out).startsWith("elsewhere/fine.yml:25:14: error: ").contains("\n1 site, 3 units: ");
  }

  @Test
  void resultsAreWrittenOnlyWhereAFolderIsGiven() throws IOException {
    assertThat(run()).isZero();
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(Path::getFileName).map(Path::toString))
          .containsExactlyInAnyOrder("sites", "device-types.yaml");
    }
    assertThat(run("--outputDirectory=out/deep")).isZero();
    assertThat(err).endsWith("Results are in out/deep\n");
    try (Stream<Path> files = Files.list(folder.resolve("out/deep"))) {
      assertThat(files.map(Path::getFileName).map(Path::toString))
          .containsExactlyInAnyOrder("results.sarif", "results-junit.xml");
    }
  }

  @Test
  void whatABaselineKnowsFailsNothing() throws IOException {
    write("sites/example.yaml", GAP);
    write(
        "old.jsonl",
        """
        {"baseline-format":1}
        {"file":"sites/example.yaml","site":"example","at":"chain","rule":"address.gap","unit":"Hardening Bay"}
        {"file":"sites/example.yaml","site":"example","at":"chain/Hardening Bay/address","rule":"address.duplicate","value":"2"}
        """);
    run("--failLevel=warning", "--baseline=old.jsonl");
    assertThat(out).contains("known from the baseline");
    assertThat(run("--baseline=lost.jsonl")).isEqualTo(2);
    assertThat(err)
        .endsWith(
            "error: the baseline lost.jsonl does not exist: correct the name, or make it with the"
                + " Maven plugin's goal baseline\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          --site=x               | there is no option --site: use --sites=<folder>
          --faillevel=error      | there is no option --faillevel: use --failLevel=<level>
          --output-directory=x   | there is no option --output-directory: use --outputDirectory=<folder>
          -h                     | there is no option -h: --help lists the options; to name a file, use ./-h
          --colour               | there is no option --colour: --help lists the options; to name a file, use ./--colour
          - sites/example.yaml   | - goes with no other file: call the command once for each
          --name=x               | --name works only with -: use - as the one file, or leave it out
          - --since=HEAD         | --since does not go with -: name the file that is compared
          - --excludes=draft/**  | --excludes does not go with -, which is checked in any case: leave it out
          - --includes=**/*.yml  | --includes does not go with -, which is checked in any case: leave it out
          --rule=address.gap sites/example.yaml | --rule shows a page, and checks nothing: give it alone
          check --rule=address.gap --sites=sites | --rule shows a page, and checks nothing: give it alone
          --openResults          | there is no folder for the open results: use --outputDirectory=<folder>
          diagnose -             | - does not go with diagnose: name the file
          lsp --threads=2        | --threads does not go with lsp: leave it out
          lsp sites/example.yaml | lsp takes no files: the editor says which texts it has; leave them out
          -Dlinter.sites=x       | there is no option -Dlinter.sites: use --sites=<folder>
          --changedOnly          | only the goal check of the Maven plugin has the option --changedOnly: leave it out
          --sites                | --sites needs a value: use --sites=<folder>
          --sites=               | --sites needs a value: use --sites=<folder>
          --sites --help         | --sites needs a value: use --sites=<folder>
          --sites=a --sites=b    | --sites is given twice: give it once
          --help=yes             | --help cannot be "yes": use --help
          --allowEmpty=perhaps   | --allowEmpty cannot be "perhaps": use --allowEmpty
          --failLevel=eror       | --failLevel cannot be "eror": use error
          --printLevel=loud      | --printLevel cannot be "loud": use one of error, warning, note, none
          --threads=0            | --threads cannot be 0: use 1 or more
          --threads=two          | --threads cannot be "two": use 1 or more
          --includes=%regex[((]  | --includes or --excludes has a pattern that cannot be read, "((": correct it
          --includes=*.json      | no file in FOLDER/sites matches *.json: correct --sites, --includes or --excludes, or set --allowEmpty to true
          --sites=lost           | --sites names FOLDER/lost, which does not exist: name the folder of the sites, or one file
          --policy=lost          | --policy names FOLDER/lost, which is not a file: correct the path, or leave it out
          --deviceTypes=sites    | --deviceTypes names FOLDER/sites, which is not a file: correct the path, or leave it out
          sites                  | "sites" is a folder: use --sites=sites, or name files in it
          --outputDirectory=device-types.yaml | FOLDER/device-types.yaml/results.sarif cannot be written: FOLDER/device-types.yaml: there is a file where a folder is needed
          """)
  void whatIsWrongIsTroubleAndSaysWhatToWrite(String arguments, String message) {
    assertThat(run(arguments.split(" "))).isEqualTo(2);
    assertThat(err.lines().reduce("", (before, line) -> line))
        .isEqualTo("error: " + message.replace("FOLDER", folder.toString()));
  }

  @Test
  void noSiteAtAllMayBeFine() {
    assertThat(run("--includes=*.json", "--allowEmpty")).isZero();
    assertThat(out).isEqualTo("0 sites, 0 units: 0 errors, 0 warnings, 0 notes\n");
    assertThat(run("--includes=*.json", "--allowEmpty=true")).isZero();
    assertThat(run("--includes=*.json", "--allowEmpty=false")).isEqualTo(2);
  }

  @Test
  void helpNamesEveryOption() {
    assertThat(run("--help", "lost")).isZero();
    assertThat(out.lines().filter(line -> line.startsWith("  --")))
        .hasSize(Goal.CHECK.options().size())
        .allMatch(line -> line.matches("  --[a-zA-Z]+(=<[a-z]+>)? +\\S.*"));
    assertThat(err).isEmpty();
  }

  @Test
  void theVersionIsReported() {
    assertThat(run("--version")).isZero();
    assertThat(out).startsWith("Headhouse Linter ");
  }

  @Test
  void aFileThatCannotBeReadIsTroubleUnlessResultsFail() throws IOException {
    assertThat(run("sites/example.yaml", "sites/lost.yaml")).isEqualTo(2);
    assertThat(out).isEqualTo("2 sites, 3 units: 0 errors, 0 warnings, 0 notes\n");
    assertThat(err)
        .endsWith("error: sites/lost.yaml: the file cannot be read: it does not exist\n");
    write("sites/example.yaml", GAP);
    assertThat(run("--failLevel=warning", "sites/example.yaml", "sites/lost.yaml")).isEqualTo(1);
  }

  @Test
  void onlyTheFilesThatAreNamedAreChecked() throws IOException {
    write("sites/broken.yaml", "nonsense");
    assertThat(run("sites/example.yaml")).isZero();
    assertThat(out).isEqualTo(CLEAN);
    assertThat(run("--", "sites/broken.yaml")).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"device-types.yaml", "linter.yaml"})
  void whatHoldsForAllSitesStandsForAll(String changed) throws IOException {
    write("linter.yaml", "format: 1\nrule-set: 1\n");
    write("sites/broken.yaml", "nonsense");
    assertThat(run(changed, "sites/example.yaml")).isEqualTo(1);
    assertThat(out).contains("\n2 sites, 3 units: ");
    assertThat(err)
        .startsWith("All sites are checked, because a file that applies to all of them is named\n");
  }

  /** A name may hold what would garble a terminal. */
  @Test
  void whateverIsReportedIsPrintable() throws IOException {
    write("a\u001b[2J/linter.yaml", "format: 1\nrule-set: 1\n");
    write("a\u001b[2J/device-types.yml", "");
    write("a\u001b[2J/sites/example.yaml", Example.SITE);
    run("--sites=a\u001b[2J/sites", "--outputDirectory=o\u001b[2J");
    assertThat(err)
        .contains("; policy: a\uFFFD[2J/linter.yaml\n")
        .contains("a\uFFFD[2J/device-types.yml is not read")
        .endsWith("Results are in o\uFFFD[2J\n")
        .doesNotContain("\u001b");
    assertThat(run("--policy=lost\u001b[2J")).isEqualTo(2);
    assertThat(err).contains("lost\uFFFD[2J").doesNotContain("\u001b");
  }

  @Test
  void theFolderItselfIsADot() {
    assertThat(run("--outputDirectory=.")).isZero();
    assertThat(err).endsWith("\nResults are in .\n");
  }

  private static final String ALL =
      "All sites are checked, because a file that applies to all of them is named\n";

  /** However it is written, it is a policy and no site. */
  @ParameterizedTest
  @CsvSource({
    "--policy=conf/policy.yaml, conf/policy.yaml",
    "--policy=./conf/policy.yaml, conf/policy.yaml",
    "--policy=conf/policy.yaml, ./sites/../conf/policy.yaml",
    "--policy=conf/link.yaml, conf/policy.yaml",
    "--policy=conf/policy.yaml, conf/link.yaml",
    "--deviceTypes=./device-types.yaml, device-types.yaml"
  })
  void whatIsNamedToHoldForAllIsNoSite(String option, String file) throws IOException {
    write("conf/policy.yaml", "format: 1\nrule-set: 1\n");
    Files.createSymbolicLink(folder.resolve("conf/link.yaml"), Path.of("policy.yaml"));
    assertThat(run(option, file)).isZero();
    assertThat(out).isEqualTo(CLEAN);
    assertThat(err).startsWith(ALL);
  }

  @Test
  void whatHoldsForOneFileIsNoSite() throws IOException {
    write("linter.yaml", "format: 1\nrule-set: 1\n");
    assertThat(run("--sites=sites/example.yaml", "linter.yaml")).isZero();
    assertThat(out).isEqualTo(CLEAN);
    assertThat(err).isEqualTo(ALL + "Device types: device-types.yaml; policy: linter.yaml\n");
  }

  @Test
  void whatHoldsForAllIsNoSiteWhereThereIsNoFolderOfSites() throws IOException {
    write("linter.yaml", "format: 1\nrule-set: 1\n");
    write("elsewhere/example.yaml", Example.SITE);
    assertThat(run("--sites=lost", "linter.yaml", "elsewhere/example.yaml")).isZero();
    assertThat(out).isEqualTo(CLEAN);
    assertThat(err)
        .isEqualTo(
            """
            linter.yaml applies to sites and is not one: left out
            Device types: device-types.yaml; policy: linter.yaml
            """);
  }

  @Test
  void whatHoldsForFilesElsewhereIsNoSite() throws IOException {
    write("north/sites/example.yaml", Example.SITE);
    write("north/linter.yaml", "format: 1\nrule-set: 1\n");
    assertThat(run("north/linter.yaml", "north/sites/example.yaml")).isZero();
    assertThat(out).isEqualTo(CLEAN);
    assertThat(err)
        .isEqualTo(
            """
            north/linter.yaml applies to sites and is not one: left out
            No device types; policy: north/linter.yaml
            """);
  }

  /** As where a policy and a site are staged together, and the name of the site is wrong. */
  @Test
  void filesBesideWhatHoldsForAllAreReportedToo() throws IOException {
    write("README.md", "# Sites");
    write("sites/notes.txt", "nonsense");
    write("other/elm.yaml", GAP.replace("site: example", "site: elm"));
    write("linter.yaml", "format: 1\nrule-set: 1\nrules: {address.gap: {level: note}}\n");
    assertThat(
            run(
                "linter.yaml",
                "README.md",
                "sites/notes.txt",
                "sites/typo.yaml",
                "other/elm.yaml",
                "other/typo.yaml"))
        .isEqualTo(2);
    assertThat(out).startsWith("other/elm.yaml:25:14: note: ").contains("\n4 sites, 6 units: ");
    assertThat(err)
        .isEqualTo(
            ALL
                + """
                README.md is not a site: left out
                sites/notes.txt is not a site: left out
                Device types: device-types.yaml; policy: linter.yaml
                error: sites/typo.yaml: the file cannot be read: it does not exist
                error: other/typo.yaml: the file cannot be read: it does not exist
                """);
  }

  /** A hook may name a file twice, and links to it as well. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "sites/example.yaml sites/example.yaml",
        "sites/example.yaml ./sites/example.yaml",
        "sites/example.yaml sites/link.yaml",
        "sites/link.yaml sites/example.yaml",
        "sites/example.yaml other/inward.yaml",
        "other/inward.yaml sites/example.yaml",
        "device-types.yaml sites/example.yaml sites/link.yaml other/inward.yaml"
      })
  void aFileIsCheckedOnceUnderItsOwnName(String files) throws IOException {
    write("sites/example.yaml", GAP);
    Files.createSymbolicLink(folder.resolve("sites/link.yaml"), Path.of("example.yaml"));
    Files.createDirectory(folder.resolve("other"));
    Files.createSymbolicLink(folder.resolve("other/inward.yaml"), Path.of("../sites/example.yaml"));
    run(files.split(" "));
    assertThat(out).startsWith("sites/example.yaml:25:14: ").contains("\n1 site, 3 units: ");
    assertThat(err).doesNotContain("left out");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "other/elm.yaml other/elm.yaml",
        "other/elm.yaml ./other/elm.yaml",
        "other/elm.yaml other/link.yaml",
        "other/link.yaml other/elm.yaml"
      })
  void aFileElsewhereIsCheckedOnceToo(String files) throws IOException {
    write("other/elm.yaml", GAP.replace("site: example", "site: elm"));
    Files.createSymbolicLink(folder.resolve("other/link.yaml"), Path.of("elm.yaml"));
    run(files.split(" "));
    assertThat(out).startsWith("other/elm.yaml:25:14: ").contains("\n1 site, 3 units: ");
    assertThat(err).isEqualTo("Device types: device-types.yaml; no policy\n");
  }

  @Test
  void filesThatAreNoSitesAreLeftOut() throws IOException {
    write("README.md", "# Sites");
    write("sites/notes.txt", "nonsense");
    write("sites/draft/oak.yaml", "nonsense");
    write("sites/.hidden.yaml", "nonsense");
    assertThat(
            run(
                "--excludes=draft/",
                "README.md",
                "sites/notes.txt",
                "sites/draft/oak.yaml",
                "sites/.hidden.yaml"))
        .isZero();
    assertThat(err)
        .isEqualTo(
            """
            README.md is not a site: left out
            sites/notes.txt is not a site: left out
            sites/draft/oak.yaml is not a site: left out
            sites/.hidden.yaml is not a site: left out
            """);
  }

  /** One repository for several ranges, each with its own settings. */
  @Test
  void eachFileHasTheSettingsBesideItsFolderOfSites() throws IOException {
    Files.delete(folder.resolve("device-types.yaml"));
    write("north/sites/example.yaml", GAP);
    write("north/linter.yaml", "format: 1\nrule-set: 1\nrules: {address.gap: {level: error}}\n");
    write("south/sites/example/site.yaml", GAP);
    write("south/linter.yaml", "format: 1\nrule-set: 1\nrules: {address.gap: {level: none}}\n");
    assertThat(run("north/sites/example.yaml", "south/sites/example/site.yaml")).isEqualTo(1);
    assertThat(out)
        .startsWith("north/sites/example.yaml:25:14: error: ")
        .doesNotContain("south/")
        .contains("\n2 sites, 6 units: 1 error, ");
    assertThat(err)
        .isEqualTo(
            "No device types; policy: north/linter.yaml\nNo device types; policy:"
                + " south/linter.yaml\n");
  }

  @Test
  void readingsAreDiagnosed() throws IOException {
    int code =
        run(
            "diagnose",
            "--asFound={at: Propagation, pair-resistance: 5 ohm}",
            "--outputDirectory=o");
    assertThat(code).isZero();
    assertThat(out).startsWith("Before you measure resistance").contains("The readings do not fit");
    assertThat(folder.resolve("o/diagnosis.json")).content().contains("\"pair-shorted\"");
  }

  @Test
  void readingsGoWithADiagnosisOnly() {
    assertThat(run("--asFound={at: Propagation, pair-resistance: 5 ohm}")).isEqualTo(2);
    assertThat(err).contains("--asFound works only with diagnose");
    assertThat(run("diagnose", "--asFound=five ohm")).isEqualTo(2);
    assertThat(err).contains("the readings are not understood");
  }
}
