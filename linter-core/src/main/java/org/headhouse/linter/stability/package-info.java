/**
 * What an embedding program may count on, said of types. Of packages their own pages say it.
 *
 * <p>Stable: the marks keep their meaning.
 */
@NullMarked
package org.headhouse.linter.stability;

import org.jspecify.annotations.NullMarked;
