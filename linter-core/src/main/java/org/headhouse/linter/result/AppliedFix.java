package org.headhouse.linter.result;

/**
 * A fix that was applied.
 *
 * @param step counted from 1: the regions are those of the text before that step
 * @param result what it mended
 */
public record AppliedFix(int step, Result result, Fix fix) {}
