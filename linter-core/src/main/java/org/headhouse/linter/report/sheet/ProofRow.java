package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Measured;
import org.headhouse.linter.site.Meter;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Site;

/**
 * One visit on which something was proved.
 *
 * @param day in words
 * @param by the name as it is written
 * @param what the whole line, or what was proved again
 * @param resistance of the line at the head unit; empty for none
 * @param voltage of the idle line at the head unit; empty for none
 * @param meter what was measured with; empty for nothing
 */
record ProofRow(
    String day, String by, String what, String resistance, String voltage, String meter) {
  private static final int MOST_EARLIER = 4;

  /** The visits of the record, then the latest of the earlier ones. */
  static List<ProofRow> of(Site site, ProofHistory history) {
    List<ProofRow> rows = new ArrayList<>();
    Commissioning commissioning = site.commissioning().orNull();
    if (commissioning != null) {
      for (ProvingRecord record : commissioning.records()) {
        rows.add(of(record, rows.isEmpty()));
      }
    }
    history.earlier().stream()
        .limit(MOST_EARLIER)
        .forEach(
            proof ->
                rows.add(
                    new ProofRow(
                        SpokenText.day(proof.day()),
                        PlainText.name(proof.by()),
                        "an earlier proof, in revision " + proof.revision(),
                        SpokenText.quantity(proof.pairResistance()),
                        SpokenText.quantity(proof.idleVoltage()),
                        "")));
    return rows;
  }

  private static ProofRow of(ProvingRecord record, boolean first) {
    LocalDate day = record.dayOrNull();
    Measured measured = record.measured().orNull();
    String reason = PlainText.name(record.reason().or(""));
    return new ProofRow(
        day == null ? "no date" : SpokenText.day(day),
        PlainText.name(record.by().or("nobody")),
        first ? "the line" : reason.isEmpty() ? "proved again" : "proved again: " + reason,
        measured == null
            ? ""
            : measured
                .pairResistance()
                .optional()
                .map(value -> SpokenText.quantity(value.written()))
                .orElse(""),
        measured == null
            ? ""
            : measured
                .idleVoltage()
                .optional()
                .map(value -> SpokenText.quantity(value.written()))
                .orElse(""),
        record.meter().optional().map(ProofRow::meter).orElse(""));
  }

  /** {@code true-RMS hand meter, number M-118, calibrated until 31 January 2027}. */
  static String meter(Meter meter) {
    List<String> words = new ArrayList<>();
    meter.type().optional().map(PlainText::name).ifPresent(words::add);
    meter
        .serialNumber()
        .optional()
        .ifPresent(number -> words.add("number " + PlainText.name(number)));
    meter
        .calibratedUntil()
        .optional()
        .ifPresent(until -> words.add("calibrated until " + SpokenText.day(until)));
    return String.join(", ", words);
  }
}
