package org.headhouse.linter.maven;

/** Whether Maven's log shows colours, which users turn on and off with {@code style.color}. */
final class LogColours {
  private LogColours() {}

  /**
   * What Maven has decided. Before Maven 4 it keeps that in the library with which it writes
   * colours, which it shares with its plugins; where there is none, lines are plain.
   */
  static boolean areShown() {
    try {
      return Boolean.TRUE.equals(
          Class.forName("org.fusesource.jansi.Ansi").getMethod("isEnabled").invoke(null));
    } catch (ReflectiveOperationException | LinkageError none) {
      return false;
    }
  }
}
