package org.headhouse.linter.check;

import static java.lang.Integer.parseInt;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.function.Supplier;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.Sha256;
import org.jspecify.annotations.Nullable;

/** The files that a check found clean, for the next one; safe for use by several threads. */
public final class CleanFiles {
  private static final int FIELDS_OF_KEY = 4;

  private final byte[] key;
  private final Map<String, String> before = new HashMap<>();
  private final Set<String> clean = new ConcurrentSkipListSet<>();

  /**
   * @param secret makes the seal; at most 64 bytes
   * @param validity all that an outcome depends on besides its file
   * @param kept what an earlier check {@link #sealed}; of no use where secret or validity differ
   */
  public CleanFiles(byte[] secret, String validity, byte[] kept) {
    key = seal(secret, validity.getBytes(UTF_8));
    byte[] lines = Arrays.copyOf(kept, Math.max(0, kept.length - key.length));
    byte[] seal = Arrays.copyOfRange(kept, lines.length, kept.length);
    if (MessageDigest.isEqual(seal, seal(key, lines))) {
      for (String line : new String(lines, UTF_8).split("\n", -1)) {
        before.put(line.split("\t", 2)[0], line);
      }
    }
  }

  /** The outcome of a file, which is checked unless these very bytes were clean before. */
  public FileOutcome outcome(String path, byte[] bytes, Supplier<FileOutcome> check) {
    String file = Sha256.hex(bytes) + path;
    String known = before.get(file);
    FileOutcome outcome =
        known == null ? check.get() : read(path, known.split("\t", -1), once(check));
    String line = known == null ? line(file, outcome) : known;
    if (line != null) {
      clean.add(line);
    }
    return outcome;
  }

  /** The lines of the files that were clean, and their seal. */
  public byte[] sealed() {
    byte[] lines = String.join("\n", clean).getBytes(UTF_8);
    byte[] seal = seal(key, lines);
    return ByteBuffer.allocate(lines.length + seal.length).put(lines).put(seal).array();
  }

  /** The line of a file, or null where there is more to its outcome than a line can hold. */
  private static @Nullable String line(String file, FileOutcome outcome) {
    List<FileOutcome.Key> keys = outcome.keys();
    String site = keys.isEmpty() || keys.get(0).site() == null ? "" : "=" + keys.get(0).site();
    List<String> fields = new ArrayList<>(List.of(file, "" + outcome.units(), site));
    boolean isAll = outcome.results().isEmpty() && outcome.notifications().isEmpty();
    Location last = null;
    for (FileOutcome.Key one : keys) {
      Location location = one.location();
      isAll &= one.suppression() == null;
      // Keys of one line, such as zones, would have its text as often as there are of them.
      String line = sharesLine(location, last) ? "" : "=" + location.line();
      Region at = location.region();
      String region =
          at.startLine() + " " + at.startColumn() + " " + at.endLine() + " " + at.endColumn();
      fields.addAll(List.of(one.rule(), one.text(), line, region));
      last = location;
    }
    return isAll && fields.stream().noneMatch(CleanFiles::isTorn)
        ? String.join("\t", fields)
        : null;
  }

  private static boolean sharesLine(Location location, @Nullable Location last) {
    return last != null && last.line().equals(location.line());
  }

  /** Whether a field would be read as two, or has half a character, which UTF-8 has no form for. */
  private static boolean isTorn(String field) {
    return field.codePoints().anyMatch(c -> c < ' ' || Character.getType(c) == Character.SURROGATE);
  }

  private static FileOutcome read(String path, String[] fields, Supplier<FileOutcome> check) {
    List<FileOutcome.Key> keys = new ArrayList<>();
    String line = "";
    String site = fields[2].isEmpty() ? null : fields[2].substring(1);
    for (int i = 3; i < fields.length; i += FIELDS_OF_KEY) {
      String rule = fields[i];
      String text = fields[i + 1];
      line = fields[i + 2].isEmpty() ? line : fields[i + 2].substring(1);
      String[] at = fields[i + 3].split(" ", -1);
      Region region =
          new Region(parseInt(at[0]), parseInt(at[1]), parseInt(at[2]), parseInt(at[3]));
      keys.add(
          new FileOutcome.Key(
              rule,
              text,
              new Location(path, region, line),
              site,
              null,
              () -> identity(check.get(), rule, text)));
    }
    return new FileOutcome(List.of(), List.of(), keys, parseInt(fields[1]));
  }

  /** A file whose keys are all shared with another one is checked once for all of them. */
  private static Supplier<FileOutcome> once(Supplier<FileOutcome> check) {
    List<FileOutcome> known = new ArrayList<>(1);
    return () -> {
      if (known.isEmpty()) {
        known.add(check.get());
      }
      return known.get(0);
    };
  }

  /** What is not kept of a key, from the file as it is. */
  private static Identity identity(FileOutcome checked, String rule, String text) {
    return checked.keys().stream()
        .filter(key -> key.rule().equals(rule) && key.text().equals(text))
        .map(key -> key.identity().get())
        .findFirst()
        .orElseThrow();
  }

  /** HMAC-SHA256 (RFC 2104). To start javax.crypto for it takes as long as to check some sites. */
  static byte[] seal(byte[] key, byte[] bytes) {
    byte[] inner = Arrays.copyOf(key, 64);
    byte[] outer = Arrays.copyOf(key, 64);
    for (int i = 0; i < inner.length; i++) {
      inner[i] ^= 0x36;
      outer[i] ^= 0x5c;
    }
    return Sha256.of(outer, Sha256.of(inner, bytes));
  }
}
