package org.headhouse.linter.line;

/**
 * What may lie between each node of a ladder and the return: a conductance from a least to a
 * greatest value, in series with a source.
 *
 * @param leastSiemens of each node
 * @param greatestSiemens of each node
 * @param volts of the source of each node, 0 without one
 */
record CornerPart(double[] leastSiemens, double[] greatestSiemens, double[] volts) {}
