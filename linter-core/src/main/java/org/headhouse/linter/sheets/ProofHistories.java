package org.headhouse.linter.sheets;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.check.SiteReader;
import org.headhouse.linter.report.FileHistory;
import org.headhouse.linter.report.SiteHistory;
import org.headhouse.linter.report.sheet.ProofHistory;
import org.headhouse.linter.report.sheet.ProofHistory.EarlierProof;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Measured;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Quantity;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.InputFile;

/** Reads what the earlier states of a file say of its proofs. Safe for several threads. */
final class ProofHistories {
  /** A line that is proved each year, and changed now and then, has fewer. */
  private static final int MOST_VERSIONS = 60;

  private final SiteHistory history;
  private final SiteReader reader;

  ProofHistories(SiteHistory history, SiteReader reader) {
    this.history = history;
    this.reader = reader;
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
    boolean whole = known.isWhole() && known.earlier().size() <= MOST_VERSIONS;
    for (FileHistory.Version version : known.earlier().stream().limit(MOST_VERSIONS).toList()) {
      try {
        Site site = reader.read(file.path(), version.content().read());
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
