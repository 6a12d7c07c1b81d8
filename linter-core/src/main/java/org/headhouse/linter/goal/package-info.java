/**
 * The goals that the plugin and the command do alike: what each is asked for, as a request with
 * parameters that can be used, and its work.
 *
 * <p>A request prints on the console that it is given and returns how it ended. Nothing here knows
 * how a parameter was given, or what becomes of the outcome.
 */
@NullMarked
@Internal
package org.headhouse.linter.goal;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
