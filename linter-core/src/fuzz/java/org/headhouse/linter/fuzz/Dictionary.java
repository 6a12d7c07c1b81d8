package org.headhouse.linter.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.headhouse.linter.rules.BuiltInRules;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.SchemaWords;

/** Words that the fuzzer puts into its inputs. */
final class Dictionary {
  private static final String[] SIGNS = {
    "\t",
    "\r\n",
    "\u0085",
    "\u2028",
    "\uFEFF",
    "\uD83C\uDF31",
    "\u200B",
    "\u202E",
    "e\u0301",
    "&a ",
    "*a",
    "<<: *a",
    "<<: [*a, *b]",
    "!!str ",
    "!!int ",
    "!x ",
    "---\n",
    "...\n",
    "%YAML 1.1\n",
    "# c\n",
    "? ",
    ": ",
    "- ",
    "|\n",
    ">-\n",
    "|2+\n",
    "\\u0000",
    "\\uD800",
    "\\U0001F331",
    "~",
    "NO",
    "010",
    "0o17",
    "0x1F",
    "1_000",
    "12:30",
    "1e20",
    "1e-400",
    ".inf",
    "-.inf",
    ".nan",
    "-0.0",
    "999999999999",
    "99999999999999999999",
    "2026-02-30",
    "0 m",
    "42 m",
    "120 ft",
    "-5 degC",
    "1234567890 m",
    "120 ohm + 1 nF",
    "1/8",
    "1/0",
    "192.168.40.12/24",
    "999.1.1.1/33",
    "\"\"",
    "\"\"\"\"",
    ";",
    "m)",
    "\\\"",
    "{\"",
    "\":\"",
    "\"times\":2147483647",
    "\"level\":\"error\"",
    "<<<<<<<"
  };

  private Dictionary() {}

  /** The words in the form of libFuzzer: each in quotes, bytes as two digits. */
  static String text() {
    Set<String> words = new TreeSet<>(Set.of(SIGNS));
    for (FileKind kind : FileKind.values()) {
      words.addAll(SchemaWords.of(kind));
    }
    BuiltInRules.all().forEach(rule -> words.add(rule.descriptor().id()));
    return words.stream().map(Dictionary::line).collect(Collectors.joining());
  }

  private static String line(String word) {
    StringBuilder line = new StringBuilder("\"");
    for (byte one : word.getBytes(UTF_8)) {
      boolean plain = one >= ' ' && one <= '~' && one != '"' && one != '\\';
      line.append(plain ? String.valueOf((char) one) : String.format("\\x%02X", one & 0xFF));
    }
    return line.append("\"\n").toString();
  }
}
