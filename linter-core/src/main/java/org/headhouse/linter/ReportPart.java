package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.batch.CheckRun;
import org.headhouse.linter.batch.FileTask;
import org.headhouse.linter.check.EarlierSites;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.source.Sha256;

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
    if (context.settings().earlier() != EarlierSites.NONE) {
      throw new IllegalStateException("sites are compared with an earlier state all at once");
    }
    LocalDate today = context.today();
    return new ReportPart(
        settings(context, today),
        CheckRun.part(
            context,
            inputs.iterator(),
            (path, bytes) -> context.check().check(path, bytes, today)));
  }

  static CheckRun.Outcome joined(LinterContext context, List<ReportPart> parts) {
    String own = settings(context, context.today());
    List<FileTask.Outcome<FileOutcome>> all = new ArrayList<>();
    for (ReportPart part : parts) {
      if (!part.linter.equals(own)) {
        throw new IllegalArgumentException(
            "a part was checked by other rules, policy, device types or limits, or on another day");
      }
      all.addAll(part.outcomes);
    }
    return new CheckRun(context).of(all);
  }

  /** What the linters of all parts have in common. */
  private static String settings(LinterContext context, LocalDate today) {
    List<String> rules = context.rules().descriptors().stream().map(RuleDescriptor::id).toList();
    return Sha256.hex((context.validity(today) + rules).getBytes(UTF_8));
  }
}
