package org.headhouse.linter.site;

/** A share of something, 1 being all of it. */
public record Percentage(double share, String written) implements Quantity {}
