package org.headhouse.linter.report;

import java.io.OutputStream;
import java.util.List;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.jspecify.annotations.Nullable;

/**
 * Results as lines of JSON, an object each. A result has {@code file}, {@code line}, {@code
 * column}, {@code endLine}, {@code endColumn} (from 1, in code points, the end not in it), {@code
 * level}, {@code rule}, {@code message} (the whole in one line) and its parts {@code fact}, {@code
 * why} and {@code fix} (what to do), {@code fixable} ({@code safe} or {@code proposed}) where the
 * goal fix can do it, {@code at} (the place in the words of the site), {@code unit} where there is
 * one, and {@code fingerprint}. What the tool itself could not do has {@code level} and {@code
 * notification}, and {@code file} and {@code rule} where there are any.
 *
 * @param paths how files are called
 */
public record JsonLinesReport(RepositoryPaths paths) {

  /** A report that calls files as results do. */
  public JsonLinesReport() {
    this(RepositoryPaths.unknown());
  }

  /** Writes the lines; the stream is left open. */
  public void write(List<Result> results, List<Notification> notifications, OutputStream out) {
    try (JsonWriter json = PrettyJson.onALine(out)) {
      results.forEach(result -> write(json, result));
      notifications.forEach(notification -> write(json, notification));
    }
  }

  private void write(JsonWriter json, Result result) {
    json.writeStartObject();
    json.writeStringProperty("file", paths.of(result.location().file()));
    json.writeNumberProperty("line", result.location().region().startLine());
    json.writeNumberProperty("column", result.location().region().startColumn());
    json.writeNumberProperty("endLine", result.location().region().endLine());
    json.writeNumberProperty("endColumn", result.location().region().endColumn());
    json.writeStringProperty("level", result.level().word());
    json.writeStringProperty("rule", result.rule());
    json.writeStringProperty("message", result.message().text());
    json.writeStringProperty("fact", result.message().fact());
    json.writeStringProperty("why", result.message().reason());
    json.writeStringProperty("fix", result.message().remedy());
    given(json, "fixable", result.fix() == null ? null : result.fix().kind().word());
    json.writeStringProperty("at", result.logical());
    given(json, "unit", result.unit());
    json.writeStringProperty("fingerprint", Fingerprint.of(result));
    end(json);
  }

  private void write(JsonWriter json, Notification one) {
    json.writeStartObject();
    json.writeStringProperty("level", one.level().word());
    json.writeStringProperty("notification", one.text());
    given(json, "file", one.file() == null ? null : paths.of(one.file()));
    given(json, "rule", one.rule());
    end(json);
  }

  private static void given(JsonWriter json, String property, @Nullable String text) {
    if (text != null) {
      json.writeStringProperty(property, text);
    }
  }

  private static void end(JsonWriter json) {
    json.writeEndObject();
    json.writeRaw('\n');
  }
}
