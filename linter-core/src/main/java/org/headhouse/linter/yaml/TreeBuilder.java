package org.headhouse.linter.yaml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;

/** Builds the nodes of one document from the parser's events. */
final class TreeBuilder {
  private final Parser parser;
  private final Limits limits;
  private final NodeProperties properties;
  private final List<Scalar> ambiguous;
  private final List<Finding> findings;
  private final Map<String, Anchored> anchored = new HashMap<>();
  private final StringInterner texts = new StringInterner();
  private int depth;
  private int tallest;
  private long nodes;
  private boolean scalarOverLines;

  /**
   * An anchor that aliases may name.
   *
   * @param target the node, or null until it is complete
   * @param height how many levels the node has, aliases followed
   * @param weight how many nodes it has, aliases followed
   */
  private record Anchored(Node.@Nullable Valued target, int height, long weight) {}

  TreeBuilder(
      Parser parser,
      SourceText source,
      Limits limits,
      List<Scalar> ambiguous,
      List<Finding> findings) {
    this.parser = parser;
    this.limits = limits;
    this.properties = new NodeProperties(source.text());
    this.ambiguous = ambiguous;
    this.findings = findings;
  }

  Node.Valued root() {
    return (Node.Valued) node(true);
  }

  /** Whether any scalar starts on one line and ends on another. */
  boolean hasScalarOverLines() {
    return scalarOverLines;
  }

  private Node node(boolean isValue) {
    NodeEvent event = (NodeEvent) parser.getEvent();
    if (event instanceof AliasEvent alias) {
      return alias(alias);
    }
    String name = event.getAnchor();
    if (name == null) {
      return valued(event, isValue);
    }
    int heightBefore = tallest;
    long nodesBefore = nodes;
    tallest = depth;
    anchored.put(name, new Anchored(null, 0, 0));
    Node.Valued node = valued(event, isValue);
    anchored.put(name, new Anchored(node, tallest - depth, nodes - nodesBefore));
    tallest = Math.max(tallest, heightBefore);
    return node;
  }

  private Alias alias(AliasEvent event) {
    Region region = ParserMarks.region(event);
    Anchored anchor = anchored.get(event.getAnchor());
    if (anchor == null) {
      throw new Unreadable(SyntaxFaults.unknownAlias(event.getAnchor(), anchored.keySet(), region));
    }
    if (anchor.target == null) {
      throw new Unreadable(SyntaxFaults.recursiveAlias(event.getAnchor(), region));
    }
    count(anchor.weight, event);
    reach(depth + anchor.height, region);
    return new Alias(region, anchor.target);
  }

  private Node.Valued valued(NodeEvent event, boolean isValue) {
    count(1, event);
    NodeProperties.Found found = properties.of(event);
    if (found.foreignTag() != null) {
      findings.add(SyntaxFaults.foreignTag(found.foreignTagText(), found.foreignTag()));
    }
    if (event instanceof ScalarEvent scalar) {
      return scalar(scalar, found, isValue);
    }
    depth++;
    reach(depth, found.from(event));
    Node.Valued node =
        event.is(Event.ID.SequenceStart)
            ? sequence((CollectionStartEvent) event, found)
            : mapping((CollectionStartEvent) event, found);
    depth--;
    return node;
  }

  private Scalar scalar(ScalarEvent event, NodeProperties.Found found, boolean isValue) {
    boolean plain = event.getScalarStyle() == ScalarStyle.PLAIN && !found.tagOfText();
    StringInterner.Word word = texts.of(event.getValue());
    CoreType type = plain ? word.type() : CoreType.TEXT;
    Region region = found.from(event);
    scalarOverLines |= region.startLine() != region.endLine();
    Scalar scalar = new Scalar(region, word.text(), plain, type, found.anchor());
    if (isValue && plain && word.differs()) {
      ambiguous.add(scalar);
    }
    return scalar;
  }

  private Sequence sequence(CollectionStartEvent start, NodeProperties.Found found) {
    List<Node> items = new ArrayList<>();
    while (!parser.checkEvent(Event.ID.SequenceEnd)) {
      items.add(node(true));
    }
    Event end = parser.getEvent();
    Node last = items.isEmpty() ? null : items.get(items.size() - 1);
    return new Sequence(region(start, found, last, end), items, found.anchor());
  }

  private Mapping mapping(CollectionStartEvent start, NodeProperties.Found found) {
    MappingBuilder entries = new MappingBuilder(findings);
    Node last = null;
    while (!parser.checkEvent(Event.ID.MappingEnd)) {
      Node key = node(false);
      last = node(true);
      entries.add(key, last);
    }
    Event end = parser.getEvent();
    return new Mapping(region(start, found, last, end), entries.build(), found.anchor());
  }

  /** A block collection ends with its last node: its end event has the place of the next token. */
  private static Region region(
      CollectionStartEvent start, NodeProperties.Found found, @Nullable Node last, Event end) {
    Region opening = found.from(start);
    if (start.isFlow() || last == null) {
      Region closing = ParserMarks.region(end);
      return spanning(opening, closing);
    }
    return spanning(opening, last.region());
  }

  private static Region spanning(Region first, Region last) {
    return new Region(first.startLine(), first.startColumn(), last.endLine(), last.endColumn());
  }

  private void count(long more, NodeEvent event) {
    nodes += more;
    if (nodes > limits.nodes()) {
      throw new Unreadable(SyntaxFaults.tooManyNodes(limits.nodes(), ParserMarks.region(event)));
    }
  }

  private void reach(int level, Region region) {
    tallest = Math.max(tallest, level);
    if (level > limits.depth()) {
      throw new Unreadable(SyntaxFaults.tooDeep(limits.depth(), region));
    }
  }
}
