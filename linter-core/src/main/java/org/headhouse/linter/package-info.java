/** The façade that an embedding program uses, and nothing else. */
@NullMarked
package org.headhouse.linter;

import org.jspecify.annotations.NullMarked;
