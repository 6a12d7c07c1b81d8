package org.headhouse.linter.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * Writes JSON piece by piece. What the stream behind it throws leaves as an {@link
 * UncheckedIOException}, so that the pieces can be written from within lambdas.
 */
final class JsonWriter implements AutoCloseable {
  private final JsonGenerator json;

  JsonWriter(JsonGenerator json) {
    this.json = json;
  }

  private interface Piece {
    void write() throws IOException;
  }

  private static void write(Piece piece) {
    try {
      piece.write();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  void writeStartObject() {
    write(json::writeStartObject);
  }

  void writeEndObject() {
    write(json::writeEndObject);
  }

  void writeStartArray() {
    write(json::writeStartArray);
  }

  void writeEndArray() {
    write(json::writeEndArray);
  }

  void writeName(String name) {
    write(() -> json.writeFieldName(name));
  }

  void writeObjectPropertyStart(String name) {
    write(() -> json.writeObjectFieldStart(name));
  }

  void writeArrayPropertyStart(String name) {
    write(() -> json.writeArrayFieldStart(name));
  }

  void writeStringProperty(String name, String value) {
    write(() -> json.writeStringField(name, value));
  }

  void writeNumberProperty(String name, int value) {
    write(() -> json.writeNumberField(name, value));
  }

  void writeNumberProperty(String name, double value) {
    write(() -> json.writeNumberField(name, value));
  }

  void writeBooleanProperty(String name, boolean value) {
    write(() -> json.writeBooleanField(name, value));
  }

  void writeNullProperty(String name) {
    write(() -> json.writeNullField(name));
  }

  void writeString(String value) {
    write(() -> json.writeString(value));
  }

  void writeNumber(double value) {
    write(() -> json.writeNumber(value));
  }

  void writeBoolean(boolean value) {
    write(() -> json.writeBoolean(value));
  }

  void writeNull() {
    write(json::writeNull);
  }

  void writeRaw(char character) {
    write(() -> json.writeRaw(character));
  }

  /** Ends the JSON; the stream stays open. */
  @Override
  public void close() {
    write(json::close);
  }
}
