package org.headhouse.linter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.cache.Circumstances;
import org.headhouse.linter.cache.KeptOutcomes;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/**
 * Outcomes that are kept from one check to the next, and what they depend on besides their files.
 *
 * @param code where the linter and its rules were loaded from
 * @param settings the files that hold for all sites, with their names
 */
record Keeping(KeptOutcomes kept, String code, List<SettingsFile> settings, Limits limits) {

  /** One file that holds for all sites. */
  @SuppressWarnings("ArrayRecordComponent") // Never compared.
  record SettingsFile(String path, byte[] bytes) {}

  /** Null where it cannot be told whether the code is the same next time. */
  static @Nullable Keeping of(
      KeptOutcomes kept, List<Rule> rules, List<SettingsFile> settings, Limits limits) {
    List<Class<?>> code = new ArrayList<>(List.of(SiteLinter.class));
    rules.forEach(rule -> code.add(rule.getClass()));
    return CodeStamp.of(code).map(stamp -> new Keeping(kept, stamp, settings, limits)).orElse(null);
  }

  void start(LocalDate today) {
    Circumstances now =
        new Circumstances()
            .with(code)
            // Each Java brings tables of characters of its own, which rules on names look into.
            .with(System.getProperty("java.version", ""))
            .with(limits.toString())
            .with(today.toString());
    settings.forEach(file -> now.with(file.path()).with(file.bytes()));
    kept.start(now);
  }
}
