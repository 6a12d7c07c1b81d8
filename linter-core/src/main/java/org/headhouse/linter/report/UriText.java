package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Locale;
import org.headhouse.linter.stability.Internal;

/** Writes a path as a URI reference (RFC 3986). */
@Internal
public final class UriText {
  private static final String PLAIN = "-._~!$&'()*+,;=@/";

  private UriText() {}

  /** The reference; a colon in it is escaped, so that nothing is taken for a scheme. */
  public static String of(String path) {
    StringBuilder uri = new StringBuilder();
    for (byte b : path.getBytes(UTF_8)) {
      char c = (char) (b & 0xFF);
      boolean plain =
          (c >= 'a' && c <= 'z')
              || (c >= 'A' && c <= 'Z')
              || (c >= '0' && c <= '9')
              || PLAIN.indexOf(c) >= 0;
      uri.append(plain ? String.valueOf(c) : String.format(Locale.ROOT, "%%%02X", (int) c));
    }
    return uri.toString();
  }
}
