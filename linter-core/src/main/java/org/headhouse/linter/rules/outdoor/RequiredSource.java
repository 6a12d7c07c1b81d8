package org.headhouse.linter.rules.outdoor;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.site.Outdoor;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The one source from which a unit must take every reading of the weather station.
 *
 * @param source where the readings must come from
 * @param reason what happens otherwise, by whether a reading that warns of a storm is concerned
 * @param wrong what is said of a reading that comes from elsewhere
 */
record RequiredSource(ReadingSource source, Reason reason, Fact wrong) {
  private static final Set<Reading> OF_STORMS =
      Set.of(Reading.WIND_SPEED, Reading.WIND_DIRECTION, Reading.RAIN);

  @FunctionalInterface
  interface Reason {
    String of(boolean storm);
  }

  @FunctionalInterface
  interface Fact {
    String of(String unit, String readings, ReadingSource source);
  }

  /**
   * Reports each reading that comes from elsewhere, and once all that have no source.
   *
   * @param measured the readings of the weather station
   */
  void check(Unit unit, List<Reading> measured, RuleContext context) {
    Outdoor outdoor = unit.outdoor().orNull();
    if (outdoor != null && outdoor.forAll()) {
      checkAll(unit, outdoor, measured, context);
      return;
    }
    List<Reading> missing = new ArrayList<>(0);
    for (Reading reading : measured) {
      Setting<ReadingSource> given = outdoor == null ? null : outdoor.source(reading);
      if (given == null || given.isMissing()) {
        missing.add(reading);
      } else if (given.isGiven() && !given.is(source)) {
        reportWrong(unit, reading, given, context);
      }
    }
    if (!missing.isEmpty()) {
      reportMissing(unit, outdoor, missing, context);
    }
  }

  /** One word for all readings is one mistake. */
  private void checkAll(Unit unit, Outdoor outdoor, List<Reading> measured, RuleContext context) {
    Setting<ReadingSource> all = measured.isEmpty() ? null : outdoor.source(measured.get(0));
    if (all != null && all.isGiven() && !all.is(source)) {
      String readings = measured.stream().map(Reading::word).collect(Collectors.joining(", "));
      context.report(
          context
              .finding(
                  all.place(),
                  new Message(
                      wrong.of(called(unit), readings, all.or(ReadingSource.NONE)),
                      reason.of(measured.stream().anyMatch(OF_STORMS::contains)),
                      "set the unit and the file to outdoor: " + source.word()))
              .fixedBy(fix(readings, unit, Edit.write(all.place(), source.word()))));
    }
  }

  private void reportWrong(
      Unit unit, Reading reading, Setting<ReadingSource> given, RuleContext context) {
    context.report(
        context
            .finding(
                given.place(),
                new Message(
                    wrong.of(called(unit), reading.word(), given.or(ReadingSource.NONE)),
                    reason.of(OF_STORMS.contains(reading)),
                    "set the unit and the file to " + reading.word() + ": " + source.word()))
            .about(reading.word())
            .fixedBy(fix(reading.word(), unit, Edit.write(given.place(), source.word()))));
  }

  /**
   * @param outdoor null where the unit says nothing at all
   */
  private void reportMissing(
      Unit unit, @Nullable Outdoor outdoor, List<Reading> missing, RuleContext context) {
    List<String> readings = missing.stream().map(Reading::word).toList();
    String entry = ": " + source.word();
    context.report(
        context
            .finding(
                outdoor == null ? unit.name().place() : outdoor.place(),
                new Message(
                    called(unit)
                        + " does not say where it takes "
                        + String.join(", ", readings)
                        + " from",
                    reason.of(missing.stream().anyMatch(OF_STORMS::contains)),
                    "set the unit and the file to " + String.join(entry + ", ", readings) + entry))
            .about(
                readings.stream()
                    .map(reading -> new Finding.Case(unit.name().orNull(), reading))
                    .toList())
            .fixedBy(
                fix(
                    String.join(", ", readings),
                    unit,
                    outdoor == null
                        ? Edit.addKey(
                            unit.place(),
                            "termination",
                            "outdoor",
                            readings.stream()
                                .map(reading -> reading + entry)
                                .collect(Collectors.joining(", ", "{", "}")))
                        : new Edit.AddKeys(outdoor.place(), "", readings, source.word()))));
  }

  private FixDraft fix(String readings, Unit unit, Edit edit) {
    return FixDraft.onSite(
        "Set "
            + unit.called()
            + " to take "
            + readings
            + (source == ReadingSource.HEAD ? " from the head unit" : " as " + source.word()),
        edit);
  }

  private static String called(Unit unit) {
    return (unit.isHead() ? "the head unit " : "") + unit.called();
  }
}
