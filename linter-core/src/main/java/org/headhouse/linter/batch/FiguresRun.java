package org.headhouse.linter.batch;

import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.source.InputFile;

/** Computes the figures of many files, without checking them. */
public record FiguresRun(LinterContext context) {

  /**
   * Hands on the figures in the order of the files.
   *
   * @return what kept files from having figures
   */
  public List<Notification> over(
      Iterator<? extends InputFile> inputs, Consumer<SiteFigures> taker) {
    return FileRun.each(inputs, context.settings().threads(), this::figures, taker);
  }

  private FileTask.Outcome<SiteFigures> figures(InputFile input) {
    FileTask.Outcome<SiteFigures> outcome =
        FileTask.run(input, context.settings().limits(), context.check()::figures);
    return outcome.value() == null && outcome.notification() == null
        ? new FileTask.Outcome<>(
            input.path(),
            null,
            new Notification(
                Level.WARNING, "it has no figures: a check says why", input.path(), null))
        : outcome;
  }
}
