package org.headhouse.linter.report;

import java.io.OutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.result.AbsentResult;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleDescriptor;
import org.jspecify.annotations.Nullable;

/** Results as a log file of the OASIS standard SARIF 2.1.0. */
public final class SarifReport {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private final List<RuleDescriptor> rules;
  private final Map<String, Integer> ruleIndex = new HashMap<>();

  private final RunDetails run;
  private final SarifPlaces places;

  /** A report that lists some rules. */
  public SarifReport(List<RuleDescriptor> rules) {
    this(rules, RunDetails.unknown());
  }

  /** A report that lists some rules, and says what run it comes from. */
  public SarifReport(List<RuleDescriptor> rules, RunDetails run) {
    this.rules = rules;
    this.run = run;
    this.places = new SarifPlaces(run.paths());
    rules.forEach(rule -> ruleIndex.put(rule.id(), ruleIndex.size()));
  }

  /** Writes the log; the stream is left open. */
  public void write(List<Result> results, List<Notification> notifications, OutputStream out) {
    write(results, List.of(), notifications, out);
  }

  /**
   * Writes the log; the stream is left open.
   *
   * @param absent what is in the baseline and was not found; reported as passed, so that a reader
   *     that ignores the state does not take it for a fault
   */
  public void write(
      List<Result> results,
      List<AbsentResult> absent,
      List<Notification> notifications,
      OutputStream out) {
    try (JsonWriter json = PrettyJson.withItemsOnALine("results", out)) {
      log(json, results, absent, notifications);
      json.writeRaw('\n');
    }
  }

  private void log(
      JsonWriter json,
      List<Result> results,
      List<AbsentResult> absent,
      List<Notification> notifications) {
    json.writeStartObject();
    json.writeStringProperty("$schema", SCHEMA);
    json.writeStringProperty("version", "2.1.0");
    json.writeArrayPropertyStart("runs");
    json.writeStartObject();
    Set<String> broken = results.stream().map(Result::rule).collect(Collectors.toSet());
    new SarifTool(rules, run.pages()).write(json, broken);
    if (run.id() != null) {
      json.writeObjectPropertyStart("automationDetails");
      json.writeStringProperty("id", run.id());
      json.writeEndObject();
    }
    places.provenance(json);
    places.bases(json);
    json.writeStringProperty("columnKind", "unicodeCodePoints");
    json.writeArrayPropertyStart("newlineSequences");
    for (String end : List.of("\r\n", "\n", "\r")) {
      json.writeString(end);
    }
    json.writeEndArray();
    invocation(json, notifications);
    json.writeArrayPropertyStart("results");
    WrittenFixes fixes = new WrittenFixes();
    results.forEach(result -> result(json, result, fixes));
    absent.forEach(result -> absent(json, result));
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndArray();
    json.writeEndObject();
  }

  private void invocation(JsonWriter json, List<Notification> notifications) {
    json.writeArrayPropertyStart("invocations");
    json.writeStartObject();
    json.writeBooleanProperty(
        "executionSuccessful", notifications.stream().noneMatch(Notification::isFailure));
    json.writeArrayPropertyStart("toolExecutionNotifications");
    for (Notification notification : notifications) {
      json.writeStartObject();
      json.writeStringProperty("level", notification.level().word());
      SarifPlaces.text(json, "message", notification.text());
      if (notification.rule() != null) {
        json.writeObjectPropertyStart("associatedRule");
        json.writeStringProperty("id", notification.rule());
        json.writeEndObject();
      }
      if (notification.file() != null) {
        json.writeArrayPropertyStart("locations");
        json.writeStartObject();
        json.writeObjectPropertyStart("physicalLocation");
        places.artifact(json, notification.file());
        json.writeEndObject();
        json.writeEndObject();
        json.writeEndArray();
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndArray();
  }

  private void result(JsonWriter json, Result result, WrittenFixes fixes) {
    json.writeStartObject();
    json.writeStringProperty("ruleId", result.rule());
    json.writeNumberProperty("ruleIndex", ruleIndex.getOrDefault(result.rule(), -1));
    json.writeStringProperty("level", result.level().word());
    SarifPlaces.text(json, "message", result.message().text());
    json.writeArrayPropertyStart("locations");
    json.writeStartObject();
    places.physical(json, result.location());
    logical(json, result.logical());
    json.writeEndObject();
    json.writeEndArray();
    related(json, result.related());
    lasting(json, Fingerprint.of(result), result.state() == null ? null : result.state().word());
    if (result.fix() != null && fixes.isFirst(result.fix(), result)) {
      SarifFix.write(json, result.fix(), result.location().file(), places);
    }
    if (result.suppression() != null) {
      json.writeArrayPropertyStart("suppressions");
      json.writeStartObject();
      json.writeStringProperty("kind", "inSource");
      json.writeStringProperty("status", "accepted");
      json.writeStringProperty("justification", result.suppression().justification());
      json.writeObjectPropertyStart("location");
      places.physical(json, result.suppression().location());
      json.writeEndObject();
      json.writeEndObject();
      json.writeEndArray();
    }
    parts(json, result.message());
    json.writeEndObject();
  }

  /** The parts of a message, which a viewer shows in one piece. */
  private static void parts(JsonWriter json, Message message) {
    json.writeObjectPropertyStart("properties");
    json.writeStringProperty("fact", message.fact());
    json.writeStringProperty("why", message.reason());
    json.writeStringProperty("fix", message.remedy());
    json.writeEndObject();
  }

  private void absent(JsonWriter json, AbsentResult result) {
    json.writeStartObject();
    json.writeStringProperty("ruleId", result.rule());
    json.writeNumberProperty("ruleIndex", ruleIndex.getOrDefault(result.rule(), -1));
    json.writeStringProperty("kind", "pass");
    json.writeStringProperty("level", Level.NONE.word());
    SarifPlaces.text(json, "message", "the baseline knows it, and it is gone: " + result.text());
    json.writeNumberProperty("occurrenceCount", result.times());
    json.writeArrayPropertyStart("locations");
    json.writeStartObject();
    json.writeObjectPropertyStart("physicalLocation");
    places.artifact(json, result.file());
    json.writeEndObject();
    logical(json, result.identity().at());
    json.writeEndObject();
    json.writeEndArray();
    lasting(json, Fingerprint.of(result.identity(), result.file()), "absent");
    json.writeEndObject();
  }

  /** What identifies a result from run to run. */
  private static void lasting(JsonWriter json, String fingerprint, @Nullable String state) {
    json.writeObjectPropertyStart("partialFingerprints");
    json.writeStringProperty(Fingerprint.NAME, fingerprint);
    json.writeEndObject();
    if (state != null) {
      json.writeStringProperty("baselineState", state);
    }
  }

  private static void logical(JsonWriter json, String path) {
    if (!path.isEmpty()) {
      json.writeArrayPropertyStart("logicalLocations");
      json.writeStartObject();
      json.writeStringProperty("fullyQualifiedName", path);
      json.writeEndObject();
      json.writeEndArray();
    }
  }

  private void related(JsonWriter json, List<RelatedLocation> related) {
    if (related.isEmpty()) {
      return;
    }
    json.writeArrayPropertyStart("relatedLocations");
    for (RelatedLocation one : related) {
      json.writeStartObject();
      places.physical(json, one.location());
      SarifPlaces.text(json, "message", one.text());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
