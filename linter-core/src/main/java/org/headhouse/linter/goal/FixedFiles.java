package org.headhouse.linter.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.files.FileUpdate;
import org.headhouse.linter.files.StaleParts;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.FixedSite;
import org.headhouse.linter.run.SiteRun;

/** Writes fixed sites into their files; one that cannot be written does not stop the others. */
final class FixedFiles {
  private final Map<String, Path> files = new HashMap<>();
  private final Set<Path> written = new HashSet<>();
  private final Set<Path> swept = new HashSet<>();
  private final List<UserError> errors = new ArrayList<>();

  /** The names of sites alone may not lead to their files. */
  FixedFiles(SiteRun run) {
    run.found().files().forEach(file -> files.put(run.base().shown(file.path()), file.path()));
  }

  void write(FixedSite site) {
    Path file = Objects.requireNonNull(files.get(site.path()), site.path());
    try {
      Path real = file.toRealPath();
      if (written.add(real)) {
        Path folder = real.getParent();
        if (folder != null && swept.add(folder)) {
          StaleParts.sweep(folder);
        }
        FileUpdate.write(file, site.before(), site.after());
      }
    } catch (IOException gone) {
      errors.add(UserError.of(site.path() + " cannot be written", gone));
    } catch (UserError error) {
      errors.add(error);
    }
  }

  /** Reports all files that could not be written. */
  void failOnErrors() throws UserError {
    if (!errors.isEmpty()) {
      throw new UserError(
          errors.stream().map(Throwable::getMessage).collect(Collectors.joining("\n")),
          errors.get(0));
    }
  }
}
