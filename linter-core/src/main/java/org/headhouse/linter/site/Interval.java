package org.headhouse.linter.site;

/** A stretch of time, down to nanoseconds for the rise time of a line driver. */
public record Interval(double seconds, String written) implements Quantity {}
