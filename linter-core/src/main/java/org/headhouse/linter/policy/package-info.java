/**
 * What a repository makes of the rules: levels and parameters.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.policy;

import org.jspecify.annotations.NullMarked;
