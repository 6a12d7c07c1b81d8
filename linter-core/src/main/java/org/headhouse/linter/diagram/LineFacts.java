package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;

/** The facts of a whole line, as a sentence without its full stop. */
final class LineFacts {
  private LineFacts() {}

  static String of(Site site, Measure measure) {
    List<String> facts = new ArrayList<>();
    facts.add(count(site.units().size(), "unit"));
    facts.add(count(Math.max(1, site.segments().size()), "segment"));
    facts.add(length(site, measure));
    site.line().optional().ifPresent(line -> line(line, facts));
    if (site.weatherStation().isGiven() && ResultMarks.stationAt(site) < 0) {
      facts.add("the unit with the weather station is not known");
    }
    return String.join(", ", facts);
  }

  private static String count(int number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }

  private static String length(Site site, Measure measure) {
    double metres = 0;
    for (ChainItem item : site.items().subList(0, Math.max(0, site.items().size() - 1))) {
      Length length = item.cableToNext().orNull();
      if (length == null) {
        return "length of the cable not known";
      }
      metres += length.metres();
    }
    return measure.length(metres) + " of cable";
  }

  private static void line(LineSettings line, List<String> facts) {
    Cable cable = line.cable().orNull();
    if (cable != null) {
      cable.gauge().optional().ifPresent(gauge -> facts.add(gauge.written()));
      cable
          .shielded()
          .optional()
          .ifPresent(shielded -> facts.add(shielded ? "shielded" : "not shielded"));
      cable.impedance().optional().ifPresent(ohms -> facts.add(ohms.written()));
    }
    line.baud().optional().ifPresent(baud -> facts.add(baud + " bit/s"));
    line.parity()
        .optional()
        .ifPresent(
            parity ->
                facts.add(parity.word().equals("none") ? "no parity" : parity.word() + " parity"));
    line.stopBits().optional().ifPresent(bits -> facts.add(count(bits, "stop bit")));
  }
}
