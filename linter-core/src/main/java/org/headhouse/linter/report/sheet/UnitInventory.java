package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.proof.WholeLineProof;
import org.headhouse.linter.report.InventoryRow;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SuppressionEntry;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.Word;
import org.jspecify.annotations.Nullable;

/** The units of a site for the inventory of all sites, in the order of the chain. */
public final class UnitInventory {
  private UnitInventory() {}

  /**
   * One row for each unit.
   *
   * @param today on which an exception is open or has expired
   */
  public static List<InventoryRow> of(Site site, WholeLineProof proof, LocalDate today) {
    List<InventoryRow> rows = new ArrayList<>();
    for (Unit unit : site.units()) {
      rows.add(
          new InventoryRow(
              site.customer().or(""),
              site.id().or(site.source().path()),
              unit.name().or(""),
              word(unit.role()),
              unit.address().optional().map(String::valueOf).orElse(""),
              unit.deviceType().or(""),
              unit.firmware().or(""),
              unit.device().serialNumber().or(""),
              word(unit.vents()),
              unit.network().optional().flatMap(it -> it.ip().optional()).orElse(""),
              word(site.stage()),
              date(proof.day()),
              proof.by(),
              date(proof.next()),
              exceptions(site, unit, today)));
    }
    return rows;
  }

  private static String word(Setting<? extends Word> setting) {
    return setting.optional().map(Word::word).orElse("");
  }

  private static String date(@Nullable LocalDate day) {
    return day == null ? "" : day.toString();
  }

  private static String exceptions(Site site, Unit unit, LocalDate today) {
    return site.suppressions().stream()
        .filter(entry -> entry.rule().isGiven())
        .filter(entry -> entry.unit().isMissing() || isOf(entry, unit))
        .filter(entry -> !entry.until().or(today).isBefore(today))
        .map(UnitInventory::words)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static boolean isOf(SuppressionEntry entry, Unit unit) {
    return entry.unit().isGiven() && unit.name().is(entry.unit().or(""));
  }

  private static String words(SuppressionEntry entry) {
    return entry.rule().or("")
        + entry.until().optional().map(until -> " until " + until).orElse("");
  }
}
