package org.headhouse.linter.result;

import java.io.Serializable;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What makes a result the same one in two states of a repository, whatever lines, comments, order
 * of keys and spelling of values do meanwhile. What is computed does not count, since it may change
 * by any edit; what is written at the place does.
 *
 * @param site the id of the site, or null where the file does not say
 * @param at the place in the words of the site, items of the chain by name: {@code chain/Hardening
 *     Bay/address}
 * @param unit the unit that is concerned, where the place does not say, else null
 * @param value what is written there, in one spelling, or null where that is more than a value or a
 *     list of values
 * @param graded the level, where the rule has more and less severe results, else null
 * @param detail what tells the result from others at the same place, or of the same unit, else null
 */
public record Identity(
    @Nullable String site,
    String at,
    @Nullable String unit,
    @Nullable String value,
    @Nullable Level graded,
    @Nullable String detail)
    implements Serializable {
  @Internal
  public Identity {}
}
