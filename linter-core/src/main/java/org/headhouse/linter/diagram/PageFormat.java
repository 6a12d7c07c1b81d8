package org.headhouse.linter.diagram;

/** A sheet of paper; a margin of 12 mm on each side is not printed on. */
public enum PageFormat {
  /** 210 mm by 297 mm (ISO 216). */
  A4(210, 297),
  /** 8.5 in by 11 in (ANSI/ASME Y14.1, from memory). */
  LETTER(215.9, 279.4);

  private static final double MARGIN_MM = 12;
  private static final double PX_PER_MM = 96 / 25.4;

  private final double widthMm;
  private final double heightMm;

  PageFormat(double widthMm, double heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** The printable width, in px of 1/96 inch as CSS has them. */
  public double width() {
    return Math.floor((widthMm - 2 * MARGIN_MM) * PX_PER_MM);
  }

  /** The printable height, in px. */
  public double height() {
    return Math.floor((heightMm - 2 * MARGIN_MM) * PX_PER_MM);
  }
}
