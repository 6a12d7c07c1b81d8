package org.headhouse.linter.batch;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiFunction;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.baseline.ComparedResults;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.check.UniquenessCheck;
import org.headhouse.linter.result.AbsentResult;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.source.InputFile;

/** Checks many files once, and puts their outcomes together in the order of the files. */
public final class CheckRun {
  private final LinterContext context;
  private final UniquenessCheck uniqueness;
  private final WithheldOutcomes withheld;
  private final List<Result> results;
  private final List<Notification> notifications = new ArrayList<>();
  private final Set<String> checked = new HashSet<>();
  private int files;
  private int units;

  public CheckRun(LinterContext context) {
    this.context = context;
    this.uniqueness = new UniquenessCheck(context.rules(), context.policy());
    this.withheld = new WithheldOutcomes(context);
    this.results = new ArrayList<>(context.settingsResults());
  }

  /**
   * What came of all files.
   *
   * @param results in the order of files and places, those of policy and device types included
   * @param units how many units the chains have
   * @param absent what the baseline has and the check did not find
   */
  public record Outcome(
      List<Result> results,
      List<Notification> notifications,
      int files,
      int units,
      List<AbsentResult> absent) {}

  /** Gets the outcome of each file once it is checked, in the order of the files. */
  @FunctionalInterface
  public interface Progress {
    void checked(int files, FileTask.Outcome<FileOutcome> outcome);
  }

  /**
   * Checks files.
   *
   * @param check what is done with one file, by several threads
   */
  public Outcome over(
      Iterator<? extends InputFile> inputs, FileTask.Work<FileOutcome> check, Progress progress) {
    try (OrderedExecutor executor = new OrderedExecutor(context.settings().threads())) {
      executor.run(
          inputs,
          (InputFile input) ->
              withheld.noted(input, FileTask.run(input, context.settings().limits(), check)),
          outcome -> {
            add(outcome);
            progress.checked(files, outcome);
          });
    }
    return outcome();
  }

  /**
   * Checks files that are a part of all, for {@link #of} to put together.
   *
   * @param check what is done with one file, by several threads
   * @return in the order of the files
   */
  public static List<FileTask.Outcome<FileOutcome>> part(
      LinterContext context,
      Iterator<? extends InputFile> inputs,
      BiFunction<String, byte[], FileOutcome> check) {
    List<FileTask.Outcome<FileOutcome>> outcomes = new ArrayList<>();
    try (OrderedExecutor executor = new OrderedExecutor(context.settings().threads())) {
      executor.run(
          inputs,
          (InputFile input) ->
              FileTask.run(
                  input,
                  context.settings().limits(),
                  (path, bytes) -> check.apply(path, bytes).complete()),
          outcome -> outcomes.add(outcome.withoutCause()));
    }
    return outcomes;
  }

  /** What came of files that were checked in parts. */
  public Outcome of(Iterable<FileTask.Outcome<FileOutcome>> outcomes) {
    outcomes.forEach(this::add);
    return outcome();
  }

  private void add(FileTask.Outcome<FileOutcome> outcome) {
    files++;
    if (context.baseline() != null) {
      checked.add(outcome.path());
    }
    if (outcome.notification() != null) {
      notifications.add(outcome.notification());
    }
    boolean isWithheld = withheld.take(outcome);
    if (outcome.value() != null) {
      add(outcome.value(), isWithheld);
    }
  }

  private void add(FileOutcome outcome, boolean isWithheld) {
    units += outcome.units();
    if (!isWithheld) {
      results.addAll(outcome.results());
    }
    notifications.addAll(outcome.notifications());
    results.addAll(uniqueness.add(outcome, notifications));
  }

  private Outcome outcome() {
    results.addAll(withheld.results(notifications));
    results.sort(Result.ORDER);
    Baseline baseline = context.baseline();
    ComparedResults compared =
        baseline == null
            ? new ComparedResults(results, List.of())
            : baseline.compare(results, checked, unsure());
    return new Outcome(compared.results(), notifications, files, units, compared.absent());
  }

  /** Files in which something kept rules from looking. */
  private Set<String> unsure() {
    Set<String> unsure = new HashSet<>();
    results.stream()
        .filter(result -> result.identities().isEmpty())
        .forEach(result -> unsure.add(result.location().file()));
    notifications.stream().map(Notification::file).filter(Objects::nonNull).forEach(unsure::add);
    return unsure;
  }
}
