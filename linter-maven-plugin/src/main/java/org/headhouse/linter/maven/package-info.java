/**
 * The goals. A mojo has the parameters of a goal and turns them into a request, which does the
 * work; its outcome becomes that of the build.
 */
@NullMarked
package org.headhouse.linter.maven;

import org.jspecify.annotations.NullMarked;
