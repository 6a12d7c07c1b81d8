package org.headhouse.linter.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Result;
import org.jspecify.annotations.Nullable;

/** The texts that are open, and what a check finds in each. */
final class Workspace {
  private final Map<String, OpenText> open = new ConcurrentHashMap<>();
  private final Surroundings surroundings;

  Workspace(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /**
   * A text that was checked.
   *
   * @param results neither accepted nor in the baseline, of this text and of what holds for it
   */
  record Checked(
      OpenText text, Surroundings.Found found, List<Result> results, CheckReport report) {

    /** The results of the text itself. */
    List<Result> own(BaseFolder base) {
      String name = text.shown(base);
      return results.stream().filter(one -> one.location().file().equals(name)).toList();
    }
  }

  BaseFolder base() {
    return surroundings.base();
  }

  void put(OpenText text) {
    open.put(text.uri(), text);
  }

  void remove(String uri) {
    open.remove(uri);
  }

  @Nullable OpenText get(String uri) {
    return open.get(uri);
  }

  List<OpenText> all() {
    return new ArrayList<>(open.values());
  }

  /** The text that is open in place of a file, or null. */
  @Nullable OpenText at(Path file) {
    Path asked = file.toAbsolutePath().normalize();
    return all().stream().filter(text -> asked.equals(text.file())).findFirst().orElse(null);
  }

  /** How the editor calls a file. */
  String uri(Path file) {
    OpenText text = at(file);
    return text == null ? file.toUri().toString() : text.uri();
  }

  /** How the editor calls a file that results speak of. */
  String uri(String shown) {
    return shown.startsWith("<") && shown.endsWith(">")
        ? shown.substring(1, shown.length() - 1)
        : uri(base().path().resolve(shown));
  }

  /** What holds for a text. */
  Surroundings.Found found(OpenText text) throws UserError {
    return surroundings.of(text, this::at);
  }

  /** Checks a text; of what holds for sites no site is checked with it. */
  Checked check(OpenText text) throws UserError {
    Surroundings.Found found = found(text);
    Stream<SiteInput> inputs =
        text.role() == OpenText.Role.SITE ? Stream.of(text.input(base())) : Stream.of();
    CheckReport report = found.linter().check(inputs);
    List<Result> shown =
        report.results().stream().filter(one -> !one.suppressed() && !one.known()).toList();
    return new Checked(text, found, shown, report);
  }
}
