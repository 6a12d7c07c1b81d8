package org.headhouse.linter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.cache.Circumstances;
import org.headhouse.linter.cache.KeptCheck;
import org.headhouse.linter.cache.KeptOutcomes;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rule.TextPattern;
import org.headhouse.linter.schema.PublishedSchemas;
import org.headhouse.linter.settings.SettingsFile;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;

/**
 * Outcomes that are kept from one check to the next, and what they depend on besides their files.
 *
 * @param code tells the code of the linter and its libraries, of its rules, and of all that lies
 *     beside those where their loader tells
 * @param rules the ids and the classes of all rules
 * @param policy the file, or null where there is none
 * @param types the file of the device types, or null where there is none
 */
record Keeping(
    KeptOutcomes kept,
    String code,
    List<String> rules,
    @Nullable SettingsFile policy,
    @Nullable SettingsFile types,
    Limits limits) {

  /** Null where it cannot be told whether the code is the same next time. */
  static @Nullable Keeping of(
      KeptOutcomes kept,
      List<Rule> rules,
      @Nullable SettingsFile policy,
      @Nullable SettingsFile types,
      Limits limits) {
    // What reads a file, what looks at names, and what words the faults of the schema.
    List<Class<?>> code =
        new ArrayList<>(
            List.of(
                SiteLinter.class,
                YamlReader.library(),
                TextPattern.library(),
                PublishedSchemas.validator()));
    List<String> names = new ArrayList<>();
    for (Rule rule : rules) {
      code.add(rule.getClass());
      names.add(rule.descriptor().id() + " " + rule.getClass().getName());
    }
    return CodeStamp.of(code)
        .map(stamp -> new Keeping(kept, stamp, names, policy, types, limits))
        .orElse(null);
  }

  KeptCheck start(LocalDate today) {
    Circumstances now =
        new Circumstances()
            .with(code)
            // Each Java brings tables of characters of its own, which rules on names look into.
            .with(System.getProperty("java.version", ""))
            .with(limits.bytes() + " " + limits.depth() + " " + limits.nodes())
            .with(today.toString())
            .with(rules.toString());
    add(now, policy);
    add(now, types);
    return kept.start(now);
  }

  private static void add(Circumstances now, @Nullable SettingsFile file) {
    now.with(file == null ? "no file" : "file");
    if (file != null) {
      now.with(file.path()).with(file.bytes());
    }
  }
}
