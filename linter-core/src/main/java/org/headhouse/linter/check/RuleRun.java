package org.headhouse.linter.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.rule.ChangeRule;
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

/** Runs the rules on one site; a rule that fails is told of, and the others go on. */
final class RuleRun {
  private final Setup setup;
  private final ParameterValues parameters;
  private final LocalDate today;
  private final Site site;
  private final LineFigures figures;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Notification> notifications = new ArrayList<>();

  RuleRun(Site site, Setup setup, ParameterValues parameters, LocalDate today) {
    this.setup = setup;
    this.parameters = parameters;
    this.today = today;
    this.site = site;
    this.figures = new LineFigures(site, setup.times());
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

  void run(SiteRule rule) {
    run(rule, context -> rule.check(site, context));
  }

  void run(ChangeRule rule, Site earlier) {
    run(rule, context -> rule.check(earlier, site, context));
  }

  // A rule may come from anywhere, so whatever it throws must not end the run.
  private void run(Rule rule, Consumer<RuleContext> check) {
    int before = findings.size();
    try {
      check.accept(new Context(rule.descriptor()));
    } catch (RuntimeException | StackOverflowError | LinkageError failure) {
      findings.subList(before, findings.size()).clear();
      notifications.add(RuleFailure.of(rule.descriptor().id(), site.source().path(), failure));
    }
  }

  /** What a rule over all sites remembers of this one; null where there is nothing. */
  @Nullable Setting<String> key(RepositoryRule rule) {
    try {
      return rule.key(site);
    } catch (RuntimeException | StackOverflowError | LinkageError failure) {
      notifications.add(RuleFailure.of(rule.descriptor().id(), site.source().path(), failure));
      return null;
    }
  }

  private final class Context implements RuleContext {
    private final RuleDescriptor rule;

    Context(RuleDescriptor rule) {
      this.rule = rule;
    }

    @Override
    public <T> T value(Parameter<T> parameter) {
      return parameters.value(rule, parameter);
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
    public LocalDate today() {
      return today;
    }

    @Override
    public Finding finding(Place place, Message message) {
      return Finding.of(rule.id(), place, message);
    }

    @Override
    public void report(Finding finding) {
      if (!finding.rule().equals(rule.id())) {
        throw new IllegalArgumentException("it reported a finding of " + finding.rule());
      }
      findings.add(finding);
    }
  }
}
