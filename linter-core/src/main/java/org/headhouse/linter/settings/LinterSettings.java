package org.headhouse.linter.settings;

import java.time.Clock;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.headhouse.linter.baseline.BaselineSelection;
import org.headhouse.linter.check.CleanFiles;
import org.headhouse.linter.check.EarlierSites;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/**
 * What was asked of the builder; nothing of it is read yet.
 *
 * @param policy null where every rule has its own level
 * @param deviceTypes null where none are known
 * @param threads how many files are worked on at a time
 * @param limits budgets for one file
 * @param clock gives the day of a check
 * @param otherJars finds the rules of other jars; null where none are wanted
 * @param extraRules rules that were given one by one
 * @param earlier what rules on changes compare with
 * @param cleanFiles gives what an earlier check found clean, by all else that an outcome depends on
 *     but the code; null where every file is checked
 * @param withoutLines the files of which no result has a line of text; null where all have
 */
public record LinterSettings(
    @Nullable InputFile policy,
    @Nullable InputFile deviceTypes,
    int threads,
    Limits limits,
    Clock clock,
    @Nullable ClassLoader otherJars,
    List<Rule> extraRules,
    BaselineSelection baseline,
    EarlierSites earlier,
    @Nullable Function<String, CleanFiles> cleanFiles,
    @Nullable Predicate<String> withoutLines) {

  public LinterSettings {
    extraRules = List.copyOf(extraRules);
  }
}
