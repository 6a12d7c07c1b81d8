/** What a repository makes of the rules: levels and parameters. */
@NullMarked
@Internal
package org.headhouse.linter.policy;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
