package org.headhouse.linter.site;

/** A resistance. */
public record Resistance(double ohms, String written) implements Quantity {}
