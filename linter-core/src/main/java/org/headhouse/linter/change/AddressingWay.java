package org.headhouse.linter.change;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.headhouse.linter.stability.Internal;

/**
 * One way of giving addresses to units that join a commissioned line.
 *
 * @param addresses of each unit that is set to one in this way: those that join, and live ones that
 *     get another
 * @param settings how often the address of a live unit is set
 * @param visits at how many items something is done in all; one that is set to a spare address
 *     first counts twice
 * @param asWritten whether the later state has these addresses
 */
public record AddressingWay(
    Kind kind, Map<String, Integer> addresses, int settings, int visits, boolean asWritten) {

  /** How addresses are chosen. */
  public enum Kind {
    /** Above the highest in use; no live unit gets another. */
    NEXT_FREE("next-free"),
    /** All units are numbered along the chain. */
    CHAIN_ORDER("chain-order");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** For machines. */
    public String word() {
      return word;
    }
  }

  @Internal
  public AddressingWay {
    addresses = Collections.unmodifiableMap(new LinkedHashMap<>(addresses));
  }
}
