/**
 * What holds whatever comes in: properties of the whole tool, each told of one input of any bytes.
 *
 * <p>The fuzzer looks for inputs that break them, and a test tries those again that it kept.
 */
@NullMarked
package org.headhouse.linter.fuzz;

import org.jspecify.annotations.NullMarked;
