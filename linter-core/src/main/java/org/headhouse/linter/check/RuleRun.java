package org.headhouse.linter.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.rule.ChangeRule;
import org.headhouse.linter.rule.EarlierState;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.RepositoryRule;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Place;
import org.jspecify.annotations.Nullable;

/** Runs the rules on one site; a rule that fails is reported, and the others go on. */
final class RuleRun {
  /** More than a file may have values. */
  private static final int MOST_FINDINGS = 250_000;

  private final CheckSettings setup;
  private final ParameterValues parameters;
  private final LocalDate today;
  private final Site site;
  private final boolean known;
  private final @Nullable EarlierState earlier;
  private final BooleanSupplier mayHaveBeenLive;
  private final LineFigures figures;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Notification> notifications = new ArrayList<>();

  /**
   * @param known whether all main parts of the file are known, and the earlier state where there
   *     may be one: what is not known may be what says that the line is in operation
   * @param mayHaveBeenLive whether the line may have been in operation before the earlier state; it
   *     is asked only where a fix needs work at units, since all history is read for it
   */
  RuleRun(
      Site site,
      boolean known,
      @Nullable EarlierState earlier,
      BooleanSupplier mayHaveBeenLive,
      CheckSettings setup,
      ParameterValues parameters,
      LocalDate today) {
    this.earlier = earlier;
    this.mayHaveBeenLive = mayHaveBeenLive;
    this.setup = setup;
    this.parameters = parameters;
    this.today = today;
    this.site = site;
    this.known = known;
    this.figures = new LineFigures(site, setup.sitePolicy());
  }

  List<Finding> findings() {
    return findings;
  }

  LineFigures figures() {
    return figures;
  }

  List<Notification> notifications() {
    return notifications;
  }

  // A rule may come from anywhere, so whatever it throws must not end the run.
  void run(SiteRule rule) {
    Context context = new Context(setup.rules().of(rule));
    try {
      rule.check(site, context);
      take(context);
    } catch (Throwable failure) {
      refuse(context, rule, failure);
    }
  }

  void run(ChangeRule rule, Site before) {
    Context context = new Context(setup.rules().of(rule));
    try {
      rule.check(before, site, context);
      take(context);
    } catch (Throwable failure) {
      refuse(context, rule, failure);
    }
  }

  private void take(Context context) {
    List<Finding> reported = context.end();
    if (!reported.isEmpty()) {
      findings.addAll(reported);
    }
  }

  private void refuse(Context context, Rule rule, Throwable failure) {
    context.end();
    notifications.add(failure(rule, failure));
  }

  private Notification failure(Rule rule, Throwable failure) {
    return RuleFailure.of(setup.rules().of(rule).id(), site.source().path(), failure);
  }

  /** What a rule over all sites keeps of this one: texts, each with its first place. */
  Map<String, Place> keys(RepositoryRule rule) {
    try {
      Map<String, Place> keys = new LinkedHashMap<>();
      for (Setting<String> key : Objects.requireNonNull(rule.keys(site), "it has no keys")) {
        Objects.requireNonNull(key, "it has no key");
        if (key instanceof Setting.Given<String> given) {
          Objects.requireNonNull(given.value(), "its key has no text");
          FindingCheck.requireInside(given.place(), site.source());
          keys.putIfAbsent(given.value(), given.place());
        }
      }
      return keys;
    } catch (Throwable failure) {
      notifications.add(failure(rule, failure));
      return Map.of();
    }
  }

  private final class Context implements RuleContext {
    private final RuleDescriptor rule;
    private List<Finding> reported = List.of();
    private boolean ended;

    Context(RuleDescriptor rule) {
      this.rule = rule;
    }

    /** What was reported; nothing more is taken. */
    synchronized List<Finding> end() {
      ended = true;
      return reported;
    }

    @Override
    public <T> T value(Parameter<T> parameter) {
      return parameters.value(rule, parameter);
    }

    @Override
    public SitePolicy sitePolicy() {
      return setup.sitePolicy();
    }

    @Override
    public DeviceTypes deviceTypes() {
      return setup.deviceTypes();
    }

    @Override
    public LineFigures figures() {
      return figures;
    }

    @Override
    public @Nullable EarlierState earlier() {
      return earlier;
    }

    @Override
    public boolean isLive() {
      return !(known && site.isUntouched()) || (earlier != null && !earlier.site().isUntouched());
    }

    @Override
    public LocalDate today() {
      return today;
    }

    @Override
    public Finding finding(Place place, Message message) {
      return Finding.of(rule.id(), place, message);
    }

    @Override
    public synchronized void report(Finding finding) {
      FindingCheck.require(finding, rule, site.source());
      if (ended) {
        throw new IllegalStateException("it reported after its check had ended");
      }
      if (reported.size() == MOST_FINDINGS) {
        throw new IllegalStateException("it reported more than " + MOST_FINDINGS + " findings");
      }
      if (reported.isEmpty()) {
        // Most rules have nothing to report of most sites.
        reported = new ArrayList<>();
      }
      FixDraft fix = finding.fix();
      reported.add(
          fix != null && fix.onSite() && fix.kind() == FixKind.SAFE && mayBeLive()
              ? finding.fixedBy(fix.whileLive())
              : finding);
    }

    private boolean mayBeLive() {
      return isLive() || mayHaveBeenLive.getAsBoolean();
    }
  }
}
