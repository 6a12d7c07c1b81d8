package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.site.Site;

/**
 * The zones of a site for the supervising software, as RFC 4180 has it: a line of headings, fields
 * in quotes where they need it, lines that end with CR LF; in UTF-8. The fields are what the file
 * holds; one that a spreadsheet would run as a formula has an apostrophe in front, which shows it
 * as text (OWASP, CSV Injection).
 */
public final class ZonesCsv {
  private static final List<String> HEADINGS =
      List.of("zone", "address", "role", "device-type", "ip");

  private static final String STARTS_OF_FORMULAS = "=+-@\t\r";

  private ZonesCsv() {}

  /** The whole file. */
  public static byte[] of(Site site) {
    Stream<List<String>> zones =
        Zone.of(site).stream()
            .map(
                zone ->
                    List.of(
                        zone.name(), zone.address(), zone.role(), zone.deviceType(), zone.ip()));
    return Stream.concat(Stream.of(HEADINGS), zones)
        .map(ZonesCsv::line)
        .collect(Collectors.joining())
        .getBytes(UTF_8);
  }

  private static String line(List<String> fields) {
    return fields.stream().map(ZonesCsv::field).collect(Collectors.joining(",", "", "\r\n"));
  }

  private static String field(String text) {
    String safe = isFormula(text) ? "'" + text : text;
    boolean plain = safe.chars().noneMatch(c -> c == '"' || c == ',' || c == '\r' || c == '\n');
    return plain ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
  }

  private static boolean isFormula(String text) {
    return !text.isEmpty() && STARTS_OF_FORMULAS.indexOf(text.charAt(0)) >= 0;
  }
}
