package org.headhouse.linter.proof;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.site.Side;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is seen or measured at one item.
 *
 * @param at the name of the item
 * @param side of a repeater, where something is measured; else null
 */
public record Proof(Kind kind, String at, @Nullable Side side) {

  /** What is proved. */
  public enum Kind {
    READINGS("the outdoor readings"),
    STORM_RESPONSE("the storm response"),
    STALE_RESPONSE("the response to stale readings"),
    PAIR_RESISTANCE("the pair resistance"),
    IDLE_VOLTAGE("the idle voltage");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** With its article, for messages. */
    public String words() {
      return words;
    }

    /** Whether a meter shows it. */
    public boolean isMeasured() {
      return this == PAIR_RESISTANCE || this == IDLE_VOLTAGE;
    }
  }

  static Proof seen(Kind kind, String unit) {
    return new Proof(kind, unit, null);
  }

  /** What a finding puts together that is about some proofs. */
  public static List<Finding.Case> cases(Collection<Proof> proofs) {
    return proofs.stream().map(Proof::asCase).toList();
  }

  private Finding.Case asCase() {
    String which = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    return new Finding.Case(at, which + (side == null ? "" : ", side " + side.word()));
  }

  /** The item for a message, with the side of a repeater. */
  public String place() {
    return "\"" + at + "\"" + (side == null ? "" : ", side " + side.word());
  }
}
