package org.headhouse.linter.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.draft.Faults;
import org.headhouse.linter.proof.Signature;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/** Where records go into the text of a site, as lines of their own. */
final class RecordPlace {
  private static final String INDENT = "  ";
  private static final Pattern DASH = Pattern.compile("( *)- +(?:&\\S+ +)?");
  private static final Pattern COMMENT = Pattern.compile("( *)#.*", Pattern.DOTALL);

  private final VisitedSite site;
  private final Kind kind;
  private final Node after;
  private final String indent;

  private enum Kind {
    /** The site has no record. */
    RECORD,
    /** The record was never renewed. */
    RENEWED,
    /** It was, and gets a further item. */
    ITEM
  }

  /**
   * @param after the value that the lines follow
   * @param indent the spaces before them
   */
  private RecordPlace(VisitedSite site, Kind kind, Node after, String indent) {
    this.site = site;
    this.kind = kind;
    this.after = after;
    this.indent = indent;
  }

  /** The place; null where records cannot be added without a change of other lines: reported. */
  static @Nullable RecordPlace of(VisitedSite site, Faults faults) {
    Mapping.Entry entry = site.record();
    if (entry == null) {
      return inBlock(site, Kind.RECORD, site.root(), faults);
    }
    if (entry.via() != null || entry.value() instanceof Alias) {
      return none(faults, entry.key().region(), "the record is written elsewhere, under an anchor");
    }
    Commissioning record = site.site().commissioning().orNull();
    if (record == null
        || record.renewed().isFaulty()
        || record.renewed().or(List.of()).stream().anyMatch(Setting::isFaulty)) {
      return none(faults, entry.key().region(), "the record is not understood");
    }
    if (record.first().dayOrNull() == null || Signature.isStandIn(record.first().by().or(""))) {
      faults.add(
          entry.key().region(),
          "the record in the site was never filled in",
          "a list adds to a record of a day and a person, or begins one",
          "take the record out, and the list begins one; or fill it in by hand");
      return null;
    }
    Mapping mapping = (Mapping) entry.value();
    Mapping.Entry renewed = VisitedSite.renewed(mapping);
    if (mapping.entries().stream().anyMatch(one -> one.via() != null)) {
      return none(faults, entry.key().region(), "a part of the record is written elsewhere");
    }
    return renewed == null
        ? inBlock(site, Kind.RENEWED, mapping, faults)
        : inList(site, renewed, faults);
  }

  private static @Nullable RecordPlace none(Faults faults, Region region, String fact) {
    faults.add(
        region,
        fact,
        "a list adds lines to a record, and changes no other",
        "write the record with one key a line, in the site itself");
    return null;
  }

  private static @Nullable RecordPlace inBlock(
      VisitedSite site, Kind kind, Node block, Faults faults) {
    if (block instanceof Mapping mapping && !isFlow(site.source(), block)) {
      Region first = mapping.entries().get(0).key().region();
      String before = before(site.source(), first);
      Node last = last(mapping);
      if (before.isBlank()) {
        return new RecordPlace(site, kind, last, before);
      }
    }
    String what = kind == Kind.RECORD ? "the site" : "the record";
    return none(faults, block.region(), what + " is not written with one key a line");
  }

  private static @Nullable RecordPlace inList(
      VisitedSite site, Mapping.Entry renewed, Faults faults) {
    if (renewed.value() instanceof Sequence list
        && !list.items().isEmpty()
        && !isFlow(site.source(), list)) {
      Node last = list.items().get(list.items().size() - 1);
      Matcher dash = DASH.matcher(before(site.source(), last.region()));
      if (dash.matches()) {
        return new RecordPlace(site, Kind.ITEM, last, dash.group(1));
      }
    }
    return none(faults, renewed.key().region(), "renewed is not written as lines with a dash");
  }

  /** The value that ends last; for a key without one, the key. */
  private static Node last(Mapping mapping) {
    List<Mapping.Entry> own =
        mapping.entries().stream().filter(entry -> entry.via() == null).toList();
    Mapping.Entry entry = own.get(own.size() - 1);
    boolean empty = entry.value().region().compareTo(entry.key().region()) < 0;
    return empty ? entry.key() : entry.value();
  }

  private static boolean isFlow(SourceText source, Node node) {
    int start = source.offset(node.region().startLine(), node.region().startColumn());
    return source.text().startsWith("{", start) || source.text().startsWith("[", start);
  }

  private static String before(SourceText source, Region region) {
    return source
        .text()
        .substring(
            source.offset(region.startLine(), 1),
            source.offset(region.startLine(), region.startColumn()));
  }

  /**
   * The lines to insert.
   *
   * @param open comments on what was not seen by somebody whose record is not written
   */
  Replacement insertion(List<String> open, List<RecordText> records) {
    SourceText source = site.source();
    String text = source.text();
    int at = offset(text);
    String lineBreak = lineBreak(text);
    String lines = String.join(lineBreak, lines(open, records));
    boolean isOpen = at > 0 && !SourceText.isLineBreak(text.charAt(at - 1));
    Region region = source.at(at);
    return new Replacement(region, isOpen ? lineBreak + lines : lines + lineBreak);
  }

  /** After the line on which the value ends, and the comments that belong to it. */
  private int offset(String text) {
    Region region = after.region();
    int at = site.source().offset(region.endLine(), region.endColumn());
    boolean startsLine = at > 0 && SourceText.isLineBreak(text.charAt(at - 1));
    at = startsLine ? at : afterLine(text, at);
    int column = kind == Kind.RENEWED ? indent.length() : indent.length() + 1;
    while (at < text.length()) {
      int next = afterLine(text, at);
      Matcher comment = COMMENT.matcher(text.substring(at, next));
      if (!comment.matches() || comment.group(1).length() < column) {
        break;
      }
      at = next;
    }
    return at;
  }

  private static int afterLine(String text, int from) {
    int at = from;
    while (at < text.length() && !SourceText.isLineBreak(text.charAt(at))) {
      at++;
    }
    return text.startsWith("\r\n", at) ? at + 2 : Math.min(text.length(), at + 1);
  }

  private static String lineBreak(String text) {
    int end = 0;
    while (end < text.length() && !SourceText.isLineBreak(text.charAt(end))) {
      end++;
    }
    return end == text.length() ? "\n" : text.substring(end, afterLine(text, end));
  }

  private List<String> lines(List<String> open, List<RecordText> records) {
    List<String> lines = new ArrayList<>();
    open.forEach(point -> lines.add(indent + "# " + point));
    List<RecordText> renewals = records;
    String inside = indent;
    if (kind == Kind.RECORD && !records.isEmpty()) {
      lines.add(indent + VisitedSite.RECORD + ":");
      records.get(0).lines().forEach(line -> lines.add(indent + INDENT + line));
      renewals = records.subList(1, records.size());
      inside = indent + INDENT;
    }
    if (kind != Kind.ITEM && !renewals.isEmpty()) {
      lines.add(inside + VisitedSite.RENEWED + ":");
      inside += INDENT;
    }
    for (RecordText one : renewals) {
      String start = inside + "- ";
      for (String line : one.lines()) {
        lines.add(start + line);
        start = inside + INDENT;
      }
    }
    return lines;
  }

  /** What a reader of YAML finds in the site with the records added. */
  Map<String, Object> content(List<RecordText> records) {
    Map<String, Object> all = PlainTree.ofMapping(site.root());
    if (records.isEmpty()) {
      return all;
    }
    Map<String, Object> record = new LinkedHashMap<>();
    List<Object> renewals = new ArrayList<>();
    if (kind == Kind.RECORD) {
      record.putAll(records.get(0).content());
    } else if (all.get(VisitedSite.RECORD) instanceof Map<?, ?> before) {
      before.forEach((key, value) -> record.put(String.valueOf(key), value));
    }
    if (record.get(VisitedSite.RENEWED) instanceof List<?> before) {
      renewals.addAll(before);
    }
    records.stream().skip(kind == Kind.RECORD ? 1 : 0).forEach(one -> renewals.add(one.content()));
    if (!renewals.isEmpty()) {
      record.put(VisitedSite.RENEWED, renewals);
    }
    all.put(VisitedSite.RECORD, record);
    return all;
  }
}
