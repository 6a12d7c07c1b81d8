/**
 * The façade that an embedding program uses, and nothing else.
 *
 * <p>Stable: names and meanings stay within a major version.
 */
@NullMarked
package org.headhouse.linter;

import org.jspecify.annotations.NullMarked;
