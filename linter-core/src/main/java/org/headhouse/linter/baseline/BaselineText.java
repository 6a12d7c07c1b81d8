package org.headhouse.linter.baseline;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.source.RegularFile;
import org.headhouse.linter.source.Utf8;
import org.jspecify.annotations.Nullable;

/**
 * The form of a baseline: a JSON object a line, the first with the number of the format, the others
 * sorted, so that a version control system merges them well. Lines that a merge left unsorted or
 * twice do no harm.
 */
final class BaselineText {
  static final int FORMAT = 1;
  static final String FORMAT_KEY = "baseline-format";

  /** Some thousand sites with a dozen results each, which take about 40 MB of memory. */
  static final int MOST_LINES = 50_000;

  static final int MOST_BYTES = 10 << 20;

  private static final String DIVIDE =
      "fix some of the results, or divide the sites into folders with a baseline each";

  private BaselineText() {}

  static void write(SortedMap<Entry, Integer> entries, OutputStream out) throws IOException {
    if (entries.size() >= MOST_LINES) {
      throw new IOException(
          "it would have " + (entries.size() + 1) + " lines, more than can be read; " + DIVIDE);
    }
    long written = line(Map.of(FORMAT_KEY, FORMAT), out);
    for (Map.Entry<Entry, Integer> entry : entries.entrySet()) {
      written += line(values(entry.getKey(), entry.getValue()), out);
      if (written > MOST_BYTES) {
        throw new IOException(
            "it would have more than the " + MOST_BYTES + " bytes that can be read; " + DIVIDE);
      }
    }
  }

  private static Map<String, Object> values(Entry entry, int times) {
    Identity identity = entry.identity();
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("file", entry.file());
    values.put("site", identity.site());
    values.put("at", identity.at());
    values.put("rule", entry.rule());
    values.put("unit", identity.unit());
    values.put("value", identity.value());
    values.put("level", identity.graded() == null ? null : identity.graded().word());
    values.put("detail", identity.detail());
    values.put("times", times == 1 ? null : times);
    values.values().removeIf(value -> value == null);
    return values;
  }

  /** Writes a line; returns its bytes. */
  private static int line(Map<String, Object> values, OutputStream out) throws IOException {
    byte[] line = JsonLine.of(values).getBytes(UTF_8);
    out.write(line);
    out.write('\n');
    return line.length + 1;
  }

  /** Entries and how often each is there. */
  static SortedMap<Entry, Integer> read(Path file, String name) throws IOException {
    SortedMap<Entry, Integer> entries = new TreeMap<>();
    SharedTexts texts = new SharedTexts();
    int bytesLeft = MOST_BYTES;
    try (InputStream in = new BufferedInputStream(RegularFile.open(file))) {
      int number = 0;
      boolean started = false;
      for (byte[] bytes = next(in, bytesLeft); bytes != null; bytes = next(in, bytesLeft)) {
        number++;
        bytesLeft -= bytes.length + 1;
        if (bytesLeft < 0 || number > MOST_LINES) {
          throw UnusableBaseline.damaged(name, number, tooLarge(bytesLeft < 0));
        }
        String text = text(bytes, name, number);
        if (!text.isBlank()) {
          EntryLine line = new EntryLine(object(text, name, number), texts, name, number);
          if (started) {
            entries.merge(line.entry(), line.times(), Math::max);
          } else {
            line.checkFormat();
          }
          started = true;
        }
      }
      if (!started) {
        throw UnusableBaseline.damaged(name, 1, "it is empty; " + EntryLine.REMEDY);
      }
    }
    return entries;
  }

  private static String tooLarge(boolean inBytes) {
    return "the file has more than "
        + (inBytes ? MOST_BYTES + " bytes" : MOST_LINES + " lines")
        + ", and the rest is not read; "
        + DIVIDE
        + ", and "
        + EntryLine.REMEDY;
  }

  /** A line, or the first bytes of one that is longer than what is left to read. */
  private static byte @Nullable [] next(InputStream in, int most) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    int read = in.read();
    if (read < 0) {
      return null;
    }
    while (read >= 0 && read != '\n' && line.size() < most) {
      line.write(read);
      read = in.read();
    }
    return line.toByteArray();
  }

  private static String text(byte[] bytes, String name, int number) throws UnusableBaseline {
    if (Utf8.decode(name, bytes) instanceof Utf8.Decoded.Malformed) {
      throw UnusableBaseline.damaged(name, number, "it is not UTF-8; " + EntryLine.REMEDY);
    }
    String text = new String(bytes, UTF_8);
    return number == 1 && text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static Map<?, ?> object(String text, String name, int number) throws UnusableBaseline {
    if (text.startsWith("<<<<<<<") || text.startsWith("=======") || text.startsWith(">>>>>>>")) {
      throw UnusableBaseline.damaged(
          name, number, "a mark of a merge that was not finished; " + EntryLine.REMEDY);
    }
    return JsonLine.read(text)
        .orElseThrow(
            () ->
                UnusableBaseline.damaged(
                    name, number, "it is not a JSON object on one line; " + EntryLine.REMEDY));
  }
}
