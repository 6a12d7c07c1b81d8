package org.headhouse.linter;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.baseline.Baseline;
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
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/**
 * What a linter works with, made of the builder's settings once.
 *
 * @param settingsResults what is wrong with the policy and the device types
 * @param baselineFile the file of the baseline, also where it is not used
 * @param baseline the results that were there before, or null where all are new
 * @param keeping outcomes of earlier checks, or null where every file is checked
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
    @Nullable Keeping keeping) {

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
        keeping(asked, allRules, policyFile, typesFile));
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

  /** What changed since an earlier state is told anew each time. */
  private static @Nullable Keeping keeping(
      SiteLinter.Builder asked,
      List<Rule> rules,
      @Nullable SettingsFile policy,
      @Nullable SettingsFile types) {
    return asked.kept == null || asked.earlier != EarlierSites.NONE
        ? null
        : Keeping.of(asked.kept, rules, policy, types, asked.limits);
  }

  /** The addresses that the policy keeps for other equipment, also where the rule is off. */
  private static ExcludedAddresses keptFree(Policy policy) {
    return KeptFreeAddress.keptFree(one -> policy.value(KeptFreeAddress.DESCRIPTOR, one));
  }

  ExcludedAddresses keptFree() {
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
