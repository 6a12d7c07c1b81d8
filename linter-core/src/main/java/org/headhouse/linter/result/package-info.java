/**
 * What is reported, in the words of SARIF 2.1.0: levels, messages, locations and results.
 *
 * <p>Immutable records only; who finds things and who prints them lives elsewhere.
 */
@NullMarked
@Stable
package org.headhouse.linter.result;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
