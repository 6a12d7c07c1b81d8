/**
 * One job for many files: by several threads, in the order of the files, and so that a file with
 * which it fails does not end the run.
 *
 * <p>What the job does with one file is known by the packages before this one.
 */
@NullMarked
@Internal
package org.headhouse.linter.batch;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
