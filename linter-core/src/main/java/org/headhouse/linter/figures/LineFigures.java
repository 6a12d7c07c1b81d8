package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.line.TimeoutNeed;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The figures of one site's line, each computed when it is first asked for and then kept. For one
 * thread at a time.
 */
public final class LineFigures {
  private final Site site;
  private final SitePolicy policy;
  private @Nullable List<SegmentLine> segments;
  private @Nullable SiteTraffic traffic;
  private @Nullable StormFigures storm;
  private @Nullable Boolean placesOfBias;

  public LineFigures(Site site, SitePolicy policy) {
    this.site = site;
    this.policy = policy;
  }

  /** The segments from the head unit on. */
  public List<SegmentLine> segments() {
    List<SegmentLine> known = segments;
    if (known == null) {
      List<SegmentLine> all = new ArrayList<>();
      for (Segment segment : site.segments()) {
        all.add(new SegmentLine(segment, site, policy));
      }
      known = List.copyOf(all);
      segments = known;
    }
    return known;
  }

  /**
   * Whether every bias of the file is at a known item. Any other belongs to some segment, and
   * nobody knows to which.
   */
  public boolean knowsPlacesOfBias() {
    Boolean known = placesOfBias;
    if (known == null) {
      LineSettings line = site.line().orNull();
      known = line != null && !line.bias().isFaulty() && SegmentBias.arePlaced(line, site);
      placesOfBias = known;
    }
    return known;
  }

  /**
   * The traffic on the line; null where the file says nothing of any, or where it is not
   * understood.
   */
  public @Nullable Traffic traffic() {
    return siteTraffic().traffic();
  }

  /**
   * Whether all that the file says of the traffic is understood; so it is where it says nothing.
   */
  public boolean isTrafficUnderstood() {
    return siteTraffic().understood();
  }

  /**
   * How long supervision has to wait for an answer at least; null where it asks nothing over the
   * line, or where that is not understood.
   */
  public @Nullable TimeoutNeed timeoutNeed() {
    Traffic all = traffic();
    return all == null ? null : new SitePolls(site, policy.times()).timeoutNeed(all);
  }

  /** How many broadcasts in a row may be lost, as the policy says. */
  public int lostBroadcasts() {
    return policy.lostBroadcasts();
  }

  /** From the gust to closed vents. */
  @Internal
  public StormFigures storm() {
    StormFigures known = storm;
    if (known == null) {
      known = StormFigures.of(site, policy, traffic());
      storm = known;
    }
    return known;
  }

  private SiteTraffic siteTraffic() {
    SiteTraffic known = traffic;
    if (known == null) {
      known = SiteTraffic.of(site, policy.times());
      traffic = known;
    }
    return known;
  }
}
