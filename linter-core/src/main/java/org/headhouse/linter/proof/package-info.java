/**
 * What a record of commissioning has to prove, and what it does prove.
 *
 * <p>Names of items and kinds of proof only: which values are right is the business of rules.
 */
@NullMarked
@Internal
package org.headhouse.linter.proof;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
