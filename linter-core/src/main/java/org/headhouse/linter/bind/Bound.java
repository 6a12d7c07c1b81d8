package org.headhouse.linter.bind;

import java.util.List;
import org.headhouse.linter.result.Finding;

/**
 * A model, and what was met on the way to it.
 *
 * @param needsSchemaCheck whether the schema has something to report of the file
 * @param findings faults that the schema cannot express
 */
public record Bound<T>(T model, boolean needsSchemaCheck, List<Finding> findings) {}
