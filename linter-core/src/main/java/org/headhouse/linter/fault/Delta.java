package org.headhouse.linter.fault;

/**
 * A network of resistors seen from three terminals, D1, D0 and common, as the three conductances
 * between them. Series resistance is put in front by taking an inner node out (star to mesh, A.
 * Rosen, A New Network Theorem, J. IEE 62, 1924), which only adds, multiplies and divides positive
 * numbers: nothing cancels, and a conductor that is open needs no care.
 *
 * @param across from D1 to D0
 * @param ofD1 from D1 to common
 * @param ofD0 from D0 to common
 */
record Delta(double across, double ofD1, double ofD0) {
  static final Delta NOTHING = new Delta(0, 0, 0);

  Delta plus(Delta other) {
    return new Delta(across + other.across, ofD1 + other.ofD1, ofD0 + other.ofD0);
  }

  /** Seen through a run of cable; infinite ohms are an open conductor. */
  Delta through(double ohmsOfD1, double ohmsOfD0) {
    return throughD1Swapped(ohmsOfD1).throughD1Swapped(ohmsOfD0);
  }

  /** Seen through a resistor in D1, with D1 and D0 swapped. */
  private Delta throughD1Swapped(double ohms) {
    double sum = across + ofD1;
    if (Double.isInfinite(ohms)) {
      return new Delta(0, ofD0 + (sum == 0 ? 0 : across * ofD1 / sum), 0);
    }
    double share = 1 / (1 + ohms * sum);
    return new Delta(across * share, ofD0 + ohms * across * ofD1 * share, ofD1 * share);
  }

  /** What an ohmmeter between D1 and D0 shows; infinite where nothing joins them. */
  double ohms() {
    double sum = ofD1 + ofD0;
    return 1 / (across + (sum == 0 ? 0 : ofD1 * ofD0 / sum));
  }
}
