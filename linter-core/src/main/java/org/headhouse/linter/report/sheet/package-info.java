/**
 * The sheets that people take to a site, as pages of HTML, and the index over all sites.
 *
 * <p>The records say what stands on a page, in words and ready to print; the templates in {@code
 * src/main/jte}, compiled into this package, say where. Text that a file holds goes through {@link
 * org.headhouse.linter.report.sheet.PlainText}, and is escaped by the templates. What is computed
 * comes from {@code figures}; what is drawn comes as {@link
 * org.headhouse.linter.report.sheet.Drawings}.
 *
 * <p>Internal: may change in any release.
 */
@NullMarked
package org.headhouse.linter.report.sheet;

import org.jspecify.annotations.NullMarked;
