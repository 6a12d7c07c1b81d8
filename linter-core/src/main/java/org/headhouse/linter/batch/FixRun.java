package org.headhouse.linter.batch;

import java.time.LocalDate;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.fix.FixLoop;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.source.InputFile;

/**
 * Fixes many files, and checks what each fix leaves. Nothing is written.
 *
 * @param asked the kind of fixes; safer ones are used as well
 */
public record FixRun(LinterContext context, FixKind asked) {

  /**
   * Hands on the fixed sites in the order of the files.
   *
   * @return what kept files from being looked at
   */
  public List<Notification> over(Iterator<? extends InputFile> inputs, Consumer<FixedSite> taker) {
    LocalDate today = context.today();
    Set<String> onChanges = context.rules().idsOnChanges();
    return FileRun.each(
        inputs,
        context.settings().threads(),
        input ->
            FileTask.run(
                input,
                context.settings().limits(),
                (path, bytes) -> fixed(path, bytes, today, onChanges)),
        taker);
  }

  private FixedSite fixed(String path, byte[] before, LocalDate today, Set<String> onChanges) {
    FixLoop loop =
        FixLoop.of(
            before,
            asked,
            text -> {
              FileOutcome outcome = context.check().check(path, text, today);
              return new FixLoop.Checked(
                  outcome.results(), outcome.notifications().size(), onChanges);
            });
    return new FixedSite(path, before, loop.bytes(), loop.applied(), loop.remaining().results());
  }
}
