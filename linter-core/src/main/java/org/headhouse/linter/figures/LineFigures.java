package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * The figures of one site's line, each computed when it is first asked for and then kept. For one
 * thread at a time.
 */
public final class LineFigures {
  private final Site site;
  private final SitePolicy policy;
  private @Nullable List<SegmentLine> segments;
  private @Nullable Traffic traffic;
  private boolean trafficKnown;

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
    LineSettings line = site.line().orNull();
    return line != null && !line.bias().isFaulty() && SegmentBias.arePlaced(line, site);
  }

  /** The traffic on the line; null where there is none, or where it is not understood. */
  public @Nullable Traffic traffic() {
    if (!trafficKnown) {
      traffic = SiteTraffic.of(site, policy.times());
      trafficKnown = true;
    }
    return traffic;
  }
}
