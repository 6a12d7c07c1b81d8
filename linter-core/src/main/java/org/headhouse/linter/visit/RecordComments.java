package org.headhouse.linter.visit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Sequence;

/** The comments that stand in some of the records of a site, each on a line of its own. */
final class RecordComments {
  private final VisitedSite site;
  private final Set<String> comments = new HashSet<>();

  private RecordComments(VisitedSite site) {
    this.site = site;
  }

  /** Those in the records of one day and person. */
  static RecordComments of(Visit visit, VisitedSite site) {
    RecordComments comments = new RecordComments(site);
    Mapping.Entry entry = site.record();
    if (entry != null && entry.value() instanceof Mapping record) {
      comments.add(visit, record);
      Mapping.Entry renewed = VisitedSite.renewed(record);
      if (renewed != null && renewed.value() instanceof Sequence list) {
        list.items().forEach(item -> comments.add(visit, item));
      }
    }
    return comments;
  }

  private void add(Visit visit, Node node) {
    if (!(node instanceof Mapping record)
        || !is(record, "date", visit.signature().day().toString())
        || !is(record, "by", visit.signature().by())) {
      return;
    }
    Mapping.Entry renewed = VisitedSite.renewed(record);
    Region region = record.region();
    int last = renewed == null ? region.endLine() : renewed.key().region().startLine();
    for (int line = region.startLine(); line <= last; line++) {
      String text = site.source().line(line, Integer.MAX_VALUE).strip();
      if (text.startsWith("# ")) {
        comments.add(text.substring(2));
      }
    }
  }

  private static boolean is(Mapping record, String key, String value) {
    return record.entries().stream()
        .anyMatch(
            entry ->
                entry.key().text().equals(key)
                    && List.of(value).contains(PlainTree.of(entry.value())));
  }

  /** Whether one of them is a remark. */
  boolean have(String remark) {
    return comments.contains(remark) || comments.contains("remark: " + remark);
  }
}
