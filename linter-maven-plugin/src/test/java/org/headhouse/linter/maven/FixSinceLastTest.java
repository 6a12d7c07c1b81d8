package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.jgit.api.Git;
import org.headhouse.linter.revision.HermeticSystemReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the last commit says of a line counts, also where nobody asks for it. */
class FixSinceLastTest {
  private static final String OPEN = "# look: whether the line works\n";
  private static final String SAFE = "safe: Number the units";
  private static final String PROPOSED = "1 would have a fix with -Dlinter.fixes=proposed";

  @TempDir private Path folder = Path.of("");

  @BeforeEach
  void makeFolder() throws Exception {
    Files.createDirectory(folder.resolve("sites"));
  }

  private void site(String text) throws Exception {
    Files.writeString(folder.resolve("sites/elm-row.yaml"), text);
  }

  private void commit() throws Exception {
    HermeticSystemReader.use();
    try (Git git = Git.init().setDirectory(folder.toFile()).call()) {
      git.add().addFilepattern(".").call();
      git.commit()
          .setMessage("as it was")
          .setAuthor("R.O.", "r.o@example.org")
          .setCommitter("R.O.", "r.o@example.org")
          .setSign(false)
          .call();
    }
  }

  private List<String> fixed() throws Exception {
    GoalRun run = new GoalRun(new FixMojo(), folder);
    run.execute();
    return run.lines();
  }

  @Test
  void aCommentThatWasDeletedSinceCounts() throws Exception {
    site(OPEN + ElmRow.SITE);
    commit();
    site(ElmRow.SITE);
    assertThat(fixed())
        .noneMatch(line -> line.contains(SAFE))
        .anyMatch(one -> one.contains(PROPOSED));
  }

  @Test
  void withoutGitTheFileIsAllThereIs() throws Exception {
    site(ElmRow.SITE);
    assertThat(fixed()).anyMatch(line -> line.contains(SAFE));
  }

  /**
   * A repository without a commit has nothing to compare with. In one that is damaged, any line may
   * be in operation: that is said, and no reason to fail.
   */
  @Test
  void whatCannotBeReadMakesNoFixSafe() throws Exception {
    site(ElmRow.SITE);
    Git.init().setDirectory(folder.toFile()).call().close();
    assertThat(fixed()).anyMatch(line -> line.contains(SAFE));
    Files.writeString(folder.resolve(".git/config"), "[core\n");
    assertThat(fixed())
        .noneMatch(line -> line.contains(SAFE))
        .anyMatch(one -> one.contains(PROPOSED))
        .anyMatch(one -> one.startsWith("warn the last commit cannot be read"));
  }

  /** Why a fix is only proposed is said. */
  @Test
  void theCommentIsNamed() throws Exception {
    site(OPEN + ElmRow.SITE);
    assertThat(fixed())
        .anyMatch(one -> one.contains(PROPOSED))
        .anyMatch(one -> one.contains("While a comment that begins with look: is left"));
    site(ElmRow.SITE);
    assertThat(fixed()).noneMatch(one -> one.contains("look:"));
  }
}
