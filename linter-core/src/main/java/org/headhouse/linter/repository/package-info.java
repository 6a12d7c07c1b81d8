/**
 * The sites of a repository in one state, and which of them is which in a later state.
 *
 * <p>What differs between two sites is known by {@code change}. Nothing here knows git.
 */
@NullMarked
@Stable
package org.headhouse.linter.repository;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
