package org.headhouse.linter.site;

/** A voltage. */
public record Voltage(double volts, String written) implements Quantity {}
