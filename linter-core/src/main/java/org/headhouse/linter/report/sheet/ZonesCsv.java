package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.report.CsvLine;
import org.headhouse.linter.site.Site;

/**
 * The zones of a site for the supervising software, as RFC 4180 has it, with a line of headings; in
 * UTF-8. The fields are what the file holds, but for the apostrophe in front of a formula ({@link
 * CsvLine}).
 */
public final class ZonesCsv {
  private static final List<String> HEADINGS =
      List.of("zone", "address", "role", "device-type", "ip");

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
        .map(CsvLine::of)
        .collect(Collectors.joining())
        .getBytes(UTF_8);
  }
}
