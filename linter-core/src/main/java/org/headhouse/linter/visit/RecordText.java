package org.headhouse.linter.visit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.headhouse.linter.draft.YamlScalar;
import org.headhouse.linter.proof.VisitEntry;
import org.headhouse.linter.site.OpenMark;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A record as it is written, with what a reader has to find in it. Items are in the order of the
 * chain, and each remark is a comment before what it is about.
 */
final class RecordText {
  private static final String INDENT = "  ";

  private final NewRecord record;
  private final @Nullable Unit head;
  private final List<String> lines = new ArrayList<>();
  private final Map<String, Object> content = new LinkedHashMap<>();

  private RecordText(NewRecord record, @Nullable Unit head) {
    this.record = record;
    this.head = head;
  }

  /** A record that begins one. */
  static RecordText first(NewRecord record, List<String> notes, @Nullable Unit head) {
    return new RecordText(record, head).with("", notes);
  }

  /** A record that renews another. */
  static RecordText renewed(NewRecord record, String reason, @Nullable Unit head) {
    return new RecordText(record, head).with(reason, List.of());
  }

  /** The lines of the mapping, without indentation. */
  List<String> lines() {
    return lines;
  }

  /** What a reader of YAML finds: texts, lists and mappings of them. */
  Map<String, Object> content() {
    return content;
  }

  private RecordText with(String reason, List<String> notes) {
    text("date", record.signature().day().toString(), false);
    text("by", record.signature().by(), true);
    if (!reason.isEmpty()) {
      text("reason", reason, true);
    }
    record.open().forEach(point -> lines.add("# " + point));
    Stream.concat(notes.stream(), record.notes().stream()).forEach(note -> comment("", note));
    measured();
    seen("outdoor-readings-seen", VisitEntry.READINGS);
    storms();
    seen("stale-response-seen", VisitEntry.STALE_RESPONSE, VisitEntry.STALE_HOLD);
    return this;
  }

  private void text(String key, String value, boolean quotable) {
    lines.add(key + ": " + (quotable ? YamlScalar.of(value) : value));
    content.put(key, value);
  }

  /** A remark of somebody must not ask for anything as a draft does. */
  private void comment(String indent, String remark) {
    if (!remark.isEmpty()) {
      String sign = OpenMark.isIn("#" + remark) ? "# remark: " : "# ";
      lines.add(indent + sign + remark);
    }
  }

  private List<VisitRow> rows(VisitEntry... entries) {
    List<VisitEntry> wanted = List.of(entries);
    return record.proofs().stream()
        .filter(row -> wanted.contains(row.entry()))
        .sorted(
            Comparator.<VisitRow>comparingInt(row -> row.item().index())
                .thenComparing(row -> row.side() == Side.OUT)
                .thenComparing(VisitRow::entry))
        .toList();
  }

  private void seen(String key, VisitEntry... entries) {
    List<Object> names = new ArrayList<>();
    for (VisitRow row : rows(entries)) {
      if (names.isEmpty()) {
        lines.add(key + ":");
        content.put(key, names);
      }
      comment(INDENT, row.remark());
      lines.add(INDENT + "- " + YamlScalar.of(row.name()));
      names.add(row.name());
    }
  }

  private void storms() {
    List<Object> storms = new ArrayList<>();
    for (List<VisitRow> one :
        byPlace(rows(VisitEntry.STORM_RESPONSE, VisitEntry.WIND_LIMIT)).values()) {
      if (storms.isEmpty()) {
        lines.add("storm-response-seen:");
        content.put("storm-response-seen", storms);
      }
      Map<String, Object> storm = new LinkedHashMap<>();
      storm.put("unit", one.get(0).name());
      put(storm, "limit", one, VisitEntry.WIND_LIMIT);
      put(storm, "closed-in", one, VisitEntry.STORM_RESPONSE);
      one.forEach(row -> comment(INDENT, row.remark()));
      if (storm.size() == 1) {
        lines.add(INDENT + "- " + YamlScalar.of(one.get(0).name()));
        storms.add(one.get(0).name());
      } else {
        lines.add(INDENT + "- " + flow(storm));
        storms.add(storm);
      }
    }
  }

  private void measured() {
    Map<Place, List<VisitRow>> places =
        byPlace(rows(VisitEntry.PAIR_RESISTANCE, VisitEntry.IDLE_VOLTAGE));
    if (places.isEmpty()) {
      return;
    }
    Map<String, Object> measured = new LinkedHashMap<>();
    lines.add("measured:");
    content.put("measured", measured);
    List<VisitRow> atHead = head == null ? null : places.remove(new Place(head.index(), null));
    if (atHead != null) {
      for (VisitRow row : atHead) {
        String key = row.entry() == VisitEntry.IDLE_VOLTAGE ? "idle-voltage" : "pair-resistance";
        comment(INDENT, row.remark());
        lines.add(INDENT + key + ": " + row.value());
        measured.put(key, String.valueOf(row.value()));
      }
    }
    if (!places.isEmpty()) {
      lines.add(INDENT + "elsewhere:");
      measured.put("elsewhere", elsewhere(places));
    }
  }

  private List<Object> elsewhere(Map<Place, List<VisitRow>> places) {
    List<Object> elsewhere = new ArrayList<>();
    places.forEach(
        (place, rows) -> {
          Map<String, Object> one = new LinkedHashMap<>();
          one.put("at", rows.get(0).name());
          if (place.side() != null) {
            one.put("side", place.side().word());
          }
          put(one, "pair-resistance", rows, VisitEntry.PAIR_RESISTANCE);
          put(one, "idle-voltage", rows, VisitEntry.IDLE_VOLTAGE);
          rows.forEach(row -> comment(INDENT + INDENT, row.remark()));
          lines.add(INDENT + INDENT + "- " + flow(one));
          elsewhere.add(one);
        });
    return elsewhere;
  }

  /**
   * Where rows are that go together.
   *
   * @param item its place in the chain
   */
  private record Place(int item, @Nullable Side side) {}

  private static Map<Place, List<VisitRow>> byPlace(List<VisitRow> rows) {
    Map<Place, List<VisitRow>> places = new LinkedHashMap<>();
    for (VisitRow row : rows) {
      places
          .computeIfAbsent(new Place(row.item().index(), row.side()), it -> new ArrayList<>())
          .add(row);
    }
    return places;
  }

  private static void put(
      Map<String, Object> mapping, String key, List<VisitRow> rows, VisitEntry entry) {
    for (VisitRow row : rows) {
      String value = row.entry() == entry ? row.value() : null;
      if (value != null) {
        mapping.put(key, value);
      }
    }
  }

  /** A mapping on one line; values with a unit are no names, and need no quotes. */
  private static String flow(Map<String, Object> mapping) {
    List<String> parts = new ArrayList<>();
    mapping.forEach(
        (key, value) -> {
          boolean isName = key.equals("at") || key.equals("unit");
          parts.add(key + ": " + (isName ? YamlScalar.of(value.toString()) : value));
        });
    return "{" + String.join(", ", parts) + "}";
  }
}
