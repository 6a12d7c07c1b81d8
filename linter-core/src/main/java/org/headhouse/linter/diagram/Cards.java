package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.diagram.Part.Frame;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.Capacitance;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.Voltage;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/** Makes the cards of a line's items. */
final class Cards {
  private static final int MOST_LINES_OF_A_NAME = 40;
  private static final int MOST_LINES_OF_READINGS = 8;
  private static final int MOST_LINES_OF_A_TEXT = 4;

  private final Site site;
  private final ResultMarks marks;
  private final int stationAt;
  private final int earthAt;
  private final Detail detail;
  private final double width;
  private final double inner;

  /**
   * @param width of every card
   */
  Cards(Site site, ResultMarks marks, int stationAt, Detail detail, double width) {
    this.detail = detail;
    this.width = width;
    this.inner = width - 2 * Card.PADDING;
    this.site = site;
    this.marks = marks;
    this.stationAt = stationAt;
    this.earthAt = LandedConductors.earthAt(site);
  }

  Card of(ChainItem item) {
    Mark mark = marks.of(item);
    List<CardRow> rows = new ArrayList<>();
    Frame.Kind kind = Frame.Kind.REPEATER;
    if (isUnderSign(mark)) {
      rows.add(new CardRow.Blank());
    }
    if (item instanceof Unit unit) {
      kind = unit.isHead() ? Frame.Kind.HEAD : Frame.Kind.UNIT;
      unit(unit, mark != null, rows);
    } else if (item instanceof Repeater repeater) {
      repeater(repeater, mark != null, rows);
    } else {
      kind = Frame.Kind.UNIT;
      device(item, mark != null, rows);
    }
    biases(item, rows);
    if (item.index() == earthAt) {
      rows.add(new CardRow.Divider());
      if (detail == Detail.DRAWN) {
        rows.add(new CardRow.Earth());
      } else {
        text("G to earth, only here", TextStyle.SMALL, rows);
      }
    }
    Card station = item.index() == stationAt ? station(item) : null;
    return new Card(item.index(), kind, width, rows, mark, station);
  }

  /** A narrow outline has no room for a sign beside its text. */
  private boolean isUnderSign(@Nullable Mark mark) {
    return mark != null && detail == Detail.IN_WORDS;
  }

  private void unit(Unit unit, boolean marked, List<CardRow> rows) {
    if (unit.isHead()) {
      text("head unit", TextStyle.STRONG, rows);
    }
    name(unit, marked, rows);
    text(
        unit.address().optional().map(address -> "address " + address).orElse("no address"),
        detail.addressStyle(),
        rows);
    landed(unit.connection(), unit.type(), rows);
    if (unit.pair().is(Pair.CROSSED)) {
      text("pair crossed", TextStyle.STRONG, rows);
    }
    terminator(unit.termination(), "terminator", rows);
  }

  /** Equipment or a converter. */
  private void device(ChainItem item, boolean marked, List<CardRow> rows) {
    rows.add(CardRow.Line.of(item.kind().word(), TextStyle.SMALL));
    name(item, marked, rows);
    item.address()
        .optional()
        .ifPresent(address -> text("address " + address, detail.addressStyle(), rows));
    Connection connection = item.connection(Side.IN);
    if (connection.conductors().isGiven()) {
      landed(connection, item.type(), rows);
    }
    if (connection.pair().is(Pair.CROSSED)) {
      text("pair crossed", TextStyle.STRONG, rows);
    }
    terminator(connection.termination(), "terminator", rows);
  }

  /** In words, the table beside the drawing has it. */
  private void landed(Connection connection, DeviceType type, List<CardRow> rows) {
    if (detail == Detail.DRAWN) {
      rows.add(
          CardRow.Line.of(
              LandedConductors.marks(connection.conductors(), type) + " landed", TextStyle.SMALL));
    }
  }

  private void repeater(Repeater repeater, boolean marked, List<CardRow> rows) {
    if (detail == Detail.DRAWN) {
      rows.add(new CardRow.RepeaterHead());
    } else {
      text("repeater", TextStyle.STRONG, rows);
    }
    name(repeater, marked, rows);
    if (detail == Detail.DRAWN) {
      text(segments(repeater), TextStyle.SMALL, rows);
    }
    terminator(repeater.terminationIn(), "terminator in", rows);
    terminator(repeater.terminationOut(), "terminator out", rows);
  }

  private String segments(Repeater repeater) {
    int first = -1;
    int last = -1;
    for (int i = 0; i < site.segments().size(); i++) {
      if (site.segments().get(i).items().stream().anyMatch(repeater::isSameItemAs)) {
        first = first < 0 ? i + 1 : first;
        last = i + 1;
      }
    }
    return first == last ? "segment " + first : "segment " + first + " in, " + last + " out";
  }

  private void name(ChainItem item, boolean marked, List<CardRow> rows) {
    String name = Names.plain(item);
    double room = marked && detail == Detail.DRAWN ? inner - Sign.WIDTH : inner;
    TextStyle style = detail.nameStyle();
    for (String line : Lettering.wrap(name, room, style, MOST_LINES_OF_A_NAME)) {
      rows.add(new CardRow.Line(line, name, style));
    }
  }

  private void terminator(Setting<Termination> setting, String label, List<CardRow> rows) {
    Termination termination = setting.orNull();
    Resistance resistance = termination == null ? null : termination.resistance();
    if (termination == null) {
      rows.add(new CardRow.Divider());
      labelled(label, "not known", rows);
    } else if (resistance != null) {
      Capacitance capacitance = termination.capacitance();
      rows.add(new CardRow.Divider());
      if (detail == Detail.DRAWN) {
        rows.add(new CardRow.Terminator(capacitance != null));
      }
      labelled(label, value(resistance, capacitance), rows);
    }
  }

  /** Label and value, on one line where both fit. */
  private void labelled(String label, String value, List<CardRow> rows) {
    TextStyle style = TextStyle.SMALL;
    String both = label + " " + value;
    if (detail == Detail.IN_WORDS || style.widthOf(both) <= inner) {
      text(both, style, rows);
    } else {
      text(label, style, rows);
      text(value, style, rows);
    }
  }

  /** On as many lines as it needs. */
  private void text(String text, TextStyle style, List<CardRow> rows) {
    Lettering.wrap(text, inner, style, MOST_LINES_OF_A_TEXT)
        .forEach(line -> rows.add(CardRow.Line.of(line, style)));
  }

  static String value(Resistance resistance, @Nullable Capacitance capacitance) {
    return Shown.resistor(resistance.ohms())
        + (capacitance == null ? "" : " + " + Shown.capacitor(capacitance.farads()));
  }

  private void biases(ChainItem item, List<CardRow> rows) {
    for (Bias bias : biasesAt(site, item)) {
      Resistance each = bias.resistors().orNull();
      Voltage supply = bias.supply().orNull();
      rows.add(new CardRow.Divider());
      if (detail == Detail.DRAWN) {
        rows.add(
            new CardRow.BiasResistor(
                "D1",
                supply == null
                    ? "supply"
                    : Lettering.fit(Shown.supply(supply.volts()), 48, TextStyle.SMALL)));
        rows.add(new CardRow.BiasResistor("D0", "common"));
      }
      text(
          each == null ? "bias, not known" : "bias " + Shown.resistor(each.ohms()) + " each",
          TextStyle.SMALL,
          rows);
      if (item instanceof Repeater && item.index() < site.items().size() - 1) {
        String side = bias.side().or(Side.OUT).word();
        text("on the " + side + " side", TextStyle.SMALL, rows);
      }
      if (detail == Detail.DRAWN && item instanceof Unit unit && unit.type().isKnown()) {
        rows.add(
            CardRow.Line.of(
                "D1 is on " + Lettering.visible(positive(unit.type())), TextStyle.SMALL));
      }
    }
  }

  /** The mark of the terminal for D1. */
  private static String positive(DeviceType type) {
    return type.mark(type.positiveTerminal());
  }

  /** The bias that the file has for an item; of two items with one name, the first has it. */
  static List<Bias> biasesAt(Site site, ChainItem item) {
    String name = item.name().orNull();
    boolean first =
        name != null
            && site.items().stream().filter(one -> one.name().is(name)).findFirst().orElse(item)
                == item;
    return site.line().optional().flatMap(line -> line.bias().optional()).orElse(List.of()).stream()
        .filter(bias -> first && bias.at().is(item.name().or("")))
        .toList();
  }

  private Card station(ChainItem item) {
    List<CardRow> rows = new ArrayList<>();
    Mark mark = marks.ofStation();
    if (isUnderSign(mark)) {
      rows.add(new CardRow.Blank());
    }
    double room = mark == null || isUnderSign(mark) ? inner : inner - Sign.WIDTH;
    Lettering.wrap("weather station", room, TextStyle.STRONG, 2)
        .forEach(line -> rows.add(CardRow.Line.of(line, TextStyle.STRONG)));
    String readings = readings(site.weatherStation().orNull());
    Lettering.wrap(readings, room, TextStyle.SMALL, MOST_LINES_OF_READINGS)
        .forEach(line -> rows.add(CardRow.Line.of(line, TextStyle.SMALL)));
    return new Card(item.index(), Frame.Kind.STATION, width, rows, mark, null);
  }

  /** What the station measures, in words. */
  static String readings(@Nullable WeatherStation station) {
    List<Setting<Reading>> given = station == null ? List.of() : station.readings().or(List.of());
    return given.stream()
        .flatMap(reading -> reading.optional().stream())
        .map(reading -> reading.word().replace('-', ' '))
        .collect(Collectors.joining(", "));
  }
}
