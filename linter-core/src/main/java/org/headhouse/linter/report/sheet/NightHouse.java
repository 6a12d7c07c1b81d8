package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.figures.StormSum;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.OpenMark;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.StaleAction;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.Vents;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/**
 * What the vents of one unit do where no readings come any more. What is not known counts as vents
 * that stay open.
 *
 * @param name of the unit
 * @param isHead whether it is the head unit
 * @param closing whether they close by themselves
 * @param seconds from the failure until they are shut, at most; 0 where they do not close
 * @param why they do not close by themselves, said of one house or of several; empty where they do
 */
record NightHouse(String name, boolean isHead, Closing closing, double seconds, String why) {

  /** Whether vents close by themselves. */
  enum Closing {
    /** They do, and somebody saw it. */
    SEEN,
    /** They are set to, and nobody saw it, or not as the line is now. */
    NEVER_SEEN,
    /** They do not, or nobody knows. */
    BY_HAND
  }

  /** The units that move vents, and those that may do so, along the chain. */
  static List<NightHouse> of(SiteFacts facts) {
    Site site = facts.site();
    Map<Integer, StormSum> sums = new HashMap<>();
    facts.figures().storm().sums().forEach(sum -> sums.put(sum.unit().index(), sum));
    Set<String> seen = seen(facts);
    LastSeen last = LastSeen.of(site);
    List<NightHouse> houses = new ArrayList<>();
    for (Unit unit : site.units()) {
      if (VentWords.mayMove(unit) || last.disputesNoVents(unit)) {
        houses.add(of(unit, site, sums.get(unit.index()), seen));
      }
    }
    return houses;
  }

  /**
   * The units of which the record says so. On a line that is not in use, that was changed after
   * that, or that has open points, such as what a later visit did not see, the record says nothing
   * of it as it is now.
   */
  private static Set<String> seen(SiteFacts facts) {
    Set<String> seen = new HashSet<>();
    Site site = facts.site();
    if (site.stage().is(Stage.COMMISSIONED) && !OpenMark.isIn(site.source().text())) {
      LastSeen last = LastSeen.of(site);
      for (Unit unit : site.units()) {
        if (last.of(Proof.Kind.STALE_RESPONSE, unit) != null) {
          seen.add(unit.name().or(""));
        }
      }
    }
    for (Proof proof : facts.provenance().history().unproved()) {
      seen.remove(proof.at());
    }
    return seen;
  }

  private static NightHouse of(Unit unit, Site site, @Nullable StormSum sum, Set<String> seen) {
    String name = PlainText.name(unit);
    String why = whyNot(unit, site, sum);
    Double stale = sum == null ? null : sum.time().staleSeconds();
    Interval closing = sum == null ? null : sum.closing().orNull();
    if (!why.isEmpty() || stale == null || closing == null) {
      return new NightHouse(
          name,
          unit.isHead(),
          Closing.BY_HAND,
          0,
          why.isEmpty() ? "how long the vents take is not known" : why);
    }
    return new NightHouse(
        name,
        false,
        seen.contains(unit.name().or("")) ? Closing.SEEN : Closing.NEVER_SEEN,
        stale + closing.seconds(),
        "");
  }

  private static String whyNot(Unit unit, Site site, @Nullable StormSum sum) {
    StaleAction action = unit.onStaleReadings().orNull();
    LineSettings line = site.line().orNull();
    Vents vents = unit.vents().orNull();
    if (unit.isHead()) {
      return "it is the head unit";
    }
    if (!unit.isFollower()) {
      return "the role is not known";
    }
    if (vents == null || vents == Vents.NONE) {
      return "whether there are vents is not known";
    }
    if (action == null) {
      return "what the vents do is not known";
    }
    if (!action.closes()) {
      return "the vents stay where they are";
    }
    String unaffected = unaffected(unit, site);
    if (!unaffected.isEmpty()) {
      return unaffected;
    }
    if (!unit.staleAfter().isGiven()) {
      return "after how long the vents close is not known";
    }
    if (line == null || !line.broadcast().isGiven()) {
      return "how often readings come is not known";
    }
    return sum == null || !sum.closing().isGiven() ? "how long the vents take is not known" : "";
  }

  /**
   * Why lost readings make it do nothing: local ones do not stop with the line, and none at all
   * cannot stop. Empty where they come from the head unit.
   */
  private static String unaffected(Unit unit, Site site) {
    WeatherStation station = site.weatherStation().orNull();
    if (station == null) {
      return "the file has no weather station";
    }
    Reading decisive =
        station.measures(Reading.WIND_SPEED)
            ? Reading.WIND_SPEED
            : station.measured().stream().findFirst().orElse(Reading.WIND_SPEED);
    ReadingSource source =
        unit.outdoor().optional().flatMap(all -> all.source(decisive).optional()).orElse(null);
    if (source == null) {
      return "where the readings come from is not known";
    }
    return switch (source) {
      case HEAD -> "";
      case LOCAL -> "local readings go on";
      case NONE ->
          decisive == Reading.WIND_SPEED
              ? "no reading of the wind is used"
              : "no reading of the station is used";
    };
  }
}
