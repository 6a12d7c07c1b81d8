package org.headhouse.linter.site;

/** A length; feet are the international ones of 0.3048 m. */
public record Length(double metres, String written) implements Quantity {}
