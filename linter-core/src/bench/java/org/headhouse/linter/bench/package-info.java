/** Benchmarks: the whole check beside a floor that is measured in the same run. */
@NullMarked
package org.headhouse.linter.bench;

import org.jspecify.annotations.NullMarked;
