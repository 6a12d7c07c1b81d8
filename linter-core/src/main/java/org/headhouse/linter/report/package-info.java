/**
 * The forms of results and changes: text, SARIF 2.1.0, JUnit XML, Markdown, JSON.
 *
 * <p>Stable: names and meanings stay within a major version; types marked {@link
 * org.headhouse.linter.stability.Internal} are not meant.
 */
@NullMarked
package org.headhouse.linter.report;

import org.jspecify.annotations.NullMarked;
