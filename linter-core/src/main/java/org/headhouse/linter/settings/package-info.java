/**
 * The settings of a linter, and what is made of them once: rules, policy, device types, baseline
 * and the check that they give.
 *
 * <p>Only files that hold for all sites are read here; what is done with sites comes after.
 */
@NullMarked
@Internal
package org.headhouse.linter.settings;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
