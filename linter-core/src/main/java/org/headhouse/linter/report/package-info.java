/** The forms in which results are told: text, SARIF 2.1.0, JUnit XML. */
@NullMarked
package org.headhouse.linter.report;

import org.jspecify.annotations.NullMarked;
