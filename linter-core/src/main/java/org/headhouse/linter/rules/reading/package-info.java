/**
 * What is checked while files are read, before a model exists.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.rules.reading;

import org.jspecify.annotations.NullMarked;
