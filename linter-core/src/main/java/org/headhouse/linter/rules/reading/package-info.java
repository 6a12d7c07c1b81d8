/** What is checked while files are read, before a model exists. */
@NullMarked
package org.headhouse.linter.rules.reading;

import org.jspecify.annotations.NullMarked;
