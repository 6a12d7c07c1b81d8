/**
 * What a record of commissioning has to prove, and what it does prove.
 *
 * <p>Names of items and kinds of proof only: which values are right is the business of rules.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.proof;

import org.jspecify.annotations.NullMarked;
