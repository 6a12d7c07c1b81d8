/**
 * The sites of a repository in one state, and which of them is which in a later state.
 *
 * <p>What differs between two sites is known by {@code change}. Nothing here knows git.
 *
 * <p>Stable: names and meanings stay within a major version; types marked {@link
 * org.headhouse.linter.stability.Internal} are not meant.
 */
@NullMarked
package org.headhouse.linter.repository;

import org.jspecify.annotations.NullMarked;
