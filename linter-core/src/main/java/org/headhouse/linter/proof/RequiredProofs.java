package org.headhouse.linter.proof;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.figures.MeasuredItems;
import org.headhouse.linter.figures.SegmentBias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.Vents;

/** What the record of a whole site has to prove: common practice, no source. */
public final class RequiredProofs {
  private RequiredProofs() {}

  /** All of it, along the chain: readings, responses, measurements. */
  public static Set<Proof> of(Site site) {
    Set<Proof> all = new LinkedHashSet<>(readings(site));
    all.addAll(responses(site));
    all.addAll(measurements(site));
    return all;
  }

  /** That each follower's display showed the outdoor readings. */
  public static Set<Proof> readings(Site site) {
    Set<Proof> readings = new LinkedHashSet<>();
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      // A follower with the station: head.missing or station.not-at-head reports the cause.
      if (name != null && unit.isFollower() && !site.hasStation(unit)) {
        readings.add(Proof.seen(Proof.Kind.READINGS, name));
      }
    }
    return readings;
  }

  /**
   * That each unit with vents shuts them in a storm, and does with them as set when readings do not
   * come. A unit that says nothing of vents may have them.
   */
  public static Set<Proof> responses(Site site) {
    Set<Proof> responses = new LinkedHashSet<>();
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      if (name != null && !unit.vents().isFaulty() && !unit.vents().is(Vents.NONE)) {
        responses.add(Proof.seen(Proof.Kind.STORM_RESPONSE, name));
        responses.add(Proof.seen(Proof.Kind.STALE_RESPONSE, name));
      }
    }
    return responses;
  }

  /** What a meter has to show in all segments. */
  public static Set<Proof> measurements(Site site) {
    Set<Proof> all = new LinkedHashSet<>();
    site.segments().forEach(segment -> all.addAll(measurements(segment, site)));
    return all;
  }

  /**
   * What a meter has to show in one segment: at the head unit, or where a segment without it
   * starts, then at the end that is away from there. The idle voltage where a bias is written, the
   * resistance of the pair where a terminator conducts steadily.
   */
  public static List<Proof> measurements(Segment segment, Site site) {
    List<Proof> proofs = new ArrayList<>();
    boolean conducts = segment.items().stream().anyMatch(item -> conducts(segment, item));
    boolean biased = isBiased(segment, site);
    for (int index : MeasuredItems.of(segment, site.head())) {
      ChainItem item = segment.items().get(index);
      String name = item.name().orNull();
      if (name != null) {
        Side side = item instanceof Repeater ? segment.side(item) : null;
        if (conducts) {
          proofs.add(new Proof(Proof.Kind.PAIR_RESISTANCE, name, side));
        }
        if (biased) {
          proofs.add(new Proof(Proof.Kind.IDLE_VOLTAGE, name, side));
        }
      }
    }
    return proofs;
  }

  private static boolean conducts(Segment segment, ChainItem item) {
    Termination termination = segment.termination(item).orNull();
    return termination != null && termination.conductsSteadily();
  }

  private static boolean isBiased(Segment segment, Site site) {
    LineSettings line = site.line().orNull();
    boolean endsChain = segment.last().index() == site.items().size() - 1;
    return line != null && !SegmentBias.of(segment, endsChain, line).isEmpty();
  }
}
