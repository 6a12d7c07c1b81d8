/**
 * The way of one file through all stages: bytes, YAML, schema, model, rules, policy, suppressions.
 *
 * <p>Bytes in, results out: neither files nor threads are known here.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.check;

import org.jspecify.annotations.NullMarked;
