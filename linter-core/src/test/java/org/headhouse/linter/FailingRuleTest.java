package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RepositoryRule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A rule that fails is named, and everything else goes on. */
class FailingRuleTest {
  private static final RuleDescriptor FAILING =
      RuleDescriptor.of("house.failing", "It fails.", Level.ERROR);

  /** Reports something, then fails, in the second of the sites. */
  private record Failing(Supplier<? extends Throwable> failure) implements SiteRule {
    @Override
    public RuleDescriptor descriptor() {
      return FAILING;
    }

    @Override
    public void check(Site site, RuleContext context) {
      if (site.id().is("second")) {
        context.report(site.id().place(), new Message("half", "of", "it"));
        FailingRuleTest.<RuntimeException>raise(failure.get());
      }
    }
  }

  /** As languages without checked exceptions throw whatever they like. */
  @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"})
  private static <T extends Throwable> void raise(Throwable failure) throws T {
    throw (T) failure;
  }

  static List<Arguments> failures() {
    return List.of(
        Arguments.of((Supplier<Throwable>) () -> new IllegalStateException("broken"), "broken"),
        Arguments.of((Supplier<Throwable>) () -> new NullPointerException("nothing"), "nothing"),
        Arguments.of((Supplier<Throwable>) FailingRuleTest::overflow, "StackOverflowError"),
        Arguments.of(
            (Supplier<Throwable>) () -> new NoClassDefFoundError("some/Missing"), "some/Missing"),
        Arguments.of((Supplier<Throwable>) () -> new NoSuchMethodError("gone"), "gone"),
        Arguments.of((Supplier<Throwable>) () -> new AssertionError("never"), "never"),
        Arguments.of((Supplier<Throwable>) () -> new IOException("a checked one"), "checked"),
        Arguments.of((Supplier<Throwable>) Speechless::new, "Speechless"),
        Arguments.of(
            (Supplier<Throwable>) () -> new IllegalStateException("two\nlines"), "two lines"));
  }

  /** Fails once more when it is asked what is wrong. */
  private static final class Speechless extends IllegalStateException {
    private static final long serialVersionUID = 1;

    @Override
    public String getMessage() {
      throw new IllegalStateException("nor this");
    }
  }

  private static Throwable overflow() {
    return new IllegalStateException("no overflow at depth " + deeper(0));
  }

  private static int deeper(int depth) {
    return depth == Integer.MAX_VALUE ? depth : 1 + deeper(depth + 1);
  }

  private static Stream<SiteInput> threeSites() {
    String gap = Example.with("address: 3", "address: 4");
    return Stream.of("first", "second", "third")
        .map(id -> SiteInput.text(id + ".yaml", gap.replace("site: example", "site: " + id)));
  }

  @ParameterizedTest
  @MethodSource("failures")
  void isNamedWithItsFile(Supplier<Throwable> failure, String text) throws IOException {
    for (int threads : new int[] {1, 2}) {
      CheckReport report =
          SiteLinter.builder()
              .rule(new Failing(failure))
              .threads(threads)
              .build()
              .check(threeSites());
      assertThat(report.results())
          .extracting(Result::rule)
          .containsExactly("address.gap", "address.gap", "address.gap");
      assertThat(report.notifications())
          .singleElement()
          .satisfies(
              one -> {
                assertThat(one.level()).isEqualTo(Level.ERROR);
                assertThat(one.file()).isEqualTo("second.yaml");
                assertThat(one.rule()).isEqualTo("house.failing");
                assertThat(one.text()).startsWith("the rule house.failing failed: ").contains(text);
              });
    }
  }

  @Test
  void aRuleCannotSpeakForAnother() throws IOException {
    SiteRule impostor =
        new SiteRule() {
          @Override
          public RuleDescriptor descriptor() {
            return FAILING;
          }

          @Override
          public void check(Site site, RuleContext context) {
            context.report(
                Finding.of("no.such", site.id().place(), new Message("a fact", "why", "do")));
          }
        };
    CheckReport report =
        SiteLinter.builder().rule(impostor).build().checkText("example.yaml", Example.SITE);
    assertThat(report.results()).isEmpty();
    assertThat(report.notifications())
        .extracting(Notification::text)
        .containsExactly(
            "the rule house.failing failed: java.lang.IllegalArgumentException: it reported a"
                + " finding of no.such");
  }

  /** Fails at the key of one site, or at the message on a clash. */
  private record FailingOverAll(boolean atKey) implements RepositoryRule {
    @Override
    public RuleDescriptor descriptor() {
      return FAILING;
    }

    @Override
    public List<Setting<String>> keys(Site site) {
      if (atKey && site.id().is("second")) {
        throw new IllegalStateException("no key");
      }
      return List.of(
          new Setting.Given<>(site.id().is("first") ? "other" : "same", site.id().place()));
    }

    @Override
    public Message clash(String key, String firstFile, String file) {
      throw new NoClassDefFoundError("no/Message");
    }

    @Override
    public String firstUse(String key) {
      return key;
    }
  }

  @Test
  void aRuleOverAllSitesIsNamedToo() throws IOException {
    assertThat(notifications(new FailingOverAll(true)))
        .containsExactly(
            new Notification(
                Level.ERROR,
                "the rule house.failing failed: java.lang.IllegalStateException: no key",
                "second.yaml",
                "house.failing"));
    assertThat(notifications(new FailingOverAll(false)))
        .containsExactly(
            new Notification(
                Level.ERROR,
                "the rule house.failing failed: java.lang.NoClassDefFoundError: no/Message",
                "third.yaml",
                "house.failing"));
  }

  /** Fails over the text that it is to compare, at one site. */
  private static final class FailingComparison implements RepositoryRule {
    @Override
    public RuleDescriptor descriptor() {
      return FAILING;
    }

    @Override
    public List<Setting<String>> keys(Site site) {
      return List.of(new Setting.Given<>(site.id().or(""), site.id().place()));
    }

    @Override
    public String compared(String key) {
      if (key.equals("second")) {
        throw new IllegalStateException("no text");
      }
      return key;
    }

    @Override
    public Message clash(String key, String firstFile, String file) {
      return new Message("a", "b", "c");
    }

    @Override
    public String firstUse(String key) {
      return key;
    }
  }

  @Test
  void aRuleThatCannotCompareIsNamedToo() throws IOException {
    assertThat(notifications(new FailingComparison()))
        .containsExactly(
            new Notification(
                Level.ERROR,
                "the rule house.failing failed: java.lang.IllegalStateException: no text",
                "second.yaml",
                "house.failing"));
  }

  private static List<Notification> notifications(RepositoryRule rule) throws IOException {
    CheckReport report = SiteLinter.builder().rule(rule).build().check(threeSites());
    assertThat(report.results()).hasSize(3);
    return report.notifications();
  }
}
