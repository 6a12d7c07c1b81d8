package org.headhouse.linter.command;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.jgit.api.Git;
import org.headhouse.linter.Example;
import org.headhouse.linter.revision.TestRepository;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The goals of the plugin that need no build, as goals of the command. */
class GoalsTest {
  private static final String DUPLICATE = Example.with("address: 3", "address: 2");
  private static final String LIST = "name,cable-to-next (m)\nPropagation,42\nSeedling North,\n";

  @TempDir private Path folder;

  @BeforeEach
  void repository() throws IOException {
    write("sites/example.yaml", Example.SITE);
  }

  private Path write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private String site() throws IOException {
    return Files.readString(folder.resolve("sites/example.yaml"));
  }

  private Stream<String> files(String inside) throws IOException {
    try (Stream<Path> files = Files.walk(folder.resolve(inside))) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> folder.resolve(inside).relativize(file).toString().replace('\\', '/'))
          .toList()
          .stream();
    }
  }

  private CommandCall call(String arguments) {
    return CommandCall.of(folder, arguments.split(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          chek                     | there is no goal "chek": use check; to name a file, use ./chek
          Fix                      | there is no goal "Fix": use fix; to name a file, use ./Fix
          reprot --units=us        | there is no goal "reprot": use report; to name a file, use ./reprot
          --units=us               | --units works only with report: put report first, or leave it out
          lint                     | there is no goal "lint": use one of check, fix, report, changes, draft, rules, schema, diagnose, lsp, completion; to name a file, use ./lint
          help                     | there is no goal "help": use --help; to name a file, use ./help
          --printLevel=none lint   | "lint" does not exist, and is not the name of a site: correct the path
          --sites=sites fix        | "fix" is not the first argument: put the goal first; to name a file, use ./fix
          --write                  | --write works only with fix or draft: put one of them first, or leave it out
          --asfound=x              | there is no option --asfound: use --asFound=<readings>
          fix --writ               | there is no option --writ: use --write
          fix --failLevel=note     | --failLevel does not go with fix: leave it out
          fix --outputDirectory=o  | --outputDirectory does not go with fix: leave it out
          fix sites/example.yaml   | fix takes no files: name the folder of the sites, or one file, with --sites
          fix -                    | fix takes no files: name the folder of the sites, or one file, with --sites
          fix --fixes=all          | --fixes cannot be "all": use one of safe, proposed
          fix --since=HEAD         | --since is HEAD, and FOLDER/sites is not in a git repository: run it in one, or leave out --since
          report                   | there is no folder for the sheets: use --outputDirectory=<folder>
          report --paper=A5 --outputDirectory=o | --paper cannot be "A5": use one of A4, Letter
          report --slack=-1 --outputDirectory=o | --slack cannot be "-1": set a percentage from 0 to 100, such as 10
          changes                  | there is nothing to compare with: use --since=HEAD, or --before with a folder of sites or one file
          changes --since=HEAD     | --since is HEAD, and FOLDER/sites is not in a git repository: run it in one, or instead use --before with a folder of sites or one file
          changes --since=a --before=b | --since and --before cannot be combined: use --since=HEAD, or --before with a folder of sites or one file
          changes --before=lost    | --before names FOLDER/lost, which does not exist: correct the path
          rules a b                | rules shows one page at a time: name one rule, or none for all
          rules a --rule=b         | rules shows one page at a time: name one rule, or none for all
          rules adress.gap         | there is no rule "adress.gap": use address.gap
          schema                   | there is no folder for the schemas: use --outputDirectory=<folder>
          schema out               | schema takes no files: name the folder with --outputDirectory=<folder>
          draft                    | there is neither a list of units nor an id for the site: use --list=<file> and --site=<id>
          draft --site=oak         | there is no list of units: use --list=<file>
          draft --list=u.csv       | the site has no id: use --site=<id>
          draft --csv=u.csv        | there is no option --csv: use --list=<file>
          draft -Dlinter.csv=u.csv | there is no option -Dlinter.csv: use --list=<file>
          draft --list=a --visit=b | --list is a list of units, and --visit one from a visit: give one of the two
          draft --visit=b --title=x | --visit adds to a site that is there: leave out --title (only for a new site)
          draft --visit=b --readings=light --baud=9600 --parity=even --gauge=24AWG --shielded=true --impedance=120ohm --biasSupply=5V | --visit adds to a site that is there: leave out --readings, --baud, --parity, --gauge, --shielded, --impedance, --biasSupply (only for a new site)
          draft u.csv              | draft takes no files: name the list with --list=<file>, or with --visit=<file> if it is from a visit
          draft --list=u --site=o --baud=fast   | --baud cannot be "fast": use a number, such as 9600
          draft --list=u --site=o --shielded=no | --shielded cannot be "no": use one of true, false
          draft --list=u --site=o --gauge=24    | --gauge cannot be "24": use a number with AWG or mm2
          draft --list=lost.csv --site=oak      | the list of units cannot be read: FOLDER/lost.csv: it does not exist
          diagnose --failLevel=note | --failLevel does not go with diagnose: leave it out
          completion a b           | completion is for one name of the command: call it once for each
          completion a/b           | a command cannot be called "a/b" here: use letters, digits, hyphens, dots and underscores, a letter first
          """)
  void whatIsWrongIsTroubleAndSaysWhatToWrite(String arguments, String message) {
    CommandCall call = call(arguments);
    assertThat(call.lastError())
        .isEqualTo("error: " + message.replace("FOLDER", folder.toString()));
    assertThat(call.code()).isEqualTo(2);
    assertThat(call.out()).isEmpty();
  }

  /** A file that is there is a file, and so is any after two hyphens. */
  @ParameterizedTest
  @ValueSource(strings = {"chek", "./fix", "-- fix", "-- chek", "sites/example.yaml"})
  void aFileIsNoGoal(String arguments) throws IOException {
    write("chek", "");
    write("fix", "");
    CommandCall call = call(arguments);
    assertThat(call.code()).isZero();
    assertThat(call.err()).doesNotContain("error");
  }

  @ParameterizedTest
  @EnumSource(Goal.class)
  void eachGoalHasHelpWithItsOptions(Goal goal) {
    CommandCall call = CommandCall.of(folder, goal.word(), "--help");
    assertThat(call.code()).isZero();
    assertThat(call.err()).isEmpty();
    assertThat(call.out())
        .startsWith("The goal " + goal.word() + " ")
        .contains("java -jar <this jar> " + goal.word() + " ");
    assertThat(call.out().lines().filter(line -> line.startsWith("  --")))
        .hasSize(goal.options().size())
        .allMatch(line -> line.matches("  --[a-zA-Z]+(=<[a-z]+>)? +\\S.*"));
  }

  @Test
  void theHelpOfTheCommandNamesEachGoal() {
    assertThat(call("--help").out().lines())
        .containsAll(
            Stream.of(Goal.values())
                .map(goal -> String.format("  %-12s%s", goal.word(), goal.summary()))
                .toList());
  }

  /** An option of no goal could not be given, and one of an unknown goal not be found. */
  @ParameterizedTest
  @EnumSource(CommandOption.class)
  void eachOptionIsOneOfAGoal(CommandOption option) {
    assertThat(option.goals()).allMatch(goal -> Goal.of(goal).isPresent());
    assertThat(Goal.values()).anyMatch(goal -> option.goesWith(goal.word()));
  }

  @Test
  void checkIsACallWithoutAGoal() throws IOException {
    write("sites/example.yaml", DUPLICATE);
    assertThat(call("check --printLevel=error sites/example.yaml"))
        .isEqualTo(call("--printLevel=error sites/example.yaml"))
        .returns(1, CommandCall::code);
  }

  @Test
  void whatIsFixedIsWrittenWhereThatIsAskedFor() throws IOException {
    write("sites/example.yaml", DUPLICATE);
    CommandCall shown = call("fix");
    assertThat(shown.code()).isZero();
    assertThat(shown.out())
        .contains("--- a/sites/example.yaml\n")
        .contains("\n-    address: 2\n+    address: 3\n")
        .endsWith("\nNothing is written. To write the changes: --write\n");
    assertThat(site()).isEqualTo(DUPLICATE);
    assertThat(call("fix --write").out()).doesNotContain("Nothing is written");
    assertThat(site()).isEqualTo(Example.SITE);
  }

  /** Whoever edits a line that works may have written that it is planned. */
  @Test
  void theLastCommitIsComparedByItself() throws Exception {
    TestRepository repository = new TestRepository(folder);
    repository.write("sites/example.yaml", Example.with("stage: planned", "stage: commissioned"));
    repository.commit();
    write("sites/example.yaml", DUPLICATE);
    assertThat(call("fix --write").out()).contains("would have a fix with --fixes=proposed");
    assertThat(site()).isEqualTo(DUPLICATE);
  }

  /** What nobody can read may have said that the line works. */
  @Test
  void aLastCommitThatCannotBeReadMakesNoFixSafe() throws Exception {
    TestRepository repository = new TestRepository(folder);
    repository.write("sites/example.yaml", "stage: commissioned\nsite: [");
    repository.commit();
    write("sites/example.yaml", DUPLICATE);
    assertThat(call("fix --write").out()).contains("would have a fix with --fixes=proposed");
    assertThat(site()).isEqualTo(DUPLICATE);

    write("sites/example.yaml", Example.SITE);
    repository.commit();
    write("sites/example.yaml", DUPLICATE);
    Path objects = folder.resolve(".git/objects");
    Files.move(objects, folder.resolve("objects"));
    Files.createDirectory(objects);
    CommandCall call = call("fix --write");
    assertThat(call.err())
        .endsWith(
            "warning: the last commit cannot be read, so any line may be in operation: what is set"
                + " at its units is only changed by a proposed fix\n");
    assertThat(call.out()).contains("would have a fix with --fixes=proposed");
    assertThat(call.code()).isZero();
    assertThat(site()).isEqualTo(DUPLICATE);
  }

  @Test
  void whoeverHasNoReadingsLearnsWhereToGiveThem() {
    assertThat(call("diagnose").out())
        .isEqualTo(
            "No site has readings: enter them under as-found, or give those of one site with"
                + " --asFound\n");
  }

  /** Whoever leaves out the ending must not take it for checked. */
  @ParameterizedTest
  @ValueSource(strings = {"sites/example", "check sites/example", "-- lost.txt"})
  void aFileThatIsNotThereIsNotLeftOut(String arguments) {
    CommandCall call = call(arguments);
    assertThat(call.lastError())
        .startsWith("error: \"")
        .endsWith("\" does not exist, and is not the name of a site: correct the path");
    assertThat(call.code()).isEqualTo(2);
  }

  @Test
  void aRepositoryWithoutACommitKeepsNoFixBack() throws Exception {
    Git.init().setDirectory(folder.toFile()).call().close();
    write("sites/example.yaml", DUPLICATE);
    CommandCall call = call("fix --write");
    assertThat(call.err()).doesNotContain("warning");
    assertThat(site()).isEqualTo(Example.SITE);
  }

  @Test
  void aSafeFixIsOfferedAsThisCommandWritesIt() throws IOException {
    write("sites/example.yaml", DUPLICATE);
    assertThat(call("check").out())
        .contains("1 has a safe fix: goal fix shows it, and writes it with --write\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "fix --write",
        "report --outputDirectory=o",
        "changes --before=sites --outputDirectory=o",
        "draft --list=units.csv --site=oak",
        "diagnose --outputDirectory=o"
      })
  void nothingIsDoneWhileThePolicyHasAnError(String arguments) throws IOException {
    write("sites/example.yaml", DUPLICATE);
    write("units.csv", LIST);
    write("linter.yaml", "format: 1\nrule-set: 1\nruls: {}\n");
    CommandCall call = call(arguments);
    assertThat(call.code()).isEqualTo(1);
    assertThat(call.out()).startsWith("linter.yaml:3:1: error: ");
    assertThat(call.lastError())
        .isEqualTo(
            "error: nothing is done while the policy or the device types have an error: fix that"
                + " first");
    assertThat(files(""))
        .containsExactlyInAnyOrder("linter.yaml", "sites/example.yaml", "units.csv");
    assertThat(site()).isEqualTo(DUPLICATE);
  }

  @Test
  void sheetsAreWritten() throws IOException {
    CommandCall call = call("report --outputDirectory=o --units=us --paper=Letter --slack=5");
    assertThat(call.code()).isZero();
    assertThat(call.err()).contains("Figures are in o/figures.json\nSheets are in o/index.html\n");
    assertThat(files("o")).contains("index.html", "figures.json", "inventory.csv");
    assertThat(files("").filter(file -> !file.startsWith("o/")))
        .containsExactly("sites/example.yaml");
  }

  /** What was seen on site is nowhere else until it is in the record. */
  @ParameterizedTest
  @ValueSource(strings = {"found", "by", "date", "remark", "another column", "another encoding"})
  void aListThatIsFilledInIsNotReplaced(String where) throws IOException {
    assertThat(call("report --outputDirectory=o").err()).doesNotContain("warning: o/");
    Path list = folder.resolve("o/example-visit.csv");
    String blank = Files.readString(list);
    assertThat(blank).startsWith("\uFEFFwhat,where,acceptable,found,by,date,remark\r\n");
    int column = List.of("found", "by", "date", "remark").indexOf(where);
    byte[] filled =
        (column >= 0
                ? blank.replaceFirst(
                    ",,,,\r\n$", ",".repeat(column + 1) + "x" + ",".repeat(3 - column) + "\r\n")
                : blank.replaceFirst("remark", "remark,weather"))
            .getBytes(where.endsWith("encoding") ? ISO_8859_1 : UTF_8);
    Files.write(list, filled);
    CommandCall again = call("report --bundle --outputDirectory=o");
    assertThat(again.code()).isZero();
    assertThat(again.err())
        .contains(
            "\nwarning: o/example-visit.csv may be filled in, and was not replaced: add it to the"
                + " record with goal draft and --visit=o/example-visit.csv, then delete it\n");
    assertThat(list).hasBinaryContent(filled);
    Files.writeString(list, blank.replace("\r\n", "\n").replace(",", ";"));
    assertThat(call("report --outputDirectory=o").err()).doesNotContain("warning: o/");
    assertThat(list).hasContent(blank);
  }

  @Test
  void changesAreShownAndWrittenOnlyWhereAFolderIsGiven() throws IOException {
    write("before/example.yaml", Example.with("address: 3", "address: 4"));
    CommandCall call = call("changes --before=before");
    assertThat(call.code()).isZero();
    assertThat(call.out()).startsWith("Changes since before\n");
    assertThat(files("")).containsExactlyInAnyOrder("before/example.yaml", "sites/example.yaml");
    assertThat(call("changes --before=before --outputDirectory=o").err())
        .contains("Changes are in o\n");
    assertThat(files("o")).containsExactlyInAnyOrder("changes.md", "changes.json");
  }

  /** A plan that leads to a faulty line says so before the order of the work. */
  @Test
  void changesShowWhatIsWrongInTheLaterState() throws IOException {
    write("before/example.yaml", Example.SITE);
    assertThat(call("changes --before=before").out()).doesNotContain("STOP");
    write("sites/example.yaml", Example.with("termination: none", "termination: 120 ohm"));
    String found = "termination.mid-line";
    assertThat(call("changes --before=before --outputDirectory=o").out())
        .containsSubsequence(
            "Results of the later state",
            "STOP: the later state has 1 error, and work by this file leads to a line with it.",
            "- sites/example.yaml:",
            "[" + found + "]",
            "Order of the field work");
    assertThat(Files.readString(folder.resolve("o/changes.md"))).contains("STOP", found);
    assertThat(Files.readString(folder.resolve("o/changes.json")))
        .contains("\"rule\" : \"" + found + "\"", "\"level\" : \"error\"");
  }

  @Test
  void aListBecomesASiteAndChangesOneOnlyWhereThatIsAskedFor() throws IOException {
    write("units.csv", LIST);
    CommandCall made = CommandCall.of(folder, "draft", "--list=units.csv", "--site=oak");
    assertThat(made.code()).isZero();
    assertThat(made.err()).contains("Wrote sites/oak.yaml: go through the lines marked");
    String first = Files.readString(folder.resolve("sites/oak.yaml"));
    write("units.csv", LIST.replace("42", "50"));
    CommandCall shown = call("draft --list=units.csv --site=oak");
    assertThat(shown.out()).contains("\n-    cable-to-next: 42 m\n+    cable-to-next: 50 m\n");
    assertThat(shown.err()).contains("Nothing is written. To write the changes: --write\n");
    assertThat(folder.resolve("sites/oak.yaml")).hasContent(first);
    assertThat(call("draft --list=units.csv --site=oak --write").err())
        .contains("Wrote sites/oak.yaml\n");
    assertThat(folder.resolve("sites/oak.yaml"))
        .hasContent(first.replace("cable-to-next: 42 m", "cable-to-next: 50 m"));
  }

  /** What is said of a new site is no change of one that is there, and nobody may think so. */
  @Test
  void whatIsForANewSiteIsNotUsedForAnother() throws IOException {
    write("units.csv", LIST);
    CommandCall made = call("draft --list=units.csv --site=oak --baud=19200 --shielded=false");
    assertThat(made.err()).doesNotContain("only for a new site");
    String first = Files.readString(folder.resolve("sites/oak.yaml"));
    assertThat(first).contains("baud: 19200").contains("shielded: false");
    CommandCall again = call("draft --list=units.csv --site=oak --baud=9600 --title=Oak --write");
    assertThat(again.code()).isZero();
    assertThat(again.err())
        .contains(
            "warning: Not used, because sites/oak.yaml exists: --title, --baud (only for a new"
                + " site)\n");
    assertThat(folder.resolve("sites/oak.yaml")).hasContent(first);
  }

  @Test
  void aFaultyListIsOneAsAFaultySiteIs() throws IOException {
    write("units.csv", "name,cabel-to-next (m)\nPropagation,42\n");
    CommandCall call = call("draft --list=units.csv --site=oak");
    assertThat(call.code()).isEqualTo(1);
    assertThat(call.out()).startsWith("units.csv:1:6: error: ");
    assertThat(call.lastError()).matches("error: the list of units has .+, and nothing is written");
    assertThat(folder.resolve("sites/oak.yaml")).doesNotExist();
  }

  /** Lines of files elsewhere may be private; what to do about them is not. */
  @Test
  void aListElsewhereShowsNoLineAndSaysWhatToDo() throws IOException {
    write("lists/units.csv", "name,cable-to-next,remark\nPropagation,42,private\nNorth,,\n");
    Path work = Files.createDirectory(folder.resolve("work"));
    CommandCall call =
        CommandCall.of(work, "draft", "--list=../lists/units.csv", "--site=oak", "--sites=sites");
    assertThat(call.code()).isEqualTo(1);
    assertThat(call.out())
        .contains("the length \"42\" has no unit: ", "; write a number with its unit")
        .doesNotContain("private");
  }

  @Test
  void whatAVisitFoundIsAdded() throws IOException {
    write(
        "visit.csv",
        """
        what,where,acceptable,found,by,date,remark
        site,example,,,,,
        outdoor readings seen (yes),Seedling North,,yes,R.O.,14 March 2026,
        """);
    CommandCall shown = call("draft --visit=visit.csv");
    assertThat(shown.code()).isZero();
    assertThat(shown.out()).contains("\n+commissioning:\n+  date: 2026-03-14\n");
    assertThat(site()).isEqualTo(Example.SITE);
    assertThat(call("draft --visit=visit.csv --write").code()).isZero();
    assertThat(site()).startsWith(Example.SITE + "commissioning:\n  date: 2026-03-14\n");
    assertThat(call("draft --visit=visit.csv --site=lost").lastError())
        .isEqualTo(
            "error: there is no sites/lost.yaml: name the file of the site with --output=<file>");
    assertThat(
            call("draft --visit=visit.csv --site=lost --output=sites/example.yaml --write")
                .lastError())
        .isEqualTo(
            "error: sites/example.yaml is the site example, and not lost: use --site=example, or"
                + " name another file with --output");
  }

  /** A hook may name nothing but files of other kinds. */
  @Test
  void thereMayBeNothingToDiagnose() throws IOException {
    write("notes.txt", "");
    CommandCall call = call("diagnose notes.txt --outputDirectory=o");
    assertThat(call.code()).isZero();
    assertThat(call.out())
        .isEqualTo(
            "No site has readings: enter them under as-found, or give those of one site with"
                + " --asFound\n");
    assertThat(call.err())
        .isEqualTo("notes.txt is not a site: left out\nThe diagnosis is in o/diagnosis.json\n");
    assertThat(folder.resolve("o/diagnosis.json")).isNotEmptyFile();
  }

  /** Readings that are given and found nowhere are not the same as none. */
  @Test
  void aReadingAtAnUnknownPlaceIsNotLost() {
    CommandCall call =
        CommandCall.of(folder, "diagnose", "--asFound={at: Propagtion, pair-resistance: 61 ohm}");
    assertThat(call.code()).isZero();
    assertThat(call.out())
        .contains("\n  There is no reading of this segment.\n")
        .endsWith(
            "\n  Not used: \"Propagtion\" has no such terminals: correct its name, or the side.\n");
  }

  @ParameterizedTest
  @CsvSource({
    "UTF-16LE, what, is not UTF-8",
    "UTF-8, site, 'no heading of the first row is \"what\"'",
    "UTF-8, '\"what', is never closed"
  })
  void aListWithoutASiteThatCannotBeReadSaysWhy(String encoding, String what, String why)
      throws IOException {
    String list =
        what + ",where,acceptable,found,by,date,remark\nsite,example,,,,,\n\u00E9,,,,,,\n";
    Files.write(folder.resolve("visit.csv"), list.getBytes(Charset.forName(encoding)));
    CommandCall call = call("draft --visit=visit.csv");
    assertThat(call.code()).isEqualTo(1);
    assertThat(call.out()).startsWith("visit.csv:").contains(why);
    assertThat(call.lastError()).startsWith("error: the list from the visit has ");
    write("visit.csv", "what,where,acceptable,found,by,date,remark\n");
    assertThat(call("draft --visit=visit.csv"))
        .returns(2, CommandCall::code)
        .returns(
            "error: visit.csv does not say which site it is of: name it with --site=<id>",
            CommandCall::lastError);
  }

  @Test
  void rulesAreListedOrOneIsShown() {
    CommandCall all = call("rules");
    assertThat(all.code()).isZero();
    assertThat(all.out()).contains("\naddress.gap                 error    The addresses are ");
    assertThat(call("rules address.gap"))
        .isEqualTo(call("rules --rule=address.gap"))
        .isEqualTo(call("--rule=address.gap"));
  }

  @Test
  void schemasReplaceOnlySchemas() throws IOException {
    assertThat(call("schema --outputDirectory=s").err())
        .isEqualTo(
            """
            Wrote s/site.schema.json
            Wrote s/device-types.schema.json
            Wrote s/policy.schema.json
            """);
    String schema = Files.readString(folder.resolve("s/site.schema.json"), UTF_8);
    write("s/site.schema.json", schema.replace("one line", "a line"));
    assertThat(call("schema --outputDirectory=s").code()).isZero();
    assertThat(folder.resolve("s/site.schema.json")).hasContent(schema);
    write("s/policy.schema.json", "{}");
    write("s/site.schema.json", schema.replace("one line", "a line"));
    CommandCall refused = call("schema --outputDirectory=s");
    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err())
        .isEqualTo(
            "error: s/policy.schema.json exists, but is not a schema of this linter, and nothing is"
                + " written: move it, or name another folder\n");
    assertThat(folder.resolve("s/policy.schema.json")).hasContent("{}");
    assertThat(folder.resolve("s/site.schema.json"))
        .hasContent(schema.replace("one line", "a line"));
  }
}
