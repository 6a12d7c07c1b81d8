package org.headhouse.linter.site;

/** A capacitance. */
public record Capacitance(double farads, String written) implements Quantity {}
