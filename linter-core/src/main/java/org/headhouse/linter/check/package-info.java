/**
 * The way of one file through all stages: bytes, YAML, schema, model, rules, policy, suppressions.
 *
 * <p>Bytes in, results out: neither files nor threads are known here.
 *
 * <p>A file that an earlier check found clean is not checked again. What is trusted there is the
 * seal of {@link org.headhouse.linter.check.CleanFiles}, made with a secret that only one user has:
 * whatever has another seal is as good as nothing, and whoever reads the secret can make a faulty
 * file pass. Where the secret and the sealed bytes are is not known here either.
 */
@NullMarked
@Internal
package org.headhouse.linter.check;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
