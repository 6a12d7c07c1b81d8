package org.headhouse.linter.report;

import java.io.OutputStream;
import java.util.List;
import org.headhouse.linter.diagnosis.Candidate;
import org.headhouse.linter.diagnosis.NamedFault;
import org.headhouse.linter.diagnosis.NextMeasurement;
import org.headhouse.linter.diagnosis.SegmentDiagnosis;
import org.headhouse.linter.diagnosis.SiteDiagnosis;
import org.headhouse.linter.site.Word;
import org.jspecify.annotations.Nullable;

/**
 * Diagnoses as JSON, written site by site so that none is kept.
 *
 * <p>{@code agrees} is null where a segment has no reading or cannot be judged.
 */
public final class DiagnosisReport implements AutoCloseable {
  private final JsonWriter json;

  /** Begins the report; the stream is left open. */
  public DiagnosisReport(OutputStream out) {
    json = PrettyJson.to(out);
    json.writeStartObject();
    json.writeArrayPropertyStart("sites");
  }

  /** Writes the diagnosis of one site. */
  public void add(SiteDiagnosis site) {
    json.writeStartObject();
    json.writeStringProperty("site", site.site());
    json.writeArrayPropertyStart("segments");
    site.segments().forEach(this::segment);
    json.writeEndArray();
    texts("notUsed", site.notUsed());
    json.writeEndObject();
  }

  /** Ends the report. */
  @Override
  public void close() {
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
    json.close();
  }

  private void segment(SegmentDiagnosis segment) {
    json.writeStartObject();
    texts("items", segment.items());
    json.writeName("agrees");
    if (segment.agrees() == null) {
      json.writeNull();
    } else {
      json.writeBoolean(segment.agrees());
    }
    json.writeArrayPropertyStart("candidates");
    segment.candidates().forEach(this::candidate);
    json.writeEndArray();
    json.writeNumberProperty("excluded", segment.excluded());
    json.writeName("next");
    next(segment.next());
    texts("notJudged", segment.notJudged());
    json.writeEndObject();
  }

  private void candidate(Candidate candidate) {
    json.writeStartObject();
    json.writeArrayPropertyStart("faults");
    for (NamedFault fault : candidate.faults()) {
      json.writeStartObject();
      json.writeStringProperty("fault", fault.fault());
      texts("at", fault.at());
      word("side", fault.side());
      texts("conductors", fault.conductors());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void next(@Nullable NextMeasurement next) {
    if (next == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    json.writeStringProperty("reading", next.reading());
    json.writeStringProperty("at", next.at());
    if (next.side() != null) {
      word("side", next.side());
    }
    if (next.toward() != null) {
      word("toward", next.toward());
    }
    json.writeEndObject();
  }

  private void word(String name, @Nullable Word word) {
    json.writeName(name);
    if (word == null) {
      json.writeNull();
    } else {
      json.writeString(word.word());
    }
  }

  private void texts(String name, List<String> texts) {
    json.writeArrayPropertyStart(name);
    texts.forEach(json::writeString);
    json.writeEndArray();
  }
}
