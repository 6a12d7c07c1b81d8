/**
 * What has to be bought, cut and carried for a line, or for a change of it: cable, terminators,
 * bias resistors, communication modules, surge protectors, repeaters and converters.
 *
 * <p>Each is counted from what the file says of one place. What the file does not say is named, and
 * never counted as none. Words for people and forms of files are in {@code report}.
 */
@NullMarked
@Stable
package org.headhouse.linter.materials;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
