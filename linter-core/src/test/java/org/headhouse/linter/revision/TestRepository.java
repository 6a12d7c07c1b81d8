package org.headhouse.linter.revision;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;

/** A repository of git in a folder, without settings of the user or the machine. */
public record TestRepository(Path work) {
  public TestRepository {
    HermeticSystemReader.use();
  }

  /** Writes a file into the work tree. */
  public Path write(String file, String text) throws IOException {
    Path path = work.resolve(file);
    Files.createDirectories(path.getParent());
    return Files.writeString(path, text);
  }

  /** Commits all that is there. */
  public String commit() throws GitAPIException {
    try (Git git = Git.init().setDirectory(work.toFile()).call()) {
      git.add().addFilepattern(".").call();
      return git.commit()
          .setMessage("A state")
          .setAuthor("R.O.", "r.o@example.org")
          .setCommitter("R.O.", "r.o@example.org")
          .setSign(false)
          .call()
          .getId()
          .getName();
    }
  }
}
