package org.headhouse.linter;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.check.CleanFiles;
import org.headhouse.linter.check.EarlierSites;
import org.headhouse.linter.check.RuleCatalogue;
import org.headhouse.linter.check.SettingsCheck;
import org.headhouse.linter.check.Setup;
import org.headhouse.linter.check.SiteCheck;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.Drafting;
import org.headhouse.linter.draft.Practice;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.TransactionTimes;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.sheet.SheetSettings;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rules.BuiltInRules;
import org.headhouse.linter.rules.address.KeptFreeAddress;
import org.headhouse.linter.rules.bias.WeakBias;
import org.headhouse.linter.rules.conductors.Ground;
import org.headhouse.linter.rules.traffic.BusyLine;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.KeptFree;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/**
 * What a linter works with, made of the builder's settings once.
 *
 * @param settingsResults what is wrong with the policy and the device types
 * @param baselineFile the file of the baseline, also where it is not used
 * @param baseline the results that were there before, or null where all are new
 * @param cleanFiles what a check of a day knows of files that an earlier one found clean, or null
 *     where it checks every file
 */
record Equipment(
    RuleCatalogue rules,
    Policy policy,
    DeviceTypes types,
    List<Result> settingsResults,
    SiteCheck check,
    int threads,
    Limits limits,
    Clock clock,
    @Nullable Path baselineFile,
    @Nullable Baseline baseline,
    @Nullable Function<LocalDate, CleanFiles> cleanFiles) {

  /** Reads what the builder names. */
  static Equipment of(SiteLinter.Builder asked) throws IOException {
    List<Rule> allRules = rules(asked);
    RuleCatalogue rules = new RuleCatalogue(allRules);
    SettingsCheck settings = new SettingsCheck(rules, asked.limits);
    SettingsFile policyFile = SettingsFile.of(asked.policy, asked.limits);
    SettingsFile typesFile = SettingsFile.of(asked.deviceTypes, asked.limits);
    Policy policy =
        policyFile == null
            ? Policy.DEFAULT
            : settings.policy(policyFile.path(), policyFile.bytes());
    DeviceTypes types =
        typesFile == null
            ? DeviceTypes.NONE
            : settings.deviceTypes(typesFile.path(), typesFile.bytes());
    Path baselineFile = asked.known.file(asked.policy, policy.baseline());
    return new Equipment(
        rules,
        policy,
        types,
        settings.results(),
        check(rules, policy, types, asked),
        asked.threads,
        asked.limits,
        asked.clock,
        baselineFile,
        asked.known.read(baselineFile),
        cleanFiles(asked, allRules, policyFile, typesFile));
  }

  /** Those that are built in, those that other jars offer, and those given one by one. */
  private static List<Rule> rules(SiteLinter.Builder asked) {
    List<Rule> all = new ArrayList<>(BuiltInRules.all());
    if (asked.services != null) {
      all.addAll(OfferedRules.from(asked.services));
    }
    all.addAll(asked.extraRules);
    return all;
  }

  private static SiteCheck check(
      RuleCatalogue rules, Policy policy, DeviceTypes types, SiteLinter.Builder asked) {
    TransactionTimes times = BusyLine.times(one -> policy.value(BusyLine.DESCRIPTOR, one));
    return new SiteCheck(
        new Setup(rules, policy, types, asked.limits, times, keptFree(policy)),
        new LazySchema(),
        asked.earlier);
  }

  /** Rules of other jars, and those on changes, may look at more than is told of here. */
  private static @Nullable Function<LocalDate, CleanFiles> cleanFiles(
      SiteLinter.Builder asked,
      List<Rule> rules,
      @Nullable SettingsFile policy,
      @Nullable SettingsFile types) {
    Function<String, CleanFiles> byValidity = asked.cleanFiles;
    if (byValidity == null
        || asked.earlier != EarlierSites.NONE
        || rules.size() > BuiltInRules.all().size()) {
      return null;
    }
    String settings =
        asked.limits
            + "\n"
            + System.getProperty("java.runtime.version")
            + text(policy)
            + text(types)
            + "\n";
    return today -> byValidity.apply(settings + today);
  }

  private static String text(@Nullable SettingsFile file) {
    return "\n" + (file == null ? "none" : Arrays.toString(file.bytes()));
  }

  /** The addresses that the policy keeps for other equipment, also where the rule is off. */
  private static KeptFree keptFree(Policy policy) {
    return KeptFreeAddress.keptFree(one -> policy.value(KeptFreeAddress.DESCRIPTOR, one));
  }

  KeptFree keptFree() {
    return keptFree(policy);
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** Workers for one run. */
  InOrder order() {
    return new InOrder(threads);
  }

  Drafting drafting(DraftSettings settings) {
    Practice practice =
        new Practice(
            Ground.isLandedEverywhere(one -> policy.value(Ground.DESCRIPTOR, one)),
            WeakBias.wantedVolts(one -> policy.value(WeakBias.DESCRIPTOR, one)),
            keptFree());
    return new Drafting(settings, types, practice, limits);
  }

  SheetSettings sheetSettings(Measure measure, Paper paper) {
    return SheetPolicy.settings(measure, paper, today(), policy, keptFree(), rules.descriptors());
  }
}
