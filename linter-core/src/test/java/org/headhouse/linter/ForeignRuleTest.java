package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.ChangeRule;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RepositoryRule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What rules of other jars do wrong besides throwing; a rule that is wrong is told, alone. */
@SuppressWarnings({"NullAway", "NullOptional"}) // as a rule of a project without null checks may do
class ForeignRuleTest {
  private static final RuleDescriptor OURS =
      RuleDescriptor.of("house.wrong", "It does something wrong.", Level.ERROR);
  private static final Message MESSAGE = new Message("a fact", "a reason", "a remedy");
  private static final String GAP = Example.with("address: 3", "address: 4");

  private record Doing(BiConsumer<Site, RuleContext> wrong) implements SiteRule {
    @Override
    public RuleDescriptor descriptor() {
      return OURS;
    }

    @Override
    public void check(Site site, RuleContext context) {
      wrong.accept(site, context);
    }
  }

  private static Place place(int line, int column) {
    return Place.at(Region.onLine(line, column, 1));
  }

  private static Arguments wrong(String told, BiConsumer<Site, RuleContext> wrong) {
    return Arguments.of(told, wrong);
  }

  static Stream<Arguments> wrongs() {
    return Stream.of(
        wrong("null", (site, context) -> context.report(null)),
        wrong("without a place", (site, context) -> context.report(context.finding(null, MESSAGE))),
        wrong(
            "without a message",
            (site, context) -> context.report(context.finding(place(1, 1), null))),
        wrong("without a fact", (site, context) -> new Message(null, "a reason", "a remedy")),
        wrong(
            "a finding of address.gap",
            (site, context) -> context.report(Finding.of("address.gap", place(1, 1), MESSAGE))),
        wrong(
            "line 9999, column 1, which example.yaml does not have",
            (site, context) -> context.report(place(9999, 1), MESSAGE)),
        wrong(
            "line 1, column 500, which example.yaml does not have",
            (site, context) -> context.report(place(1, 500), MESSAGE)),
        wrong(
            "line 1, column 1, which example.yaml does not have",
            (site, context) -> context.report(Place.at(new Region(1, 1, 4000, 1)), MESSAGE)),
        wrong(
            "line 77, column 1, which example.yaml",
            (site, context) ->
                context.report(
                    new Place.ThroughAlias(
                        Region.START_OF_FILE,
                        new Place.Anchored("a", Region.onLine(77, 1, 1), Region.onLine(1, 1, 1))),
                    MESSAGE)),
        wrong(
            "line 8, column 1, which other.yaml does not have",
            (site, context) ->
                context.report(
                    context
                        .finding(place(1, 1), MESSAGE)
                        .related(
                            new SourceText("other.yaml", "a: 1\n"),
                            Region.onLine(8, 1, 1),
                            "there"))),
        wrong(
            "a related place without a text",
            (site, context) ->
                context.report(
                    context.finding(place(1, 1), MESSAGE).related(Region.START_OF_FILE, null))),
        wrong(
            "line 5000, column 1",
            (site, context) ->
                context.report(
                    context
                        .finding(place(1, 1), MESSAGE)
                        .fixedBy(FixDraft.inFile("Write 1", Edit.plain(place(5000, 1), 1))))),
        wrong(
            "no list has an item -2",
            (site, context) -> new Edit.AddItems(place(1, 1), -2, List.of("a"))),
        wrong(
            "it reported more than 250000 findings",
            (site, context) -> {
              while (true) {
                context.report(place(1, 1), MESSAGE);
              }
            }));
  }

  @ParameterizedTest
  @MethodSource("wrongs")
  void isToldAndTheOthersGoOn(String told, BiConsumer<Site, RuleContext> wrong) throws IOException {
    CheckReport report =
        SiteLinter.builder().rule(new Doing(wrong)).build().checkText("example.yaml", GAP);
    assertThat(report.results()).extracting(Result::rule).containsExactly("address.gap");
    assertThat(report.notifications())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.text()).startsWith("the rule house.wrong failed: ").contains(told);
              assertThat(one.rule()).isEqualTo("house.wrong");
              assertThat(one.file()).isEqualTo("example.yaml");
            });
  }

  /** What it found is not half told, and what it says later is not taken. */
  @Test
  void aRuleCannotReportAfterItsCheck() throws IOException {
    List<RuleContext> kept = new ArrayList<>();
    SiteLinter linter =
        SiteLinter.builder().rule(new Doing((site, context) -> kept.add(context))).build();
    assertThat(linter.checkText("example.yaml", Example.SITE).notifications()).isEmpty();
    assertThatThrownBy(() -> kept.get(0).report(place(1, 1), MESSAGE))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("after its check had ended");
  }

  /** A place that a rule makes up inside the file is told as well as it can be. */
  @Test
  void aFixThatCannotBeWrittenIsNone() throws IOException {
    SiteRule rule =
        new Doing(
            (site, context) ->
                context.report(
                    context
                        .finding(place(2, 3), MESSAGE)
                        .fixedBy(FixDraft.inFile("Write 1", Edit.plain(place(2, 3), 1)))));
    CheckReport report =
        SiteLinter.builder().rule(rule).build().checkText("example.yaml", Example.SITE);
    assertThat(report.notifications()).isEmpty();
    assertThat(report.results())
        .singleElement()
        .satisfies(result -> assertThat(result.fix()).isNull());
  }

  /** A descriptor is asked for once: later answers count for nothing. */
  @Test
  void aDescriptorThatChangesOrFailsLaterIsAskedForOnce() throws IOException {
    AtomicInteger asked = new AtomicInteger();
    SiteRule rule =
        new SiteRule() {
          @Override
          public RuleDescriptor descriptor() {
            if (asked.getAndIncrement() > 0) {
              throw new IllegalStateException("asked again");
            }
            return OURS;
          }

          @Override
          public void check(Site site, RuleContext context) {
            throw new IllegalStateException("broken");
          }
        };
    CheckReport report =
        SiteLinter.builder().rule(rule).build().checkText("example.yaml", Example.SITE);
    assertThat(report.notifications())
        .extracting(Notification::text)
        .containsExactly("the rule house.wrong failed: java.lang.IllegalStateException: broken");
  }

  private record Keyed(List<Setting<String>> keys, Message message, String first)
      implements RepositoryRule {
    @Override
    public RuleDescriptor descriptor() {
      return OURS;
    }

    @Override
    public List<Setting<String>> keys(Site site) {
      return keys;
    }

    @Override
    public Message clash(String text, String firstFile, String file) {
      return message;
    }

    @Override
    public String firstUse(String text) {
      return first;
    }
  }

  static Stream<Arguments> keyed() {
    List<Setting<String>> good = List.of(new Setting.Given<>("same", place(1, 1)));
    return Stream.of(
        Arguments.of(new Keyed(null, MESSAGE, "here"), "it has no keys", 2),
        Arguments.of(new Keyed(Collections.singletonList(null), MESSAGE, "here"), "no key", 2),
        Arguments.of(
            new Keyed(List.of(new Setting.Given<>(null, place(1, 1))), MESSAGE, "here"),
            "no text",
            2),
        Arguments.of(
            new Keyed(List.of(new Setting.Given<>("same", place(500, 1))), MESSAGE, "here"),
            "line 500, column 1",
            2),
        Arguments.of(new Keyed(good, null, "here"), "it has no message", 1),
        Arguments.of(new Keyed(good, MESSAGE, null), "it has no first use", 1));
  }

  @ParameterizedTest
  @MethodSource("keyed")
  void aRuleOverAllSitesIsToldToo(RepositoryRule rule, String told, int times) throws IOException {
    CheckReport report =
        SiteLinter.builder()
            .rule(rule)
            .build()
            .check(
                Stream.of("first", "second")
                    .map(
                        id ->
                            SiteInput.text(
                                id + ".yaml", GAP.replace("site: example", "site: " + id))));
    assertThat(report.results())
        .extracting(Result::rule)
        .containsExactly("address.gap", "address.gap");
    assertThat(report.notifications())
        .hasSize(times)
        .allSatisfy(one -> assertThat(one.text()).contains("house.wrong failed", told));
  }

  /** A parameter that nobody but its rule can read. */
  private record Odd(Optional<String> read, RuntimeException failure)
      implements ParameterType<String> {
    @Override
    public Optional<String> parse(String written) {
      if (written.equals("odd") && failure != null) {
        throw failure;
      }
      return written.equals("odd") ? read : Optional.of(written);
    }

    @Override
    public String describe() {
      return "a word";
    }
  }

  static Stream<Arguments> odd() {
    return Stream.of(
        Arguments.of(new Odd(null, null), "NullPointerException"),
        Arguments.of(new Odd(null, new IllegalStateException("no words")), "no words"));
  }

  @ParameterizedTest
  @MethodSource("odd")
  void aParameterThatItsRuleCannotReadIsAnErrorOfTheRule(ParameterType<String> type, String told) {
    SiteRule rule =
        new SiteRule() {
          @Override
          public RuleDescriptor descriptor() {
            return RuleDescriptor.of(
                "house.odd", "It is odd.", Level.NOTE, new Parameter<>("word", "a", type, "even"));
          }

          @Override
          public void check(Site site, RuleContext context) {}
        };
    String policy = "{format: 1, rule-set: 1, rules: {house.odd: {parameters: {word: odd}}}}";
    assertThatThrownBy(
            () ->
                SiteLinter.builder()
                    .rule(rule)
                    .policy(SiteInput.text("linter.yaml", policy))
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the rule house.odd cannot read its parameter \"word\"")
        .hasMessageContaining(told);
  }

  /** Read once when the linter is made, and failing when it is read again. */
  private static final class Tired implements ParameterType<String> {
    private int read;

    @Override
    public Optional<String> parse(String text) {
      if (++read > 1) {
        throw new IllegalStateException("enough");
      }
      return Optional.of(text);
    }

    @Override
    public String describe() {
      return "a word";
    }
  }

  @Test
  void aParameterThatItsRuleCannotReadAgainIsTroubleOfTheRule() throws IOException {
    Parameter<String> word = new Parameter<>("word", "a word", new Tired(), "even");
    SiteRule rule =
        new SiteRule() {
          @Override
          public RuleDescriptor descriptor() {
            return RuleDescriptor.of("house.tired", "It is tired.", Level.NOTE, word);
          }

          @Override
          public void check(Site site, RuleContext context) {
            context.value(word);
          }
        };
    assertThat(
            SiteLinter.builder()
                .rule(rule)
                .build()
                .checkText("example.yaml", Example.SITE)
                .notifications())
        .singleElement()
        .satisfies(told -> assertThat(told.toString()).contains("house.tired").contains("enough"));
  }

  /** Of two kinds only one would be checked. */
  private static final class Twofold implements SiteRule, ChangeRule {
    @Override
    public RuleDescriptor descriptor() {
      return OURS;
    }

    @Override
    public void check(Site site, RuleContext context) {}

    @Override
    public void check(Site before, Site after, RuleContext context) {}
  }

  @Test
  void aRuleOfTwoKindsIsRefused() {
    assertThatThrownBy(() -> SiteLinter.builder().rule(new Twofold()).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is of 2 kinds");
  }

  @Test
  void aDescriptorWithoutItsPartsIsRefused() {
    assertThatThrownBy(() -> RuleDescriptor.of("a.b", null, Level.NOTE))
        .hasMessage("a rule without a requirement");
    assertThatThrownBy(() -> RuleDescriptor.of("a.b", "A rule.", null))
        .hasMessage("a rule without a level");
    Parameter<String> one = new Parameter<>("word", "a word", ParameterType.choice("a"), "a");
    assertThatThrownBy(() -> RuleDescriptor.of("a.b", "A rule.", Level.NOTE, one, one))
        .hasMessageContaining("two parameters have one name");
  }
}
