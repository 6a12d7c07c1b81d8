package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
   * @param settings with the day on which an exception is open or has expired
   */
  public static List<InventoryRow> of(SiteFacts facts, SheetSettings settings) {
    Site site = facts.site();
    LocalDate today = settings.date();
    WholeLineProof proof =
        CertificateVerdict.isUnproved(facts, settings)
            ? new WholeLineProof(null, "", today)
            : facts.proof();
    List<InventoryRow> rows = new ArrayList<>();
    Map<String, Set<String>> exceptions = exceptions(site, today);
    Set<String> ofSite = exceptions.getOrDefault("", Set.of());
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
              Stream.concat(ofSite.stream(), ofUnit(unit, exceptions).stream())
                  .distinct()
                  .collect(Collectors.joining("; "))));
    }
    return rows;
  }

  private static Set<String> ofUnit(Unit unit, Map<String, Set<String>> exceptions) {
    String name = unit.name().or("");
    return name.isEmpty() ? Set.of() : exceptions.getOrDefault(name, Set.of());
  }

  private static String word(Setting<? extends Word> setting) {
    return setting.optional().map(Word::word).orElse("");
  }

  private static String date(@Nullable LocalDate day) {
    return day == null ? "" : day.toString();
  }

  /** Those of the whole site, under the empty name, and those of each unit. */
  private static Map<String, Set<String>> exceptions(Site site, LocalDate today) {
    Map<String, Set<String>> open = new HashMap<>();
    for (SuppressionEntry entry : site.suppressions()) {
      boolean isUnderstood = entry.rule().isGiven() && !entry.unit().isFaulty();
      if (isUnderstood && !entry.until().or(today).isBefore(today)) {
        open.computeIfAbsent(entry.unit().or(""), unit -> new LinkedHashSet<>()).add(words(entry));
      }
    }
    return open;
  }

  private static String words(SuppressionEntry entry) {
    return entry.rule().or("")
        + entry.until().optional().map(until -> " until " + until).orElse("");
  }
}
