package org.headhouse.linter.maven;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.FileUpdate;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.run.EnumParameter;
import org.headhouse.linter.run.ConsoleReport;

/**
 * Mends what can be mended in the sites of a repository, and shows the difference. Files are
 * written only where linter.write is set. Fails and mends nothing while the policy or the device
 * types have an error.
 */
@Mojo(name = "fix", requiresProject = false, threadSafe = true)
public final class FixMojo extends SitesMojo {
  /**
   * Which fixes: safe for those that follow from the rules alone, proposed for those that need a
   * look as well.
   */
  @Parameter(property = "linter.fixes", defaultValue = "safe")
  private String fixes = "safe";

  /** Whether the files are written; without it, the goal only shows what would change. */
  @Parameter(property = "linter.write", defaultValue = "false")
  private boolean write;

  @Override
  void checkParameters() throws UserError {
    kind();
  }

  private FixKind kind() throws UserError {
    return EnumParameter.of("linter.fixes", fixes, FixKind.values(), FixKind::word);
  }

  @Override
  void run(SiteLinter linter, List<SiteInput> inputs)
      throws MojoExecutionException, MojoFailureException, UserError {
    ValidSettingsGuard.require(linter, console());
    FixKind kind = kind();
    FixLog told = new FixLog(kind);
    Writing writing = new Writing();
    List<Notification> troubles =
        linter.fix(
            inputs.stream(),
            kind,
            site -> {
              told.lines(site).forEach(getLog()::info);
              if (write && site.isChanged()) {
                writing.write(site);
              }
            });
    new ConsoleReport(console(), Level.NOTE).print(troubles);
    told.summary(write).forEach(getLog()::info);
    writing.failOnTroubles();
    BuildOutcome.ofTroubles(troubles);
  }

  /** Writes files; one that cannot be written does not keep the others from it. */
  private final class Writing {
    private final Map<String, Path> files = files();
    private final Set<Path> written = new HashSet<>();
    private final List<UserError> troubles = new ArrayList<>();

    void write(FixedSite site) {
      Path file = Objects.requireNonNull(files.get(site.path()), site.path());
      try {
        if (written.add(file.toRealPath())) {
          FileUpdate.write(file, site.before(), site.after());
        }
      } catch (IOException gone) {
        troubles.add(UserError.of(site.path() + " cannot be written", gone));
      } catch (UserError trouble) {
        troubles.add(trouble);
      }
    }

    void failOnTroubles() throws UserError {
      if (!troubles.isEmpty()) {
        throw new UserError(
            troubles.stream().map(Throwable::getMessage).collect(Collectors.joining("\n")),
            troubles.get(0));
      }
    }
  }
}
