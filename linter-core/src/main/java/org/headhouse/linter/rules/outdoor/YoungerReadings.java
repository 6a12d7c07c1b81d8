package org.headhouse.linter.rules.outdoor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.TrafficFit;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.line.TrafficSizing;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.site.Broadcast;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * What makes readings young enough.
 *
 * @param every the period of the broadcast, or null where it can stay
 * @param baud the rate, or null where it can stay
 */
record YoungerReadings(@Nullable String every, @Nullable Integer baud) {

  /**
   * The period, the rate, or both that keep the age within a limit. Null where nothing does.
   *
   * @param lost how many broadcasts in a row are lost
   * @param oneSilent whether it must hold while one polled unit is silent
   */
  static @Nullable YoungerReadings of(
      Traffic traffic, Site site, double ageSeconds, int lost, boolean oneSilent) {
    Wanted wanted = new Wanted(ageSeconds, lost, oneSilent);
    OptionalDouble period = wanted.period(traffic);
    if (period.isPresent()) {
      return new YoungerReadings(Shown.atMostSeconds(period.getAsDouble()), null);
    }
    OptionalInt baud = TrafficFit.nextBaud(traffic, site, wanted::isMet);
    if (baud.isPresent()) {
      return new YoungerReadings(null, baud.getAsInt());
    }
    OptionalInt both =
        TrafficFit.nextBaud(traffic, site, other -> wanted.period(other).isPresent());
    return both.isEmpty()
        ? null
        : new YoungerReadings(
            Shown.atMostSeconds(wanted.period(traffic.withBaud(both.getAsInt())).orElseThrow()),
            both.getAsInt());
  }

  private record Wanted(double ageSeconds, int lost, boolean oneSilent) {

    boolean isMet(Traffic traffic) {
      ReadingAge age = traffic.age(lost, oneSilent);
      return age != null && age.totalSeconds() <= ageSeconds;
    }

    /** The longest period that does; as people write it, it must still leave room on the line. */
    OptionalDouble period(Traffic traffic) {
      ReadingAge age = traffic.age(lost, oneSilent);
      OptionalDouble longest =
          age == null ? OptionalDouble.empty() : age.longestPeriodSeconds(ageSeconds, lost);
      OptionalDouble shortest = TrafficSizing.shortestBroadcastPeriodSeconds(traffic, 1);
      if (longest.isEmpty() || shortest.isEmpty()) {
        return OptionalDouble.empty();
      }
      double written = Shown.atMost(longest.getAsDouble());
      return written > 0 && written >= shortest.getAsDouble() ? longest : OptionalDouble.empty();
    }
  }

  /** In words, with the values to set. */
  String remedy() {
    String period = "set the head unit and the file to every: " + every + " for the broadcast";
    String rate = "set all units and the line to " + baud + " bit/s";
    return baud == null ? period : every == null ? rate : rate + "; " + period;
  }

  FixDraft fix(Site site) {
    List<Edit> edits = new ArrayList<>();
    LineSettings line = site.line().orNull();
    Broadcast broadcast = line == null ? null : line.broadcast().orNull();
    if (line != null && baud != null) {
      edits.add(Edit.plain(line.baud().place(), baud));
    }
    if (broadcast != null && every != null) {
      edits.add(Edit.write(broadcast.every().place(), every));
    }
    String remedy = remedy();
    return FixDraft.proposed(
        remedy.substring(0, 1).toUpperCase(Locale.ROOT) + remedy.substring(1),
        edits.toArray(Edit[]::new));
  }
}
