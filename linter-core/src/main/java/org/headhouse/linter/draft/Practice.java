package org.headhouse.linter.draft;

/**
 * What a repository's policy wants of every line.
 *
 * @param groundEverywhere whether ground is landed at every unit, and not at the head unit only
 * @param wantedIdleVolts the least idle voltage at any unit
 */
public record Practice(boolean groundEverywhere, double wantedIdleVolts) {}
