package org.headhouse.linter.report;

import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.materials.BillOfMaterials;
import org.headhouse.linter.materials.MaterialCount;
import org.headhouse.linter.materials.Slack;
import org.jspecify.annotations.Nullable;

/** Materials as JSON; what cannot be counted is null. */
record MaterialsJson(JsonWriter json, Slack slack) {

  /** Writes one property with an array. */
  void write(String name, BillOfMaterials bill) {
    json.writeArrayPropertyStart(name);
    bill.counts().forEach(count -> write(count, bill.measure()));
    json.writeEndArray();
  }

  private void write(MaterialCount count, Measure measure) {
    json.writeStartObject();
    json.writeStringProperty("material", count.material().word());
    json.writeStringProperty("type", count.type());
    number("amount", count.amountIn(measure));
    json.writeStringProperty("unit", count.material().isLength() ? measure.unit() : "pieces");
    number("toOrder", count.toOrder(measure, slack));
    json.writeArrayPropertyStart("notCounted");
    count.notCounted().forEach(json::writeString);
    json.writeEndArray();
    json.writeEndObject();
  }

  private void number(String name, @Nullable Double value) {
    json.writeName(name);
    if (value == null) {
      json.writeNull();
    } else {
      json.writeNumber(value);
    }
  }
}
