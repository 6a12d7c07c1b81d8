package org.headhouse.linter.settings;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.check.CheckSettings;
import org.headhouse.linter.check.CleanFiles;
import org.headhouse.linter.check.EarlierSites;
import org.headhouse.linter.check.RuleCatalogue;
import org.headhouse.linter.check.SettingsCheck;
import org.headhouse.linter.check.SiteCheck;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.Drafting;
import org.headhouse.linter.draft.SiteUpdating;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rules.BuiltInRules;
import org.headhouse.linter.rules.SitePolicies;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.visit.VisitRecording;
import org.jspecify.annotations.Nullable;

/**
 * What a linter works with, made of its settings once. Immutable.
 *
 * @param policyFile the file of the policy, or null where there is none
 * @param typesFile the file of the device types, or null where there is none
 * @param sitePolicy what the policy says of every site
 * @param settingsResults what is wrong with the policy and the device types
 * @param baselineFile the file of the baseline, also where it is not used
 * @param baseline the results that were there before, or null where all are new
 */
public record LinterContext(
    LinterSettings settings,
    RuleCatalogue rules,
    @Nullable SettingsFile policyFile,
    @Nullable SettingsFile typesFile,
    Policy policy,
    SitePolicy sitePolicy,
    DeviceTypes types,
    List<Result> settingsResults,
    SiteCheck check,
    @Nullable Path baselineFile,
    @Nullable Baseline baseline) {

  /**
   * Loads the rules, and reads the files that the settings name.
   *
   * @throws IOException where a file cannot be read
   * @throws IllegalArgumentException where two rules have one id, or a rule of another jar cannot
   *     be used
   */
  public static LinterContext of(LinterSettings asked) throws IOException {
    RuleCatalogue rules = new RuleCatalogue(rules(asked));
    SettingsCheck settings = new SettingsCheck(rules, asked.limits());
    SettingsFile policyFile = SettingsFile.of(asked.policy(), asked.limits());
    SettingsFile typesFile = SettingsFile.of(asked.deviceTypes(), asked.limits());
    Policy policy =
        policyFile == null
            ? Policy.DEFAULT
            : settings.policy(policyFile.path(), policyFile.bytes());
    DeviceTypes types =
        typesFile == null
            ? DeviceTypes.NONE
            : settings.deviceTypes(typesFile.path(), typesFile.bytes());
    SitePolicy sitePolicy = SitePolicies.of(policy::value);
    Path baselineFile = asked.baseline().file(asked.policy(), policy.baseline());
    return new LinterContext(
        asked,
        rules,
        policyFile,
        typesFile,
        policy,
        sitePolicy,
        types,
        settings.results(),
        check(rules, policy, sitePolicy, types, asked),
        baselineFile,
        asked.baseline().read(baselineFile));
  }

  /** Those that are built in, those that other jars offer, and those given one by one. */
  private static List<Rule> rules(LinterSettings asked) {
    List<Rule> all = new ArrayList<>(BuiltInRules.all());
    if (asked.otherJars() != null) {
      all.addAll(RuleLoader.from(asked.otherJars()));
    }
    all.addAll(asked.extraRules());
    return all;
  }

  private static SiteCheck check(
      RuleCatalogue rules,
      Policy policy,
      SitePolicy sitePolicy,
      DeviceTypes types,
      LinterSettings asked) {
    return new SiteCheck(
        new CheckSettings(rules, policy, types, asked.limits(), sitePolicy), asked.earlier());
  }

  /** The day of a check that starts now. */
  public LocalDate today() {
    return LocalDate.now(settings.clock());
  }

  /**
   * What an earlier check of the same day found clean, or null where every file is checked: rules
   * of other jars and rules on changes may look at more than the file and the settings.
   */
  public @Nullable CleanFiles cleanFiles(LocalDate today) {
    if (settings.cleanFiles() == null
        || settings.earlier() != EarlierSites.NONE
        || rules.descriptors().size() > BuiltInRules.all().size()) {
      return null;
    }
    return settings
        .cleanFiles()
        .apply(System.getProperty("java.runtime.version") + "\n" + validity(today));
  }

  /** All that the outcome of a file depends on, other than the file and the rules. */
  public String validity(LocalDate today) {
    return settings.limits() + text(policyFile) + text(typesFile) + "\n" + today;
  }

  private static String text(@Nullable SettingsFile file) {
    return "\n" + (file == null ? "none" : Arrays.toString(file.bytes()));
  }

  /** The files that apply to all sites, as they are called in results. */
  public Set<String> settingsNames() {
    return Stream.of(policyFile, typesFile)
        .filter(Objects::nonNull)
        .map(SettingsFile::path)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Results without the lines of those files whose lines are not shown. */
  public List<Result> shown(List<Result> results) {
    Predicate<String> withoutLines = settings.withoutLines();
    if (withoutLines == null) {
      return results;
    }
    // A file may have thousands of results, and links on the way to it are followed once.
    Map<String, Boolean> known = new HashMap<>();
    Predicate<String> once = file -> known.computeIfAbsent(file, withoutLines::test);
    return results.stream().map(result -> result.withoutLines(once)).toList();
  }

  /** Brings sites up to date with lists of units. */
  public SiteUpdating updating() {
    return new SiteUpdating(types, sitePolicy, settings.limits());
  }

  /** Adds what was found on visits to the records of sites. */
  public VisitRecording recording() {
    return new VisitRecording(types, settings.limits());
  }

  /** Makes sites of lists of units. */
  public Drafting drafting(DraftSettings drafts) {
    return new Drafting(drafts, types, sitePolicy, settings.limits());
  }
}
