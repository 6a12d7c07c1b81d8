package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.TerminalMarks;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;

/**
 * Where the conductors of an item are written by the marks of its maker, says which letters they
 * are: the schema that refuses them does not know the device types.
 */
final class TerminalWords {
  private TerminalWords() {}

  /** The findings of the schema in a site, those about such marks in better words. */
  static List<Finding> in(List<Finding> faults, Site site) {
    if (faults.stream().noneMatch(TerminalWords::isBadValue)) {
      return faults;
    }
    Map<Place, Message> messages =
        site.items().stream()
            .flatMap(item -> ofItem(item, site).stream())
            .collect(Collectors.toMap(Meant::place, Meant::message, (one, other) -> one));
    return faults.stream()
        .map(
            fault ->
                isBadValue(fault) && messages.containsKey(fault.place())
                    ? Finding.of(fault.rule(), fault.place(), messages.get(fault.place()))
                    : fault)
        .toList();
  }

  private static boolean isBadValue(Finding fault) {
    return fault.rule().equals("schema.bad-value");
  }

  private record Meant(Place place, Message message) {}

  private static List<Meant> ofItem(ChainItem item, Site site) {
    TerminalMarks marks = item.type().transceiver().terminals().orNull();
    if (marks == null) {
      return List.of();
    }
    Conductor positive = item.type().positiveTerminal();
    Map<Conductor, String> letters = new EnumMap<>(Conductor.class);
    put(letters, positive, marks.positive());
    put(letters, positive == Conductor.A ? Conductor.B : Conductor.A, marks.negative());
    put(letters, Conductor.C, marks.common());
    List<Meant> meant = new ArrayList<>();
    for (Setting<Conductor> conductor :
        item.connection(Side.IN).conductors().or(List.<Setting<Conductor>>of())) {
      Region at = conductor.place().region();
      if (conductor.isFaulty() && at.startLine() == at.endLine()) {
        String written = written(site, at);
        letters.forEach(
            (letter, mark) -> {
              if (mark.equals(written)) {
                meant.add(new Meant(conductor.place(), message(item, letter, mark)));
              }
            });
      }
    }
    return meant;
  }

  private static void put(Map<Conductor, String> letters, Conductor letter, Setting<String> mark) {
    mark.optional().ifPresent(text -> letters.put(letter, text));
  }

  /** What is written in a place, without quotes. */
  private static String written(Site site, Region at) {
    String text = site.source().text();
    String word =
        text.substring(
            site.source().offset(at.startLine(), at.startColumn()),
            site.source().offset(at.endLine(), at.endColumn()));
    return word.replaceAll("^[\"']|[\"']$", "");
  }

  private static Message message(ChainItem item, Conductor letter, String mark) {
    return new Message(
        "conductors are written as letters, and \"" + mark + "\" is a mark of the maker",
        "the file calls the terminals A, B, C and G, whatever the maker calls them",
        "write "
            + letter.word()
            + ": that is the terminal "
            + mark
            + " of the type \""
            + item.deviceType().or("")
            + "\"");
  }
}
