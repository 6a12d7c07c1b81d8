package org.headhouse.linter.visit;

import static java.util.stream.Collectors.toUnmodifiableSet;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.bind.UnitDefaults;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.OpenMark;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Comment;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;

/**
 * The text of a site with what is read of it.
 *
 * @param root the tree as it is written
 * @param openPoints the comments with the mark of one
 */
record VisitedSite(SourceText source, Node.Valued root, Site site, Set<String> openPoints) {
  static final String RECORD = "commissioning";
  static final String RENEWED = "renewed";

  /** Null where the text cannot be read as one document of YAML. */
  static @Nullable VisitedSite of(SourceText source, DeviceTypes types, Limits limits) {
    Document document = new YamlReader(limits).read(source);
    Node.Valued root = document.root();
    return root == null || !document.findings().isEmpty()
        ? null
        : new VisitedSite(
            source,
            root,
            SiteBinder.bind(source, UnitDefaults.spread(root), types).model(),
            openPoints(document));
  }

  /** To find comments takes a second pass over a file. */
  private static Set<String> openPoints(Document document) {
    return OpenMark.isIn(document.source().text())
        ? document.comments().stream()
            .map(Comment::text)
            .filter(text -> text.startsWith(OpenMark.MARK))
            .collect(toUnmodifiableSet())
        : Set.of();
  }

  /** The records that the site has. */
  List<ProvingRecord> records() {
    return site.commissioning().optional().map(Commissioning::records).orElse(List.of());
  }

  /** What the records of later days have. */
  RecordedValues recordedAfter(LocalDate day) {
    return new RecordedValues(
        site, records().stream().filter(one -> isAfter(one.dayOrNull(), day)).toList());
  }

  private static boolean isAfter(@Nullable LocalDate day, LocalDate other) {
    return day != null && day.isAfter(other);
  }

  /** The entry of the record, or null. */
  Mapping.@Nullable Entry record() {
    return new Cursor(root, null).entry(RECORD);
  }

  /** The entry of what renews a record, or null. */
  static Mapping.@Nullable Entry renewed(Mapping record) {
    return new Cursor(record, null).entry(RENEWED);
  }
}
