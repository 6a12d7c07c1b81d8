package org.headhouse.linter.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.command.CommandProcess.Ended;
import org.headhouse.linter.revision.TestRepository;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The calls that the page on the command shows, in a shell, with the jar. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class CommandPageIT {
  @TempDir private Path folder;

  private static String shown(String example) throws IOException {
    Matcher block =
        Pattern.compile("<!-- example: " + example + " -->\n```sh\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(Path.of("docs/command.md")));
    assertThat(block.find()).as(example).isTrue();
    return block.group(1);
  }

  private Ended bash(String script) throws Exception {
    return CommandProcess.run(
        folder,
        Map.of("LINTER_JAR", CommandProcess.JAR.toString()),
        List.of("bash", "-c", shown("function") + script));
  }

  @Test
  void theGoalsDoWhatThePageSays() throws Exception {
    TestRepository repository = new TestRepository(folder);
    repository.write("sites/example.yaml", Example.SITE);
    repository.commit();
    repository.write("units.csv", "name,cable-to-next (m)\nPropagation,42\nFernery,\n");
    repository.write(
        "visit.csv",
        """
        what,where,acceptable,found,by,date,remark
        site,elm-row,,,,,
        outdoor readings seen (yes),Fernery,,yes,R.O.,14 March 2026,
        """);
    List<String> lines = shown("goals").lines().toList();
    List<String> goals = new ArrayList<>();
    for (String line : lines) {
      Ended ended = bash(line);
      assertThat(ended.code()).as(line + ": " + ended).isZero();
      goals.add(line.replaceFirst("linter (\\S+).*", "$1"));
    }
    assertThat(goals)
        .containsAll(
            Stream.of(Goal.values())
                .filter(goal -> goal != Goal.LSP && goal != Goal.COMPLETION)
                .map(Goal::word)
                .toList());
    assertThat(folder.resolve("sheets/index.html")).exists();
    assertThat(folder.resolve("schemas/site.schema.json")).exists();
    assertThat(folder.resolve("sites/elm-row.yaml")).content().doesNotContain("commissioning:");
  }

  @Test
  void theFunctionIsCompleted() throws Exception {
    Ended ended =
        bash("COMP_WORDS=(linter rules address.g) COMP_CWORD=2; _linter_complete; echo $COMPREPLY");
    assertThat(ended).isEqualTo(new Ended(0, "address.gap\n", ""));
  }
}
