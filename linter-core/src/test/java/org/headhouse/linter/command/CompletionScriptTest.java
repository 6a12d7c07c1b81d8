package org.headhouse.linter.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.command.CommandProcess.Ended;
import org.headhouse.linter.rules.BuiltInRules;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A real bash completes what the command takes. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class CompletionScriptTest {
  /** What of a value is no word from a list, so that files are completed, or nothing. */
  private static final List<String> FREE =
      List.of(
          "",
          "<folder>",
          "<file>",
          "<patterns>",
          "<revision>",
          "<readings>",
          "<number>",
          "<text>",
          "<gauge>",
          "<value>",
          "<percent>");

  @TempDir private Path folder;

  @BeforeEach
  void script() throws Exception {
    Files.writeString(folder.resolve("script"), CommandCall.of(folder, "completion").out());
    boolean installed =
        new ProcessBuilder("sh", "-c", "command -v bash >/dev/null").start().waitFor() == 0;
    if (System.getenv("CI") == null) {
      assumeThat(installed).as("bash is on the path, or the script is not tried").isTrue();
    }
  }

  /** Completes the last of some words, as bash takes a line apart. */
  private List<String> completed(String... words) throws Exception {
    List<String> arguments = new ArrayList<>(List.of("linter"));
    arguments.addAll(List.of(words));
    Ended ended =
        CommandProcess.shell(
            folder,
            """
            set -u
            . ./script
            COMP_WORDS=("$@") COMP_CWORD=$(($# - 1))
            _linter_complete
            printf '%s\\n' "${COMPREPLY[@]+"${COMPREPLY[@]}"}"
            """,
            arguments.toArray(String[]::new));
    assertThat(ended.err()).isEmpty();
    assertThat(ended.code()).isZero();
    return ended.out().lines().filter(line -> !line.isEmpty()).toList();
  }

  private static List<String> forms(Goal goal) {
    return goal.options().stream()
        .map(option -> "--" + option.word() + (option.takesValue() ? "=" : ""))
        .toList();
  }

  @Test
  void theFirstWordIsAGoalOrAnOptionOfCheck() throws Exception {
    assertThat(completed(""))
        .containsExactlyElementsOf(Stream.of(Goal.values()).map(Goal::word).toList());
    assertThat(completed("f")).containsExactly("fix");
    assertThat(completed("sites/e")).isEmpty();
    assertThat(completed("-")).containsExactlyElementsOf(forms(Goal.CHECK));
  }

  @ParameterizedTest
  @EnumSource(Goal.class)
  void eachGoalHasItsOptions(Goal goal) throws Exception {
    assertThat(completed(goal.word(), "--")).containsExactlyElementsOf(forms(goal));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          fix --wr                  | --write
          fix --fixes = p           | proposed
          fix --fixes =             | safe proposed
          fix --fixes p             | proposed
          fix --fixes=p             | --fixes=proposed
          --failLevel = no          | note none
          --units = u               | us
          rules address.g           | address.gap
          rules --rule = address.g  | address.gap
          fix --sites = s           | ''
          fix --policy =            | ''
          fix address.g             | ''
          """)
  void valuesAreCompleted(String line, String expected) throws Exception {
    assertThat(completed(line.split(" ")))
        .isEqualTo(Arrays.stream(expected.split(" ")).filter(one -> !one.isEmpty()).toList());
  }

  /** What is offered is what is taken; the message of a wrong word lists the right ones. */
  @ParameterizedTest
  @EnumSource(CommandOption.class)
  void eachWordThatIsOfferedIsTaken(CommandOption option) throws Exception {
    List<String> offered = completed("--" + option.word(), "=", "");
    if (FREE.contains(option.value()) || option == CommandOption.SITE) {
      assertThat(offered).isEmpty();
    } else if (option == CommandOption.RULE) {
      assertThat(offered).contains("address.gap").doesNotContain("adress.gap");
      assertThat(offered)
          .containsAll(
              BuiltInRules.all().stream().map(rule -> rule.descriptor().id()).distinct().toList());
    } else {
      assertThat(offered).isNotEmpty();
      assertThat(message(option)).endsWith(offered.stream().collect(Collectors.joining(", ")));
    }
  }

  private String message(CommandOption option) throws Exception {
    Files.createDirectories(folder.resolve("sites"));
    String goal = option.goals().get(0);
    List<String> arguments = new ArrayList<>();
    arguments.add(goal);
    arguments.add(option.form("qqqqqqqqqq"));
    if (goal.equals("report")) {
      arguments.add("--outputDirectory=o");
    } else if (goal.equals("draft")) {
      arguments.addAll(List.of("--list=u", "--site=o"));
    }
    return CommandCall.of(folder, arguments.toArray(String[]::new)).lastError();
  }

  @Test
  void itIsForTheNameThatIsGiven() {
    assertThat(CommandCall.of(folder, "completion", "green-house.x").out())
        .contains("_green_house_x_complete() {")
        .endsWith("complete -o default -F _green_house_x_complete green-house.x\n");
  }
}
