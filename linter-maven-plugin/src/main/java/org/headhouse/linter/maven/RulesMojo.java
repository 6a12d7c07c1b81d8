package org.headhouse.linter.maven;

import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.source.Nearest;
import org.jspecify.annotations.Nullable;

/** Lists the rules, or shows the page of one. */
@Mojo(name = "rules", requiresProject = false, threadSafe = true)
public final class RulesMojo extends LinterMojo {
  /** The id of the rule to show; without it, all are listed. */
  @Parameter(property = "linter.rule")
  private @Nullable String rule;

  @Override
  void work() throws MojoExecutionException, UserError {
    checkProperties();
    SiteLinter linter = PluginLinterFactory.build(SiteLinter.builder());
    if (rule == null) {
      linter.rules().forEach(one -> getLog().info(line(one)));
    } else {
      page(rule, linter);
    }
  }

  private static String line(RuleDescriptor one) {
    return pad(one.id(), 28) + pad(one.level().word(), 9) + one.requirement();
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }

  private void page(String id, SiteLinter linter) throws MojoExecutionException {
    List<String> ids = linter.rules().stream().map(RuleDescriptor::id).toList();
    if (!ids.contains(id)) {
      throw new MojoExecutionException(
          "there is no rule \""
              + id
              + "\": write "
              + Nearest.to(id, ids).orElse("one of " + String.join(", ", ids)));
    }
    String text = linter.page(id).orElse("The rule " + id + " has no page.");
    text.lines().forEach(line -> getLog().info(line));
  }
}
