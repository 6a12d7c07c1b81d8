/**
 * The files of a repository: which of them are sites, what holds for all of them, and how a file is
 * written so that no half of it is ever seen.
 *
 * <p>For runs of the linter on folders. Nothing here knows the content of a file, and a program
 * that has its sites elsewhere needs none of it; the usual names need no library.
 */
@NullMarked
@Internal
package org.headhouse.linter.files;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
