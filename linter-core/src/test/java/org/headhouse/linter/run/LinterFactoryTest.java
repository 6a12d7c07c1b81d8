package org.headhouse.linter.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LinterFactoryTest {
  @TempDir Path folder;

  /** A rule that a jar might offer. */
  public static class OwnRule implements SiteRule {
    private static final RuleDescriptor DESCRIPTOR =
        RuleDescriptor.of("own.rule", "A requirement of one firm.", Level.NOTE);

    @Override
    public RuleDescriptor descriptor() {
      return DESCRIPTOR;
    }

    @Override
    public void check(Site site, RuleContext context) {}
  }

  /** A rule whose id is taken. */
  public static final class SecondRule extends OwnRule {
    @Override
    public RuleDescriptor descriptor() {
      return RuleDescriptor.of("address.gap", "Another requirement.", Level.NOTE);
    }
  }

  private static SiteLinter build(SiteLinter.Builder builder, ClassLoader jars) throws UserError {
    return LinterFactory.build(builder, jars, "among the plugin's dependencies", "make it");
  }

  private SiteLinter withRule(String className) throws Exception {
    Path services = folder.resolve("META-INF/services");
    Files.createDirectories(services);
    Files.writeString(services.resolve(Rule.class.getName()), className + "\n");
    URL[] jars = {folder.toUri().toURL()};
    try (URLClassLoader loader =
        new URLClassLoader(jars, LinterFactoryTest.class.getClassLoader())) {
      return build(SiteLinter.builder(), loader);
    }
  }

  @Test
  void rulesOfOtherJarsAreKnown() throws Exception {
    assertThat(withRule(OwnRule.class.getName()).rules())
        .extracting(RuleDescriptor::id)
        .contains("address.gap", "own.rule");
  }

  @Test
  void aRuleThatCannotBeLoadedIsNamed() {
    assertThatThrownBy(() -> withRule("org.example.Missing"))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith("a rule of another jar cannot be used: ")
        .hasMessageContaining("org.example.Missing")
        .hasMessageEndingWith(
            "; rules of other jars are looked for among the plugin's dependencies");
  }

  @Test
  void aRuleWhoseIdIsTakenIsNamed() {
    assertThatThrownBy(() -> withRule(SecondRule.class.getName()))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith("two rules have the id address.gap")
        .hasMessageContaining(SecondRule.class.getName());
  }

  @Test
  void settingsThatCannotBeReadAreNamed() {
    Path missing = folder.resolve("linter.yaml");
    assertThatThrownBy(
            () ->
                build(
                    SiteLinter.builder().policy(missing), LinterFactoryTest.class.getClassLoader()))
        .isInstanceOf(UserError.class)
        .hasMessage(
            "the policy, the device types or the baseline cannot be read: "
                + missing
                + ": it does not exist");
  }
}
