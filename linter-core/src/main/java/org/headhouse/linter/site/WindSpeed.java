package org.headhouse.linter.site;

/** A speed of the wind; a mile is the international one of 1609.344 m. */
public record WindSpeed(double metresPerSecond, String written) implements Quantity {}
