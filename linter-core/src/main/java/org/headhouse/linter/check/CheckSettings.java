package org.headhouse.linter.check;

import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;

/**
 * What holds for every file of a run.
 *
 * @param sitePolicy what the policy says of every site
 */
public record CheckSettings(
    RuleCatalogue rules,
    Policy policy,
    DeviceTypes deviceTypes,
    Limits limits,
    SitePolicy sitePolicy) {}
