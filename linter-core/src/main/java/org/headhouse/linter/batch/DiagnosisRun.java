package org.headhouse.linter.batch;

import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import org.headhouse.linter.diagnosis.SiteDiagnosis;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.site.FoundReading;
import org.headhouse.linter.source.InputFile;
import org.jspecify.annotations.Nullable;

/**
 * Compares readings of many files with what each fault would make a meter show, without checking
 * the files.
 *
 * @param readings that count in place of those of a file; null for those of each file
 */
public record DiagnosisRun(LinterContext context, @Nullable List<FoundReading> readings) {

  /**
   * Hands on the diagnoses in the order of the files.
   *
   * @return what kept files from having one
   */
  public List<Notification> over(
      Iterator<? extends InputFile> inputs, Consumer<SiteDiagnosis> taker) {
    return FileRun.each(inputs, context.settings().threads(), this::diagnosis, taker);
  }

  private FileTask.Outcome<SiteDiagnosis> diagnosis(InputFile input) {
    FileTask.Outcome<SiteDiagnosis> outcome =
        FileTask.run(
            input,
            context.settings().limits(),
            (path, bytes) -> context.check().diagnosis(path, bytes, readings));
    return outcome.value() == null && outcome.notification() == null
        ? new FileTask.Outcome<>(
            input.path(),
            null,
            new Notification(
                Level.WARNING,
                "it cannot be diagnosed: check the file for the reason",
                input.path(),
                null))
        : outcome;
  }
}
