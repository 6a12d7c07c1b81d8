package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.site.Site;

/**
 * What is measured and seen on site.
 *
 * @param scope which steps apply
 * @param supplies what is switched off before the pair is measured
 * @param runs of cable, tested before they are landed
 * @param terminators those that are back in place before power returns
 * @param notices what to expect in the houses once the broadcast stops
 * @param byHand the names of the units whose vents stay where they are when readings stop, joined;
 *     empty for none
 * @param recorded the record that the file has
 * @param record the part of the file that records the proof
 */
record Proving(
    ProvingScope scope,
    List<SupplyRow> supplies,
    List<RunRow> runs,
    List<String> terminators,
    List<Measurement> measurements,
    List<StaleNotice> notices,
    List<UnitProof> units,
    String byHand,
    RecordFacts recorded,
    String record) {

  Proving {
    supplies = List.copyOf(supplies);
    runs = List.copyOf(runs);
    terminators = List.copyOf(terminators);
    measurements = List.copyOf(measurements);
    notices = List.copyOf(notices);
    units = List.copyOf(units);
  }

  static Proving of(SiteFacts facts, SheetSettings settings) {
    Site site = facts.site();
    return new Proving(
        ProvingScope.of(site),
        SupplyRow.of(site),
        RunRow.of(facts.figures().segments(), settings.measure(), settings.policy().tolerances()),
        Terminators.of(site),
        Measurements.of(site, facts.figures(), settings.policy().ohmmeter()),
        StaleNotice.of(site),
        UnitProof.of(site),
        VentWords.stayingOpen(site),
        RecordFacts.of(site),
        CommissioningRecord.of(site, facts.figures().segments(), settings.measure()));
  }

  /** What is measured with the supplies off, or with the power on and nobody sending. */
  List<Measurement> measurements(boolean powered) {
    return measurements.stream()
        .filter(one -> one.state().equals(Measurements.ON) == powered)
        .toList();
  }

  /** The units with vents, and those that may have some. */
  List<UnitProof> moving() {
    return units.stream().filter(UnitProof::mayMove).toList();
  }

  /** The names of the units that move no vents, joined. */
  String still() {
    return String.join(
        ", ", units.stream().filter(unit -> !unit.mayMove()).map(UnitProof::name).toList());
  }
}
