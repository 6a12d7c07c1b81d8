package org.headhouse.linter.site;

import java.util.ArrayList;
import java.util.List;

/**
 * Segments that are joined galvanically: through repeaters that are not known to be isolated.
 *
 * @param segments in the order of the chain, at least one
 */
public record GalvanicSection(List<Segment> segments) {

  public GalvanicSection {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a galvanic section without a segment");
    }
  }

  /** The sections of a chain that is divided into segments. */
  static List<GalvanicSection> of(List<Segment> segments) {
    List<GalvanicSection> sections = new ArrayList<>();
    List<Segment> open = new ArrayList<>();
    for (Segment segment : segments) {
      if (!open.isEmpty() && segment.first().isolated().is(true)) {
        sections.add(new GalvanicSection(open));
        open = new ArrayList<>();
      }
      open.add(segment);
    }
    if (!open.isEmpty()) {
      sections.add(new GalvanicSection(open));
    }
    return List.copyOf(sections);
  }

  /** The items in the order of the chain; an isolated repeater is at the end of two sections. */
  public List<ChainItem> items() {
    List<ChainItem> items = new ArrayList<>();
    for (Segment segment : segments) {
      List<ChainItem> more = segment.items();
      items.addAll(items.isEmpty() ? more : more.subList(1, more.size()));
    }
    return items;
  }

  /** How an item is connected to this section: on one side, or a repeater within it on both. */
  public List<Connection> connections(ChainItem item) {
    List<Connection> connections = new ArrayList<>(2);
    for (Segment segment : segments) {
      if (segment.contains(item)) {
        Connection connection = segment.connection(item);
        if (!connections.contains(connection)) {
          connections.add(connection);
        }
      }
    }
    return connections;
  }
}
