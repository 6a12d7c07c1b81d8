package org.headhouse.linter.report;

import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.Replacement;

/** The fix of a result, as the property {@code fixes} of SARIF 2.1.0 (chapter 3.55). */
final class SarifFix {
  private SarifFix() {}

  /**
   * Writes the property.
   *
   * @param file the file of the result
   * @param places how it is called
   */
  static void write(JsonWriter json, Fix fix, String file, SarifPlaces places) {
    json.writeArrayPropertyStart("fixes");
    json.writeStartObject();
    SarifPlaces.text(json, "description", fix.description());
    json.writeArrayPropertyStart("artifactChanges");
    json.writeStartObject();
    places.artifact(json, file);
    json.writeArrayPropertyStart("replacements");
    for (Replacement replacement : fix.replacements()) {
      json.writeStartObject();
      SarifPlaces.region(json, "deletedRegion", replacement.region());
      if (!replacement.text().isEmpty()) {
        SarifPlaces.text(json, "insertedContent", replacement.text());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndArray();
    json.writeObjectPropertyStart("properties");
    json.writeStringProperty("kind", fix.kind().word());
    json.writeEndObject();
    json.writeEndObject();
    json.writeEndArray();
  }
}
