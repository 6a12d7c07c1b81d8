package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.headhouse.linter.batch.CheckRun;
import org.headhouse.linter.batch.FileTask;
import org.headhouse.linter.check.EarlierSites;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.report.ToolVersion;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.source.Sha256;
import org.jspecify.annotations.Nullable;

/**
 * What came of a part of all files, on its way to the process that joins the parts: serializable,
 * for linters of the same version. Read it from your own processes only: Java's serialization is
 * unsafe with bytes from anybody else.
 */
public final class ReportPart implements Serializable {
  private static final long serialVersionUID = 1;

  private final String linter;
  private final ArrayList<FileTask.Outcome<FileOutcome>> outcomes;

  private ReportPart(String linter, List<FileTask.Outcome<FileOutcome>> outcomes) {
    this.linter = linter;
    this.outcomes = new ArrayList<>(outcomes);
  }

  static ReportPart of(LinterContext context, Stream<SiteInput> inputs) {
    requireNoEarlierState(context);
    LocalDate today = context.today();
    return new ReportPart(
        settings(context, today),
        CheckRun.part(
            context,
            inputs.iterator(),
            (path, bytes) -> context.check().check(path, bytes, today)));
  }

  static CheckRun.Outcome joined(LinterContext context, List<ReportPart> parts) {
    requireNoEarlierState(context);
    String own = settings(context, context.today());
    List<FileTask.Outcome<FileOutcome>> all = new ArrayList<>();
    for (ReportPart part : parts) {
      if (!own.equals(part.linter)) {
        throw new IllegalArgumentException(
            "a part was checked by another version of the linter, with other rules, policy, device"
                + " types or limits, or on another day");
      }
      all.addAll(part.outcomes);
    }
    return new CheckRun(context).of(all);
  }

  private static void requireNoEarlierState(LinterContext context) {
    if (context.settings().earlier() != EarlierSites.NONE) {
      throw new IllegalStateException("sites are compared with an earlier state all at once");
    }
  }

  /**
   * Why the parts do not have each site exactly once; empty where they do.
   *
   * @param files how many sites there are
   */
  static List<Notification> lost(List<ReportPart> parts, int files) {
    List<Notification> lost = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    String twice = null;
    int joined = 0;
    for (ReportPart part : parts) {
      for (FileTask.Outcome<FileOutcome> outcome : part.outcomes) {
        joined++;
        if (!seen.add(outcome.path()) && twice == null) {
          twice = outcome.path();
        }
      }
    }
    if (joined != files) {
      String fault = joined < files ? "a part is missing" : "there is a part too many";
      lost.add(failure("the parts have " + joined + " sites of " + files + ": " + fault, null));
    }
    if (twice != null) {
      lost.add(failure("this site is in the parts more than once", twice));
    }
    return lost;
  }

  private static Notification failure(String text, @Nullable String file) {
    return new Notification(Level.ERROR, text, file, null);
  }

  /** What the linters of all parts have in common. */
  private static String settings(LinterContext context, LocalDate today) {
    List<String> rules = context.rules().descriptors().stream().map(RuleDescriptor::id).toList();
    String code = ToolVersion.text().orElse("") + rules;
    return Sha256.hex((context.validity(today) + code).getBytes(UTF_8));
  }
}
