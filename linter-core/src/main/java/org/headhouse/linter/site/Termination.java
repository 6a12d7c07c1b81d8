package org.headhouse.linter.site;

import org.jspecify.annotations.Nullable;

/**
 * What is connected across the pair at one item.
 *
 * @param resistance the resistor, or null for no termination
 * @param capacitance the capacitor in series with it, or null
 * @param written as the file has it
 */
public record Termination(
    @Nullable Resistance resistance, @Nullable Capacitance capacitance, String written) {

  public Termination {
    if (resistance == null && capacitance != null) {
      throw new IllegalArgumentException("a capacitor without its resistor");
    }
  }

  /** Whether there is a terminator. */
  public boolean isFitted() {
    return resistance != null;
  }

  /** Whether direct current passes: there is a terminator, and no capacitor in series with it. */
  public boolean conductsSteadily() {
    return resistance != null && capacitance == null;
  }
}
