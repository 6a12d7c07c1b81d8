/**
 * From the located tree to the model.
 *
 * <p>Binding meets every fault that the published JSON Schemas know, and only says that there is
 * one: {@link org.headhouse.linter.bind.Bound#needsSchemaCheck()}. What the fault is, is reported
 * by {@code schema}, which then looks at the same tree; other files need no second look. Faults
 * that a schema cannot express, such as a day that the calendar lacks, are reported here.
 */
@NullMarked
@Internal
package org.headhouse.linter.bind;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
