/**
 * What a rule is: the extension point of the project.
 *
 * <p>Rules of other jars implement {@link org.headhouse.linter.rule.SiteRule} and are found through
 * {@link java.util.ServiceLoader} under the name of {@link org.headhouse.linter.rule.Rule}.
 */
@NullMarked
@Stable
package org.headhouse.linter.rule;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
