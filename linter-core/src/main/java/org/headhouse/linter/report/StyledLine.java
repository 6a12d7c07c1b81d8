package org.headhouse.linter.report;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A line for people, in pieces that a terminal can show in colours of their own.
 *
 * @param pieces of printable text, in order
 */
public record StyledLine(List<Piece> pieces) {
  private static final String ESCAPE = "\u001B[";
  private static final String RESET = ESCAPE + "m";

  /** What a piece is to the reader. */
  public enum Style {
    PLAIN(""),
    ERROR("1;31"),
    WARNING("1;33"),
    NOTE("1;34"),
    STRONG("1");

    /** Parameters of the control function SGR of ECMA-48, chapter 8.3.117. */
    private final String rendition;

    Style(String rendition) {
      this.rendition = rendition;
    }
  }

  /** A part of a line. */
  public record Piece(Style style, String text) {}

  public StyledLine {
    pieces = List.copyOf(pieces);
  }

  /** A line without colours. */
  public static StyledLine plain(String text) {
    return new StyledLine(List.of(new Piece(Style.PLAIN, text)));
  }

  /** The line as it is without colours. */
  public String text() {
    return pieces.stream().map(Piece::text).collect(Collectors.joining());
  }

  /**
   * The line for a terminal, or for what is none. What is not printable is made so; such a line has
   * no colours.
   *
   * @param inColour whether a terminal shows it
   */
  public String shown(boolean inColour) {
    String text = text();
    String printable = TextReport.printable(text);
    return inColour && printable.equals(text) ? painted() : printable;
  }

  private String painted() {
    return pieces.stream()
        .map(
            piece ->
                piece.style() == Style.PLAIN
                    ? piece.text()
                    : ESCAPE + piece.style().rendition + "m" + piece.text() + RESET)
        .collect(Collectors.joining());
  }
}
