package org.headhouse.linter.site;

/** The size of a conductor, as the trade on either side of the Atlantic writes it. */
public sealed interface Gauge extends Quantity {

  /** American Wire Gauge: the higher the number, the thinner the wire. */
  record Awg(int number, String written) implements Gauge {}

  /** The area of the cross-section. */
  record Area(double squareMillimetres, String written) implements Gauge {}
}
