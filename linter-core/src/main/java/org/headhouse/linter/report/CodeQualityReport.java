package org.headhouse.linter.report;

import static org.headhouse.linter.source.InvisibleCharacters.shown;

import java.io.OutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;

/**
 * Results as GitLab's code quality report. Source:
 * https://docs.gitlab.com/ci/testing/code_quality/#code-quality-report-format (an array of objects
 * with {@code description}, {@code check_name}, {@code fingerprint}, {@code severity}, {@code
 * location.path} and {@code location.lines.begin}; severities {@code info}, {@code minor}, {@code
 * major}, {@code critical}, {@code blocker}; paths from the root of the repository).
 *
 * @param paths how files are called
 */
public record CodeQualityReport(RepositoryPaths paths) {

  /**
   * Writes the report; the stream is left open. A fault of the run itself is in it too, so that an
   * empty report is one of sites that were checked.
   */
  public void write(List<Result> results, List<Notification> notifications, OutputStream out) {
    Map<String, Integer> times = new HashMap<>();
    try (JsonWriter json = PrettyJson.to(out)) {
      json.writeStartArray();
      for (Result result : results) {
        json.writeStartObject();
        json.writeStringProperty("description", shown(result.message().text()));
        json.writeStringProperty("check_name", result.rule());
        // The host shows only the first of those with one fingerprint.
        String fingerprint = Fingerprint.of(result);
        int earlier = times.merge(result.rule() + " " + fingerprint, 1, Integer::sum) - 1;
        json.writeStringProperty(
            "fingerprint", Fingerprint.digest(fingerprint, result.rule(), String.valueOf(earlier)));
        json.writeStringProperty("severity", severity(result.level()));
        location(
            json,
            result.location().file(),
            result.location().region().startLine(),
            AnnotationReport.lastLine(result.location().region()));
        json.writeEndObject();
      }
      notifications.stream()
          .filter(Notification::isFailure)
          .forEach(one -> notification(json, one));
      json.writeEndArray();
      json.writeRaw('\n');
    }
  }

  private void notification(JsonWriter json, Notification one) {
    String file = one.file() == null ? "." : one.file();
    json.writeStartObject();
    json.writeStringProperty("description", shown(one.text()));
    json.writeStringProperty("check_name", "not checked");
    json.writeStringProperty("fingerprint", Fingerprint.digest(file, one.rule(), one.text()));
    json.writeStringProperty("severity", "blocker");
    location(json, file, 1, 1);
    json.writeEndObject();
  }

  private void location(JsonWriter json, String file, int begin, int end) {
    json.writeObjectPropertyStart("location");
    json.writeStringProperty("path", paths.of(file));
    json.writeObjectPropertyStart("lines");
    json.writeNumberProperty("begin", begin);
    json.writeNumberProperty("end", end);
    json.writeEndObject();
    json.writeEndObject();
  }

  private static String severity(Level level) {
    return switch (level) {
      case ERROR -> "critical";
      case WARNING -> "major";
      case NOTE -> "minor";
      case NONE -> "info";
    };
  }
}
