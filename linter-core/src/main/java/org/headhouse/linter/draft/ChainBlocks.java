package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * The lines of each item of a chain, so that items can leave, join and move while every other line
 * stays as it is. Comments that are indented deeper than the dashes belong to the item before them,
 * others to the item after them. One that leaves takes those directly above it along: what is said
 * of it must not be taken for said of the next.
 */
final class ChainBlocks {
  private static final Pattern DASH = Pattern.compile("( *)-( +)(?:&\\S+ +)?");
  private static final Pattern COMMENT = Pattern.compile("( *)#.*", Pattern.DOTALL);

  private final SourceText source;
  private final List<Block> blocks;
  private final String before;
  private final String after;
  private final String dash;
  private final String lineBreak;

  /**
   * The lines of one item, each with its end.
   *
   * @param lead comments and empty lines before it
   * @param body from its dash on
   */
  private record Block(String lead, String body) {}

  private ChainBlocks(
      SourceText source, List<Block> blocks, String before, String after, String dash) {
    this.source = source;
    this.blocks = blocks;
    this.before = before;
    this.after = after;
    this.dash = dash;
    int end = source.text().indexOf('\n');
    this.lineBreak =
        end < 0
            ? (source.text().indexOf('\r') < 0 ? "\n" : "\r")
            : end > 0 && source.text().charAt(end - 1) == '\r' ? "\r\n" : "\n";
  }

  /** Null where the items are not each on lines of their own, with dashes below each other. */
  static @Nullable ChainBlocks of(SiteFile file) {
    Sequence chain = file.chain();
    if (chain == null || chain.items().isEmpty()) {
      return null;
    }
    SourceText source = file.source();
    String dash = null;
    List<Integer> starts = new ArrayList<>();
    List<Integer> ends = new ArrayList<>();
    for (Node item : chain.items()) {
      Region region = item.region();
      int start = source.offset(region.startLine(), 1);
      String front =
          source.text().substring(start, source.offset(region.startLine(), region.startColumn()));
      Matcher matcher = DASH.matcher(front);
      if (!matcher.matches()) {
        return null;
      }
      String own = matcher.group(1) + "-" + matcher.group(2);
      if (dash != null && dash.indexOf('-') != own.indexOf('-')) {
        return null;
      }
      dash = dash == null ? own : dash;
      starts.add(start);
      ends.add(afterLine(source.text(), source.offset(region.endLine(), region.endColumn())));
    }
    return dash == null ? null : of(source, starts, ends, dash);
  }

  private static ChainBlocks of(
      SourceText source, List<Integer> starts, List<Integer> ends, String dash) {
    String text = source.text();
    int column = dash.indexOf('-');
    List<Block> blocks = new ArrayList<>();
    int from = starts.get(0);
    for (int i = 0; i < starts.size(); i++) {
      int next = i + 1 < starts.size() ? starts.get(i + 1) : text.length();
      int end = endOfComments(text, ends.get(i), next, column);
      blocks.add(
          new Block(text.substring(from, starts.get(i)), text.substring(starts.get(i), end)));
      from = end;
    }
    return new ChainBlocks(
        source, blocks, text.substring(0, starts.get(0)), text.substring(from), dash);
  }

  private static int endOfComments(String text, int from, int limit, int column) {
    int end = from;
    while (end < limit) {
      int next = afterLine(text, end);
      Matcher comment = COMMENT.matcher(text.substring(end, next));
      if (!comment.matches() || comment.group(1).length() <= column) {
        break;
      }
      end = next;
    }
    return end;
  }

  private static int afterLine(String text, int from) {
    int at = from;
    while (at < text.length() && !SourceText.isLineBreak(text.charAt(at))) {
      at++;
    }
    return text.startsWith("\r\n", at) ? at + 2 : Math.min(text.length(), at + 1);
  }

  /** What is in front of the first line of an item. */
  String dash() {
    return dash;
  }

  /**
   * A place of the new chain.
   *
   * @param item the index of the item, or -1 for one that joins
   * @param lines the lines of one that joins, or to add after the item that stays
   */
  record Place(int item, List<String> lines) {}

  /** Whether comments are directly above an item, which leave with it. */
  boolean hasComment(int item) {
    String lead = item == 0 ? before : blocks.get(item).lead();
    return startOfComment(lead) < lead.length();
  }

  /** Where the comments begin that end a text, indented at least as deep as the dashes. */
  private int startOfComment(String lead) {
    int start = lead.length();
    while (start > 0) {
      int line = startOfLine(lead, start);
      Matcher comment = COMMENT.matcher(lead.substring(line, start));
      if (!comment.matches() || comment.group(1).length() < dash.indexOf('-')) {
        break;
      }
      start = line;
    }
    return start;
  }

  /** Where the line begins that ends at a place, its line break included. */
  private static int startOfLine(String text, int end) {
    int at = text.startsWith("\r\n", end - 2) ? end - 2 : end - 1;
    while (at > 0 && !SourceText.isLineBreak(text.charAt(at - 1))) {
      at--;
    }
    return at;
  }

  /**
   * The text with other items in another order. Other comments before an item that leaves stay,
   * before the one that followed it.
   */
  SourceText with(List<Place> places) {
    List<String> leads = leads(places);
    boolean keepsFirst = stays(0, places);
    StringBuilder text =
        new StringBuilder(keepsFirst ? before : before.substring(0, startOfComment(before)));
    for (Place place : places) {
      if (place.item() >= 0) {
        text.append(leads.get(place.item()));
        text.append(ended(blocks.get(place.item()).body()));
      }
      place.lines().forEach(line -> text.append(line).append(lineBreak));
    }
    text.append(leads.get(blocks.size()));
    boolean wasOpen = after.isEmpty() && !ended(source.text()).equals(source.text());
    if (wasOpen) {
      text.setLength(text.length() - lineBreak.length());
    }
    return new SourceText(source.path(), text.append(after).toString());
  }

  /** The lines before each item, and those after all of them. */
  private List<String> leads(List<Place> places) {
    List<String> leads = new ArrayList<>();
    String carried = "";
    for (int i = 0; i < blocks.size(); i++) {
      String lead = blocks.get(i).lead();
      boolean stays = stays(i, places);
      leads.add(stays ? carried + lead : "");
      String left = stays ? "" : carried + lead.substring(0, startOfComment(lead));
      carried = left.isBlank() ? "" : left;
    }
    leads.add(carried.isEmpty() ? "" : ended(carried));
    return leads;
  }

  private static boolean stays(int item, List<Place> places) {
    return places.stream().anyMatch(place -> place.item() == item);
  }

  private String ended(String lines) {
    boolean isEnded = !lines.isEmpty() && SourceText.isLineBreak(lines.charAt(lines.length() - 1));
    return isEnded ? lines : lines + lineBreak;
  }
}
