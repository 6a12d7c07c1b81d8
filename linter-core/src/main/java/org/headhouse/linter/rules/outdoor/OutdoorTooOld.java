package org.headhouse.linter.rules.outdoor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.TrafficFit;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.line.TrafficSizing;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Broadcast;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/** {@code outdoor.too-old}: the times of MODBUS over Serial Line V1.02, added up. */
public final class OutdoorTooOld implements SiteRule {
  /** Makes {@link SitePolicy#lostBroadcasts}. */
  public static final Parameter<Integer> LOST =
      new Parameter<>(
          "lost",
          "how many broadcasts in a row may be lost, here and wherever the age of readings counts",
          ParameterType.count(),
          String.valueOf(ReadingAge.USUAL_LOST));

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "outdoor.too-old",
              "No reading becomes older at a follower than the site allows, even while one unit is silent.",
              Level.ERROR,
              LOST)
          .yieldingTo("traffic.overrun");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    WeatherStation station = site.weatherStation().orNull();
    Interval allowed = station == null ? null : station.maximumAge().orNull();
    Traffic traffic = context.figures().traffic();
    if (station == null || allowed == null || traffic == null || traffic.utilisation() > 1) {
      return;
    }
    Double age = traffic.worstAgeSeconds();
    Double ageOneSilent = traffic.worstAgeOneSilentSeconds();
    if (age == null || ageOneSilent == null || ageOneSilent <= allowed.seconds()) {
      return;
    }
    boolean always = age > allowed.seconds();
    Change change = change(traffic, site, allowed, !always);
    Finding finding =
        context
            .finding(
                station.maximumAge().place(),
                new Message(
                    always
                        ? "a reading becomes "
                            + Shown.seconds(age)
                            + " old as computed, over the "
                            + allowed.written()
                            + " that the site allows"
                        : "a reading becomes "
                            + Shown.seconds(ageOneSilent)
                            + " old while one unit is silent, over the "
                            + allowed.written()
                            + " that the site allows",
                    "a follower would move its vents by a wind that was",
                    change == null ? otherwise(traffic, !always) : change.remedy()))
            .fixedBy(change == null ? null : change.fix(site));
    context.report(always ? finding : finding.at(Level.WARNING));
  }

  /**
   * What makes the readings young enough.
   *
   * @param every the period of the broadcast, or null where it can stay
   * @param baud the rate, or null where it can stay
   */
  private record Change(@Nullable String every, @Nullable Integer baud) {

    String remedy() {
      String period = "write every: " + every + " for the broadcast";
      String rate = "set all units and the line to " + baud + " bit/s";
      return baud == null ? period : every == null ? rate : rate + ", and " + period;
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

  /** What to do where neither the period nor the rate helps. */
  private static String otherwise(Traffic traffic, boolean oneSilent) {
    if (traffic.polls().isEmpty()) {
      return "send fewer registers, or allow a greater maximum-age";
    }
    return oneSilent
        ? "shorten the timeout of the polls or their retries, or allow a greater maximum-age"
        : "read fewer registers at a time, or allow a greater maximum-age";
  }

  /**
   * The period, the rate, or both that make the readings young enough; while one unit is silent as
   * well, where that can be had. Null where nothing does.
   */
  private static @Nullable Change change(
      Traffic traffic, Site site, Interval allowed, boolean oneSilent) {
    Change change = changeWhile(true, traffic, site, allowed);
    return change == null && !oneSilent ? changeWhile(false, traffic, site, allowed) : change;
  }

  private static @Nullable Change changeWhile(
      boolean oneSilent, Traffic traffic, Site site, Interval allowed) {
    OptionalDouble period = fittingPeriod(traffic, allowed, oneSilent);
    if (period.isPresent()) {
      return new Change(Shown.atMostSeconds(period.getAsDouble()), null);
    }
    OptionalInt baud =
        TrafficFit.nextBaud(traffic, site, other -> isYoung(other, allowed, oneSilent));
    if (baud.isPresent()) {
      return new Change(null, baud.getAsInt());
    }
    OptionalInt both =
        TrafficFit.nextBaud(
            traffic, site, other -> fittingPeriod(other, allowed, oneSilent).isPresent());
    return both.isEmpty()
        ? null
        : new Change(
            Shown.atMostSeconds(
                fittingPeriod(traffic.withBaud(both.getAsInt()), allowed, oneSilent).orElseThrow()),
            both.getAsInt());
  }

  /** The longest period that does; as people write it, it must still leave room on the line. */
  private static OptionalDouble fittingPeriod(
      Traffic traffic, Interval allowed, boolean oneSilent) {
    OptionalDouble longest =
        TrafficSizing.longestBroadcastPeriodSeconds(traffic, allowed.seconds(), oneSilent);
    OptionalDouble shortest = TrafficSizing.shortestBroadcastPeriodSeconds(traffic, 1);
    if (longest.isEmpty() || shortest.isEmpty()) {
      return OptionalDouble.empty();
    }
    double written = Shown.atMost(longest.getAsDouble());
    return written > 0 && written >= shortest.getAsDouble() ? longest : OptionalDouble.empty();
  }

  private static boolean isYoung(Traffic traffic, Interval allowed, boolean oneSilent) {
    Double age = oneSilent ? traffic.worstAgeOneSilentSeconds() : traffic.worstAgeSeconds();
    return age != null && age <= allowed.seconds();
  }
}
