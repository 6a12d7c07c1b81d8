package org.headhouse.linter.report.sheet;

import org.headhouse.linter.Example;

/** Texts that a page must survive. */
final class Hostile {
  private Hostile() {}

  static final String SCRIPT = "</title><script>document.title='x'</script>";
  static final String QUOTES = "a\" onmouseover=\"x' `${1+1}` &amp; <img src=x onerror=y>";
  static final String TURNED = "\u202Egnp.yab\u202C \u2066left\u2069 \u05D0\u05D1 \u0007";
  static final String LONG = "W".repeat(200);

  /** The example with a title and three names in double quotes, as YAML escapes them. */
  static String site(String title, String head, String second, String third) {
    return Example.SITE
            .replace("stage: planned", "title: " + quoted(title) + "\nstage: planned")
            .replace("at: Propagation", "at: " + quoted(head))
            .replace("unit: Propagation", "unit: " + quoted(head))
            .replace("unit: Seedling North", "unit: " + quoted(second))
            .replace("unit: Hardening Bay", "unit: " + quoted(third))
        + "suppressions: [{rule: name.too-long, justification: "
        + quoted(title)
        + "}]\n"
        + "supervision: {link: serial, zones: ["
        + String.join(", ", quoted(head), quoted(second), quoted(third))
        + "]}\n";
  }

  /** All of them in one site. */
  static String site() {
    return site(SCRIPT, QUOTES, TURNED, LONG);
  }

  /** More than any key may hold: a value that is not understood, and quoted in results. */
  static String tooLong() {
    return site("t".repeat(10_000), "x".repeat(10_000), "y ".repeat(5_000) + "z", SCRIPT);
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
              } else if (c < 0x20 || c > 0x7E) {
                quoted.append("\\u%04X".formatted(c));
              } else {
                quoted.appendCodePoint(c);
              }
            });
    return quoted.append('"').toString();
  }
}
