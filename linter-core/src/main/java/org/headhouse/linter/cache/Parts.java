package org.headhouse.linter.cache;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Texts, lists and what may be missing, as bytes. */
final class Parts {
  private static final int NOTHING = 0;
  private static final int SHORT_TEXT = 1;
  private static final int LONG_TEXT = 2;

  /** Whose modified UTF-8, three bytes a character at most, always fits its length of two bytes. */
  private static final int LONGEST_SHORT_TEXT = 0xFFFF / 3;

  private Parts() {}

  /** Writes one thing. */
  @FunctionalInterface
  interface Writer<T> {
    void write(T thing, DataOutputStream out) throws IOException;
  }

  /** Reads one thing. */
  @FunctionalInterface
  interface Reader<T> {
    T read(DataInputStream in) throws IOException;
  }

  /** Writes a text so that half a pair of surrogates, which UTF-8 has no form for, is kept too. */
  static void text(@Nullable String text, DataOutputStream out) throws IOException {
    if (text == null) {
      out.writeByte(NOTHING);
    } else if (text.length() <= LONGEST_SHORT_TEXT) {
      out.writeByte(SHORT_TEXT);
      out.writeUTF(text);
    } else {
      out.writeByte(LONG_TEXT);
      out.writeInt(text.length());
      out.writeChars(text);
    }
  }

  static String text(DataInputStream in) throws IOException {
    String text = textOrNull(in);
    if (text == null) {
      throw new IOException("a text is missing");
    }
    return text;
  }

  static @Nullable String textOrNull(DataInputStream in) throws IOException {
    return switch (in.readByte()) {
      case NOTHING -> null;
      case SHORT_TEXT -> in.readUTF();
      case LONG_TEXT -> longText(in);
      default -> throw new IOException("no text stands here");
    };
  }

  private static String longText(DataInputStream in) throws IOException {
    int length = in.readInt();
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < length; i++) {
      text.append(in.readChar());
    }
    return text.toString();
  }

  static <T> void list(List<T> things, DataOutputStream out, Writer<T> writer) throws IOException {
    out.writeInt(things.size());
    for (T thing : things) {
      writer.write(thing, out);
    }
  }

  static <T> List<T> list(DataInputStream in, Reader<T> reader) throws IOException {
    int size = in.readInt();
    List<T> things = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      things.add(reader.read(in));
    }
    return things;
  }

  static <T> void optional(@Nullable T thing, DataOutputStream out, Writer<T> writer)
      throws IOException {
    out.writeBoolean(thing != null);
    if (thing != null) {
      writer.write(thing, out);
    }
  }

  static <T> @Nullable T optional(DataInputStream in, Reader<T> reader) throws IOException {
    return in.readBoolean() ? reader.read(in) : null;
  }
}
