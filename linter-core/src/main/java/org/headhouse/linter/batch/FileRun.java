package org.headhouse.linter.batch;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.source.InputFile;

/** Hands on what comes of each of many files, in their order, and collects what went wrong. */
final class FileRun {
  private FileRun() {}

  /**
   * Works on files.
   *
   * @return what kept files from having an outcome
   */
  static <T> List<Notification> each(
      Iterator<? extends InputFile> inputs,
      int threads,
      Function<InputFile, FileTask.Outcome<T>> work,
      Consumer<T> taker) {
    List<Notification> notifications = new ArrayList<>();
    try (OrderedExecutor executor = new OrderedExecutor(threads)) {
      executor.run(
          inputs,
          work,
          outcome -> {
            if (outcome.notification() != null) {
              notifications.add(outcome.notification());
            }
            if (outcome.value() != null) {
              taker.accept(outcome.value());
            }
          });
    }
    return List.copyOf(notifications);
  }
}
