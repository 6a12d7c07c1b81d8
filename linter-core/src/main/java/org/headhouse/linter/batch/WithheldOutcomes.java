package org.headhouse.linter.batch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.headhouse.linter.check.EarlierSites;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.source.InputFile;

/**
 * The outcomes of sites that have neither the id nor the file of an earlier one. Which of them are
 * earlier ones all the same, and which earlier ones are gone, is known once all files are checked.
 */
final class WithheldOutcomes {
  private final LinterContext context;
  private final LocalDate today;
  private final EarlierSites earlier;
  private final Map<String, InputFile> inputs = new ConcurrentHashMap<>();
  private final Map<String, FileOutcome> outcomes = new TreeMap<>();
  private final Map<String, String> ids = new HashMap<>();

  WithheldOutcomes(LinterContext context) {
    this.context = context;
    this.today = context.today();
    this.earlier = context.settings().earlier();
  }

  /** Remembers what an outcome came from; called by several threads. */
  FileTask.Outcome<FileOutcome> noted(InputFile input, FileTask.Outcome<FileOutcome> outcome) {
    if (outcome.value() != null && outcome.value().isStranger()) {
      inputs.put(outcome.path(), input);
    }
    return outcome;
  }

  /** Takes the outcome of a file, or null where it has none; true where it is withheld. */
  boolean take(FileTask.Outcome<FileOutcome> outcome) {
    FileOutcome value = outcome.value();
    if (earlier == EarlierSites.NONE) {
      return false;
    }
    ids.put(outcome.path(), value == null || value.site() == null ? "" : value.site());
    if (value == null || !value.isStranger()) {
      return false;
    }
    outcomes.put(outcome.path(), value);
    return true;
  }

  /** What is left to report once all files are checked. */
  List<Result> results(List<Notification> notifications) {
    List<Result> results = new ArrayList<>();
    if (earlier == EarlierSites.NONE) {
      return results;
    }
    List<InputFile> strangers = outcomes.keySet().stream().map(inputs::get).toList();
    EarlierSites.Unfound unfound = earlier.unfound(new EarlierSites.LaterSites(ids, strangers));
    outcomes.forEach(
        (path, outcome) -> {
          boolean isRenamed = unfound.renamed().containsKey(path);
          results.addAll(
              (isRenamed ? compared(path, outcome, unfound, notifications) : outcome).results());
        });
    results.addAll(context.check().gone(unfound));
    notifications.addAll(unfound.troubles());
    return results;
  }

  private FileOutcome compared(
      String path,
      FileOutcome outcome,
      EarlierSites.Unfound unfound,
      List<Notification> notifications) {
    InputFile input = inputs.get(path);
    FileTask.Outcome<FileOutcome> again =
        input == null
            ? new FileTask.Outcome<>(path, null, null)
            : FileTask.run(
                input,
                context.settings().limits(),
                (shown, bytes) -> context.check().check(shown, bytes, today, unfound));
    if (again.notification() != null) {
      notifications.add(again.notification());
    }
    FileOutcome value = again.value();
    if (value == null) {
      return outcome;
    }
    value.notifications().stream()
        .filter(one -> !outcome.notifications().contains(one))
        .forEach(notifications::add);
    return value;
  }
}
