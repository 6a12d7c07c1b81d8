/**
 * What is reported, in the words of SARIF 2.1.0: levels, messages, locations and results.
 *
 * <p>Immutable records only; who finds things and who prints them lives elsewhere.
 *
 * <p>Stable: names and meanings stay within a major version.
 */
@NullMarked
package org.headhouse.linter.result;

import org.jspecify.annotations.NullMarked;
