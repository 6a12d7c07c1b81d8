/**
 * From text to a located tree: every scalar keeps its region from the parser on.
 *
 * <p>Nothing here knows what a site is. The tree is built from the parser's events, since composing
 * first would cost a second tree and lose aliases and duplicate keys.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.yaml;

import org.jspecify.annotations.NullMarked;
