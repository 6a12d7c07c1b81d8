package org.headhouse.linter.diagram;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.headhouse.linter.diagram.Part.Frame;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.diagram.Part.Symbol;
import org.headhouse.linter.diagram.Part.Wire;
import org.headhouse.linter.figures.Measure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Where things stand, for sites of every size and of all sorts. */
class LayoutTest {
  private static final double ROUNDING = 1e-6;

  private static Stream<Arguments> sites() {
    Stream<Integer> sizes =
        Stream.concat(
            IntStream.rangeClosed(2, 40).boxed(), Stream.of(60, 61, 120, 200, 246, 247, 254, 255));
    return sizes.flatMap(
        size ->
            Stream.of(PageFormat.values()).map(format -> Arguments.of(size, format, size * 31L)));
  }

  @ParameterizedTest(name = "{0} units on {1}")
  @MethodSource("sites")
  void everythingHasItsPlace(int units, PageFormat format, long seed) {
    Random random = new Random(seed);
    DrawnSite drawn = DrawnSite.of(RandomSite.text(units, random));
    assertThat(drawn.site().units()).hasSize(units);
    Measure measure = format == PageFormat.A4 ? Measure.METRIC : Measure.US;
    WiringDiagram diagram = new WiringDiagram(drawn.site(), drawn.results(), measure);
    for (Detail detail : Detail.values()) {
      everythingHasItsPlace(drawn, diagram, format, detail);
    }
  }

  private static void everythingHasItsPlace(
      DrawnSite drawn, WiringDiagram diagram, PageFormat format, Detail detail) {
    List<Strip> strips = diagram.strips(format, detail);

    everyItemStandsOnceAndInOrder(drawn, strips);
    everyFaultHasItsSign(diagram.signs(), strips);
    everyNameIsWhole(drawn, detail, strips);
    theCableRunsOnFromStripToStrip(strips);
    for (Strip strip : strips) {
      assertThat(strip.width() * detail.scale()).isLessThanOrEqualTo(format.width());
      assertThat(strip.height() * detail.scale()).isLessThanOrEqualTo(format.height());
      everythingLiesOnThePage(strip);
      nothingOverlaps(strip);
      noCableRunsThroughAnything(strip);
    }
  }

  /** ISO 3098-1: letters on a drawing are at least 1.8 mm high, which is 7 pt (from memory). */
  @Test
  void noLettersAreSmallerThanAnyoneReads() {
    double pointsPerPx = 72.0 / 96;
    for (Detail detail : Detail.values()) {
      for (TextStyle style : TextStyle.values()) {
        assertThat(style.size() * pointsPerPx * detail.scale()).isGreaterThanOrEqualTo(7 - 1e-9);
      }
    }
  }

  private static void everyItemStandsOnceAndInOrder(DrawnSite drawn, List<Strip> strips) {
    List<Integer> wanted = IntStream.range(0, drawn.site().items().size()).boxed().toList();
    assertThat(strips.stream().flatMap(strip -> items(strip).stream())).isEqualTo(wanted);
    assertThat(strips.stream().flatMap(strip -> strip.stops().stream()).map(s -> s.card().item()))
        .isEqualTo(wanted);
  }

  /** The items of a page as they are read: row by row, each from left to right. */
  private static List<Integer> items(Strip strip) {
    List<Frame> frames =
        new ArrayList<>(
            all(strip, Frame.class).stream()
                .filter(frame -> frame.item() >= 0 && frame.kind() != Frame.Kind.STATION)
                .toList());
    frames.sort(
        (one, other) ->
            one.area().y() == other.area().y()
                ? Double.compare(one.area().x(), other.area().x())
                : Double.compare(one.area().y(), other.area().y()));
    return frames.stream().map(Frame::item).toList();
  }

  /** Once in the legend, and at its place; that of the line as a whole stands on every strip. */
  private static void everyFaultHasItsSign(List<Mark> marks, List<Strip> strips) {
    for (Mark mark : marks) {
      long signs =
          strips.stream()
              .flatMap(strip -> all(strip, Sign.class).stream())
              .filter(sign -> sign.mark().equals(mark))
              .count();
      assertThat(signs).as("signs of %s", mark.place()).isOne();
    }
  }

  /** All letters of a name are shown, on as many lines as it needs. */
  private static void everyNameIsWhole(DrawnSite drawn, Detail detail, List<Strip> strips) {
    for (Strip strip : strips) {
      for (Stop stop : strip.stops()) {
        String shown =
            stop.card().rows().stream()
                .filter(CardRow.Line.class::isInstance)
                .map(CardRow.Line.class::cast)
                .filter(line -> line.style() == detail.nameStyle())
                .map(CardRow.Line::shown)
                .collect(Collectors.joining());
        String name = Names.plain(drawn.site().items().get(stop.card().item()));
        assertThat(shown.replace(" ", "")).isEqualTo(name.replace(" ", ""));
        assertThat(stop.card().rows()).noneMatch(row -> isCut(row, stop.card()));
      }
    }
  }

  private static boolean isCut(CardRow row, Card card) {
    return row instanceof CardRow.Line line
        && line.style().widthOf(line.shown()) > card.width() - 2 * Card.PADDING;
  }

  /** Where it leaves a strip at its lower edge, it enters the next at its upper edge. */
  private static void theCableRunsOnFromStripToStrip(List<Strip> strips) {
    for (int i = 0; i < strips.size() - 1; i++) {
      double lower = strips.get(i).height();
      List<Double> leaving =
          points(strips.get(i)).filter(p -> Math.abs(p.y() - lower) < 1).map(Point::x).toList();
      List<Double> entering =
          points(strips.get(i + 1)).filter(p -> p.y() == 0).map(Point::x).toList();
      assertThat(leaving).hasSize(1).isEqualTo(entering);
    }
  }

  private static Stream<Point> points(Strip strip) {
    return all(strip, Wire.class).stream().flatMap(wire -> wire.points().stream());
  }

  static void everythingLiesOnThePage(Strip strip) {
    Area whole = new Area(0, 0, strip.width(), strip.height());
    assertThat(strip.parts())
        .allSatisfy(part -> assertThat(holds(whole, part.area())).as("%s", part).isTrue());
  }

  static void nothingOverlaps(Strip strip) {
    List<Part> solid = strip.parts().stream().filter(part -> !(part instanceof Wire)).toList();
    for (int i = 0; i < solid.size(); i++) {
      for (int j = i + 1; j < solid.size(); j++) {
        Part one = solid.get(i);
        Part other = solid.get(j);
        boolean inside =
            (one instanceof Frame && holds(one.area(), other.area()))
                || (other instanceof Frame && holds(other.area(), one.area()));
        boolean onFrame = inside && !(one instanceof Frame && other instanceof Frame);
        if (!onFrame && overlap(one.area(), other.area())) {
          throw new AssertionError(one + "\noverlaps " + other);
        }
      }
    }
  }

  private static void noCableRunsThroughAnything(Strip strip) {
    for (Wire wire : all(strip, Wire.class)) {
      boolean cable = wire.kind() == Wire.Kind.CABLE || wire.kind() == Wire.Kind.OUTDOOR_CABLE;
      for (int i = 0; cable && i < wire.points().size() - 1; i++) {
        Area stretch = Area.of(wire.points().subList(i, i + 2));
        for (Part part : strip.parts()) {
          boolean crossed = !(part instanceof Wire || part instanceof Symbol);
          if (crossed && crosses(stretch, part.area())) {
            throw new AssertionError(wire + "\nruns through " + part);
          }
        }
      }
    }
  }

  private static <T extends Part> List<T> all(Strip strip, Class<T> kind) {
    return strip.parts().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static boolean holds(Area outer, Area inner) {
    return inner.x() >= outer.x() - ROUNDING
        && inner.y() >= outer.y() - ROUNDING
        && inner.right() <= outer.right() + ROUNDING
        && inner.bottom() <= outer.bottom() + ROUNDING;
  }

  private static boolean overlap(Area one, Area other) {
    return one.x() < other.right() - ROUNDING
        && other.x() < one.right() - ROUNDING
        && one.y() < other.bottom() - ROUNDING
        && other.y() < one.bottom() - ROUNDING;
  }

  /** A line has no width, so that touching an edge is no crossing. */
  private static boolean crosses(Area stretch, Area other) {
    return stretch.x() < other.right() - ROUNDING
        && other.x() < stretch.right() - ROUNDING + (stretch.width() == 0 ? 2 * ROUNDING : 0)
        && stretch.y() < other.bottom() - ROUNDING
        && other.y() < stretch.bottom() - ROUNDING + (stretch.height() == 0 ? 2 * ROUNDING : 0)
        && (stretch.width() > 0 || other.x() < stretch.x() - ROUNDING)
        && (stretch.height() > 0 || other.y() < stretch.y() - ROUNDING);
  }
}
