/**
 * The forms in which results and changes are told: text, SARIF 2.1.0, JUnit XML, Markdown, JSON.
 */
@NullMarked
package org.headhouse.linter.report;

import org.jspecify.annotations.NullMarked;
