/**
 * The sheets that people take to a site, as pages of HTML, and the index over all sites.
 *
 * <p>Records have the content of a page in words, ready to print; the templates in {@code
 * src/main/jte}, compiled into this package, arrange it. Text of a file goes through {@link
 * org.headhouse.linter.report.sheet.PlainText}, and is escaped by the templates. What is computed
 * comes from {@code figures}; what is drawn comes as {@link
 * org.headhouse.linter.report.sheet.Drawings}.
 */
@NullMarked
@Internal
package org.headhouse.linter.report.sheet;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
