package org.headhouse.linter.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Rules of other jars, as {@link java.util.ServiceLoader} finds them. */
class RuleLoaderTest {
  @TempDir private Path jar;

  /** A rule of the house: titles are wanted. */
  public static class Titled implements SiteRule {
    @Override
    public RuleDescriptor descriptor() {
      return RuleDescriptor.of("house.title", "A site has a title.", Level.NOTE);
    }

    @Override
    public void check(Site site, RuleContext context) {
      if (site.title().isMissing()) {
        context.report(site.id().place(), new Message("no title", "people ask", "add a title"));
      }
    }
  }

  /** Has the id of a built-in rule. */
  public static final class Doubled extends Titled {
    @Override
    public RuleDescriptor descriptor() {
      return RuleDescriptor.of("address.gap", "It has another's id.", Level.NOTE);
    }
  }

  /** Has a malformed id, made when the class is loaded. */
  public static final class Malformed extends Titled {
    private static final RuleDescriptor DESCRIPTOR =
        RuleDescriptor.of("Title Wanted", "Its id is malformed.", Level.NOTE);

    @Override
    public RuleDescriptor descriptor() {
      return DESCRIPTOR;
    }
  }

  /** Has a malformed id, made when it is asked for. */
  public static final class MalformedLater extends Titled {
    @Override
    public RuleDescriptor descriptor() {
      return RuleDescriptor.of("title", "Its id is malformed.", Level.NOTE);
    }
  }

  /** Tells nothing of itself. */
  public static final class Silent extends Titled {
    @Override
    @SuppressWarnings("NullAway") // as a rule of a project without null checks may do
    public RuleDescriptor descriptor() {
      return null;
    }
  }

  /** Cannot be made. */
  public static final class Unmakeable extends Titled {
    public Unmakeable() {
      throw new IllegalStateException("no licence file");
    }
  }

  /** Has no constructor that anybody may call. */
  public static final class Closed extends Titled {
    private Closed() {}
  }

  /** Is no rule. */
  public static final class NoRule {}

  private SiteLinter linter(String... classes) throws IOException {
    Path services = jar.resolve("META-INF/services");
    Files.createDirectories(services);
    Files.write(services.resolve(Rule.class.getName()), List.of(classes));
    URL[] urls = {jar.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(urls, getClass().getClassLoader())) {
      return SiteLinter.builder().rulesFrom(loader).build();
    }
  }

  @Test
  void areCheckedLikeTheBuiltInOnes() throws IOException {
    SiteLinter linter = linter("# the rules of the house", Titled.class.getName());
    assertThat(linter.rules())
        .extracting(RuleDescriptor::id)
        .contains("address.gap", "house.title");
    assertThat(linter.checkText("example.yaml", Example.SITE).results())
        .extracting(Result::rule)
        .containsExactly("house.title");
    assertThat(linter.checkText("example.yaml", Example.SITE + "title: Example\n").results())
        .isEmpty();
  }

  @Test
  void areNotTakenUnasked() throws IOException {
    assertThat(Checks.linter().rules())
        .extracting(RuleDescriptor::id)
        .doesNotContain("house.title");
    assertThat(linter("").rules()).isEqualTo(Checks.linter().rules());
  }

  private static Arguments wrong(String rule, String... contained) {
    return Arguments.of(rule, List.of(contained));
  }

  static Stream<Arguments> faults() {
    return Stream.of(
        wrong(Doubled.class.getName(), "two rules have the id address.gap", "rename or remove"),
        wrong(Malformed.class.getName(), "\"Title Wanted\" is no id of a rule"),
        wrong(MalformedLater.class.getName(), "\"title\" is no id of a rule"),
        wrong(Silent.class.getName(), "has no descriptor"),
        wrong(Unmakeable.class.getName(), "could not be instantiated", "no licence file"),
        wrong(Closed.class.getName(), "public"),
        wrong(NoRule.class.getName(), "not a subtype"),
        wrong("org.example.Missing", "not found"),
        wrong("7 no name of a class", "META-INF/services"));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void aRuleThatCannotBeUsedIsNamed(String rule, List<String> contained) {
    assertThatThrownBy(() -> linter(rule))
        .isInstanceOf(IllegalArgumentException.class)
        .message()
        .contains(contained)
        .contains(rule.startsWith("7") ? "" : rule);
  }

  @Test
  void twoJarsCannotOfferOneRule() {
    assertThatThrownBy(() -> linter(Titled.class.getName(), SecondTitled.class.getName()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two rules have the id house.title")
        .hasMessageContaining(Titled.class.getName() + " and " + SecondTitled.class.getName());
  }

  /** Another rule of the same id. */
  public static final class SecondTitled extends Titled {}
}
