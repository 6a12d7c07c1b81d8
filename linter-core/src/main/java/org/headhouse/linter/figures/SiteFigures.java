package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.line.TrafficFigures;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * The figures of one site.
 *
 * @param site its id, or the path of its file where it has none
 * @param segments from the head unit on
 * @param traffic null where there is none, or where it is not understood
 * @param storm from the gust to closed vents; null where no unit moves vents
 */
public record SiteFigures(
    String site,
    List<SegmentSummary> segments,
    @Nullable TrafficFigures traffic,
    @Nullable StormSummary storm) {

  public SiteFigures {
    segments = List.copyOf(segments);
  }

  /** Computes all figures of a site. */
  public static SiteFigures of(Site site, SitePolicy policy) {
    return of(site, new LineFigures(site, policy));
  }

  /** Collects the figures of a site. */
  public static SiteFigures of(Site site, LineFigures line) {
    Traffic traffic = line.traffic();
    return new SiteFigures(
        site.id().or(site.source().path()),
        line.segments().stream().map(SegmentSummary::of).toList(),
        traffic == null ? null : TrafficFigures.of(traffic, line.lostBroadcasts()),
        StormSummary.of(site, line.storm()));
  }
}
