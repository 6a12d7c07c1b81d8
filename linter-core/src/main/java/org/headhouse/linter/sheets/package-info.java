/**
 * The run that makes the sheets of many sites: checks, draws, names the pages and lists them.
 *
 * <p>What is on a page is known by {@code report.sheet}, and what a drawing looks like by {@code
 * diagram}.
 */
@NullMarked
@Internal
package org.headhouse.linter.sheets;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
