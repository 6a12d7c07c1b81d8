package org.headhouse.linter.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Inputs in a text file: one a line, so that a difference between two versions can be read. What is
 * no printable ASCII character stands there as {@code \n} or as {@code \x} and two digits.
 */
public final class Inputs {
  private static final Pattern BYTE = Pattern.compile("[^\\\\]|\\\\x..|\\\\.");

  private Inputs() {}

  /** The inputs that were kept for a subject. */
  public static List<byte[]> of(Path folder, Subject subject) throws IOException {
    return Files.readAllLines(file(folder, subject)).stream().map(Inputs::bytes).toList();
  }

  /** Keeps inputs for a subject. */
  public static void write(Path folder, Subject subject, List<byte[]> inputs) throws IOException {
    Files.writeString(
        file(folder, subject),
        inputs.stream().map(input -> text(input) + "\n").sorted().collect(Collectors.joining()));
  }

  private static Path file(Path folder, Subject subject) {
    return folder.resolve(subject.word() + ".txt");
  }

  static String text(byte[] input) {
    StringBuilder text = new StringBuilder(input.length + 16);
    for (byte one : input) {
      int c = one & 0xFF;
      if (c == '\n') {
        text.append("\\n");
      } else if (c == '\\') {
        text.append("\\\\");
      } else if (c < ' ' || c > '~') {
        text.append(String.format(Locale.ROOT, "\\x%02x", c));
      } else {
        text.append((char) c);
      }
    }
    return text.toString();
  }

  static byte[] bytes(String text) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Matcher matcher = BYTE.matcher(text);
    while (matcher.find()) {
      String one = matcher.group();
      if (one.length() == 1) {
        bytes.write(one.charAt(0));
      } else if (one.charAt(1) == 'x') {
        bytes.write(Integer.parseInt(one.substring(2), 16));
      } else {
        bytes.write(one.equals("\\n") ? '\n' : one.charAt(1));
      }
    }
    return bytes.toByteArray();
  }
}
