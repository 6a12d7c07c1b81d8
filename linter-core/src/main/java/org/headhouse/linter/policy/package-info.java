/** What a repository makes of the rules: levels and parameters. */
@NullMarked
package org.headhouse.linter.policy;

import org.jspecify.annotations.NullMarked;
