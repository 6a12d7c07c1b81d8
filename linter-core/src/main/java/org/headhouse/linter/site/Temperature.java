package org.headhouse.linter.site;

/** A temperature, in degrees Celsius as everything about cables is. */
public record Temperature(double celsius, String written) implements Quantity {}
