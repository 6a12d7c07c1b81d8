package org.headhouse.linter.diagram;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.markup.XmlWriter;

/**
 * A drawing as SVG: the outer element with its name, its text alternative and its style, and the
 * basic shapes in it. The kind of a shape is its class in the style sheet.
 *
 * <p>A page that embeds drawings sets {@code --drawing-ink} and {@code --drawing-paper}; without
 * them they follow the reader's choice of light or dark. Print is black on white in any case.
 */
final class SvgDocument {
  private static final String STYLE =
      """
      .line-drawing{--ink:var(--drawing-ink,#111);--paper:var(--drawing-paper,#fff);\
      color:var(--ink);background:var(--paper);direction:ltr;\
      font-family:'DejaVu Sans',Verdana,'Noto Sans',Arial,sans-serif}
      @media (prefers-color-scheme:dark){.line-drawing{--ink:var(--drawing-ink,#f4f4f4);\
      --paper:var(--drawing-paper,#161616)}}
      @media print{.line-drawing{--ink:#000;--paper:#fff}}
      .line-drawing text{fill:currentColor;stroke:none}
      .line-drawing .middle{text-anchor:middle}
      .line-drawing .end{text-anchor:end}
      %s.line-drawing .wire{fill:none;stroke:currentColor;stroke-width:1.8}
      .line-drawing .outdoor{stroke-dasharray:7 4}
      .line-drawing .lead{fill:none;stroke:currentColor;stroke-width:1.1}
      .line-drawing .thin{fill:none;stroke:currentColor;stroke-width:.5}
      .line-drawing .limit{fill:none;stroke:currentColor;stroke-width:1.6;stroke-dasharray:9 4}
      .line-drawing .margin{fill:none;stroke:currentColor;stroke-width:1.2;stroke-dasharray:1.5 3}
      .line-drawing .frame{fill:var(--paper);stroke:currentColor;stroke-width:1.1}
      .line-drawing .solid{fill:currentColor;stroke:currentColor}
      .line-drawing text.reversed{fill:var(--paper)}
      """
          .formatted(letterings());

  private static String letterings() {
    return Arrays.stream(TextStyle.values())
        .map(
            style ->
                ".line-drawing .%s{font-size:%spx%s}\n"
                    .formatted(
                        style.word(),
                        number(style.size()),
                        style.bold() ? ";font-weight:bold" : ""))
        .collect(Collectors.joining());
  }

  private final XmlWriter xml = new XmlWriter();

  /**
   * Starts a drawing; {@link #finish} ends it.
   *
   * @param prefix of the ids, unlike any other on the page that it is put into
   * @param description what is drawn, in words
   */
  SvgDocument(double width, double height, String prefix, String title, String description) {
    xml.start(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "line-drawing",
        "width",
        number(width),
        "height",
        number(height),
        "viewBox",
        "0 0 " + number(width) + " " + number(height),
        "role",
        "img",
        "aria-labelledby",
        prefix + "-title " + prefix + "-desc");
    xml.newLine().element("title", title, "id", prefix + "-title");
    xml.newLine().element("desc", description, "id", prefix + "-desc");
    xml.newLine().element("style", STYLE).newLine();
  }

  /** For elements that have no method here. */
  XmlWriter xml() {
    return xml;
  }

  String finish() {
    return xml.end().newLine().finish();
  }

  /**
   * A rectangle.
   *
   * @param more names and values of further attributes in turn
   */
  void rectangle(String kind, Area area, String... more) {
    Stream<String> attributes =
        Stream.of(
            "class",
            kind,
            "x",
            number(area.x()),
            "y",
            number(area.y()),
            "width",
            number(area.width()),
            "height",
            number(area.height()));
    xml.empty("rect", Stream.concat(attributes, Arrays.stream(more)).toArray(String[]::new));
  }

  void circle(String kind, double x, double y, double radius) {
    xml.empty("circle", "class", kind, "cx", number(x), "cy", number(y), "r", number(radius));
  }

  /**
   * A path.
   *
   * @param commands as SVG has them, such as {@link #move} and {@link #line} give
   */
  void path(String kind, String commands) {
    xml.empty("path", "class", kind, "d", commands);
  }

  void polyline(String kind, List<Point> points) {
    String text =
        points.stream()
            .map(point -> number(point.x()) + "," + number(point.y()))
            .collect(Collectors.joining(" "));
    xml.empty("polyline", "class", kind, "points", text);
  }

  static String move(double x, double y) {
    return "M" + number(x) + " " + number(y);
  }

  static String line(double x, double y) {
    return "L" + number(x) + " " + number(y);
  }

  /** A coordinate, to a hundredth of a px; there are thousands, so no formatter is asked. */
  static String number(double value) {
    long hundredths = Math.round(value * 100);
    long rest = Math.abs(hundredths % 100);
    String sign = hundredths < 0 ? "-" : "";
    String whole = sign + Math.abs(hundredths / 100);
    if (rest == 0) {
      return whole;
    }
    return whole + (rest % 10 == 0 ? "." + rest / 10 : (rest < 10 ? ".0" : ".") + rest);
  }
}
