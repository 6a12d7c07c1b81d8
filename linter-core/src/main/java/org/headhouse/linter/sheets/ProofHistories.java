package org.headhouse.linter.sheets;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.headhouse.linter.change.TypeFacts;
import org.headhouse.linter.check.RuleCatalogue;
import org.headhouse.linter.check.SettingsCheck;
import org.headhouse.linter.check.SiteReader;
import org.headhouse.linter.report.FileHistory;
import org.headhouse.linter.report.SiteHistory;
import org.headhouse.linter.report.sheet.ProofHistory;
import org.headhouse.linter.report.sheet.ProofHistory.EarlierProof;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Measured;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Quantity;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Sha256;

/** Reads what the earlier states of a file say of its proofs. Safe for several threads. */
final class ProofHistories {
  /** A line that is proved each year, and changed now and then, has fewer. */
  private static final int MOST_VERSIONS = 60;

  private final SiteHistory history;
  private final DeviceTypes types;
  private final RuleCatalogue rules;
  private final Limits limits;
  private final Map<String, DeviceTypes> otherTypes = new ConcurrentHashMap<>();

  /**
   * @param types the device types of now
   * @param rules what the device types of earlier states are read with
   */
  ProofHistories(SiteHistory history, DeviceTypes types, RuleCatalogue rules, Limits limits) {
    this.history = history;
    this.types = types;
    this.rules = rules;
    this.limits = limits;
  }

  ProofHistory of(InputFile file, byte[] content, Site now) {
    FileHistory known = history.of(file, content);
    if (!known.isKnown()) {
      return ProofHistory.UNKNOWN;
    }
    Set<String> days = new HashSet<>();
    Commissioning record = now.commissioning().orNull();
    if (record != null) {
      record.records().forEach(one -> days.add(key(one)));
    }
    List<EarlierProof> earlier = new ArrayList<>();
    RecordComparison comparison = new RecordComparison(now);
    boolean whole = known.isWhole();
    String factsNow = TypeFacts.of(now, types);
    Set<String> read = new HashSet<>(Set.of(Sha256.hex(content) + factsNow));
    for (FileHistory.Version version : known.earlier()) {
      try {
        byte[] bytes = version.content().read();
        DeviceTypes then = types(version);
        // Other types in the file, or another title of one, make no other state of this line.
        if (!read.add(Sha256.hex(bytes) + TypeFacts.of(now, then))) {
          continue;
        }
        if (read.size() > MOST_VERSIONS + 1) {
          whole = false;
          break;
        }
        Site site = new SiteReader(then, limits).read(file.path(), bytes);
        if (site != null) {
          comparison.with(site);
          collect(site, version.revision(), days, earlier);
        }
      } catch (IOException unreadable) {
        whole = false;
      }
    }
    earlier.sort(Comparator.comparing(EarlierProof::day).reversed());
    return new ProofHistory(
        true, whole, known.revision(), earlier, comparison.isOutdated(), comparison.unproved());
  }

  private DeviceTypes types(FileHistory.Version version) throws IOException {
    FileHistory.Content others = version.deviceTypes();
    if (others == null) {
      return types;
    }
    byte[] bytes = others.read();
    return otherTypes.computeIfAbsent(
        Sha256.hex(bytes),
        it -> new SettingsCheck(rules, limits).deviceTypes("device-types.yaml", bytes));
  }

  private static void collect(
      Site site, String revision, Set<String> days, List<EarlierProof> earlier) {
    Commissioning record = site.commissioning().orNull();
    for (ProvingRecord one : record == null ? List.<ProvingRecord>of() : record.records()) {
      LocalDate day = one.dayOrNull();
      if (day != null && days.add(key(one))) {
        Measured measured = one.measured().orNull();
        earlier.add(
            new EarlierProof(
                day,
                one.by().or(""),
                measured == null ? "" : written(measured.pairResistance()),
                measured == null ? "" : written(measured.idleVoltage()),
                revision));
      }
    }
  }

  private static String written(Setting<? extends Quantity> value) {
    return value.optional().map(Quantity::written).orElse("");
  }

  /** A record of one day and one person is one, also where its values were corrected. */
  private static String key(ProvingRecord record) {
    return record.dayOrNull() + " " + record.by().or("");
  }
}
