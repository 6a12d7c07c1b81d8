package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.fix.Fixes;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Node;
import org.jspecify.annotations.Nullable;

/** Turns findings in one file into results that can be told without the file. */
final class Locations {
  private static final int LONGEST_LINE = 400;

  private final SourceText source;
  private final Node.@Nullable Valued root;
  private final Fixes fixes;

  /**
   * @param findings all that is to be told of the file
   */
  Locations(SourceText source, Node.@Nullable Valued root, List<Finding> findings) {
    this.source = source;
    this.root = root;
    this.fixes = new Fixes(source, root, findings);
  }

  Result result(Finding finding, Level level) {
    Region region = finding.place().region();
    LogicalPath logical = LogicalPath.of(root, region);
    return new Result(
        finding.rule(),
        level,
        finding.message(),
        location(source, region),
        logical.text(),
        finding.unit() == null ? logical.unit() : finding.unit(),
        related(finding),
        null,
        fixes.of(finding));
  }

  private List<RelatedLocation> related(Finding finding) {
    List<RelatedLocation> related = new ArrayList<>();
    Place.Anchored anchored = finding.place().anchored();
    if (anchored != null) {
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
    String line = source.line(region.startLine());
    int end =
        line.codePointCount(0, line.length()) > LONGEST_LINE
            ? line.offsetByCodePoints(0, LONGEST_LINE)
            : line.length();
    return new Location(source.path(), region, line.substring(0, end));
  }
}
