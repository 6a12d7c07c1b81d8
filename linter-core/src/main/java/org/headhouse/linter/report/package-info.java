/** The forms of results and changes: text, SARIF 2.1.0, JUnit XML, Markdown, JSON. */
@NullMarked
@Stable
package org.headhouse.linter.report;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
