package org.headhouse.linter.check;

import org.headhouse.linter.figures.TransactionTimes;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.source.Limits;

/**
 * What holds for every file of a run.
 *
 * @param times what the traffic is computed with
 * @param keptFree the addresses that no unit is to have
 */
public record Setup(
    RuleCatalogue rules,
    Policy policy,
    DeviceTypes deviceTypes,
    Limits limits,
    TransactionTimes times,
    ExcludedAddresses keptFree) {}
