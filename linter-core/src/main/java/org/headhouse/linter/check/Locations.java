package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.fix.Fixes;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Node;
import org.jspecify.annotations.Nullable;

/** Turns findings in one file into results that can be shown without the file. */
final class Locations {
  private static final int LONGEST_LINE = 400;

  private final SourceText source;
  private final LogicalPaths paths;
  private final @Nullable Identities identities;
  private final Fixes fixes;

  /**
   * @param findings all findings in the file
   */
  Locations(SourceText source, Node.@Nullable Valued root, List<Finding> findings) {
    this.source = source;
    TreeSearch search = new TreeSearch();
    this.paths = new LogicalPaths(root, search);
    this.identities = root == null ? null : new Identities(root, search);
    this.fixes = new Fixes(source, root, findings);
  }

  /** A result that a baseline may hold. */
  Result lasting(Finding finding, Level level) {
    return result(finding, level, identities == null ? List.of() : identities.of(finding));
  }

  /** A result that no baseline may hold. */
  Result result(Finding finding, Level level) {
    return result(finding, level, List.of());
  }

  private Result result(Finding finding, Level level, List<Identity> lasting) {
    Place place = finding.place();
    LogicalPath logical = paths.of(place.region());
    return new Result(
        finding.rule(),
        level,
        finding.message(),
        location(source, written(place)),
        place instanceof Place.ThroughDefault && identities != null
            ? identities.pathOf(place)
            : logical.text(),
        unit(finding, logical),
        related(finding),
        null,
        lasting,
        null,
        fixes.of(finding));
  }

  /** A default is shown where it is written, what an alias brings where it is used. */
  private static Region written(Place place) {
    return place instanceof Place.ThroughDefault given ? given.anchored().value() : place.region();
  }

  /** The one unit that is concerned, or null where that is none, or several. */
  private static @Nullable String unit(Finding finding, LogicalPath logical) {
    List<@Nullable String> units =
        finding.cases().stream().map(Finding.Case::unit).distinct().toList();
    boolean several = units.size() > 1;
    @Nullable String only = units.size() == 1 ? units.get(0) : finding.unit();
    return several ? null : only == null ? logical.unit() : only;
  }

  private List<RelatedLocation> related(Finding finding) {
    List<RelatedLocation> related = new ArrayList<>();
    Place.Anchored anchored = finding.place().anchored();
    if (finding.place() instanceof Place.ThroughDefault given) {
      related.add(
          new RelatedLocation(location(source, given.region()), "this unit takes the default"));
    } else if (anchored != null) {
      related.add(
          new RelatedLocation(
              location(source, anchored.anchor()), "the anchor &" + anchored.name() + " is here"));
      if (anchored.value().startLine() != anchored.anchor().startLine()) {
        related.add(
            new RelatedLocation(location(source, anchored.value()), "the value is written here"));
      }
    }
    for (Finding.Related one : finding.related()) {
      SourceText file = one.source() == null ? source : one.source();
      related.add(new RelatedLocation(location(file, one.region()), one.text()));
    }
    return related;
  }

  static Location location(SourceText source, Region region) {
    return new Location(source.path(), region, source.line(region.startLine(), LONGEST_LINE));
  }
}
