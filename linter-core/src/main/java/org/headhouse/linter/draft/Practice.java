package org.headhouse.linter.draft;

import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.stability.Internal;

/**
 * What a repository's policy wants of every line.
 *
 * @param groundEverywhere whether ground is landed at every unit, and not at the head unit only
 * @param wantedIdleVolts the least idle voltage at any unit
 * @param keptFree the addresses that no unit gets
 */
@Internal
public record Practice(
    boolean groundEverywhere, double wantedIdleVolts, ExcludedAddresses keptFree) {}
