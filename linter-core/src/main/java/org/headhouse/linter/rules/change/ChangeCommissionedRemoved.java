package org.headhouse.linter.rules.change;

import java.util.List;
import java.util.Objects;
import org.headhouse.linter.change.Difference;
import org.headhouse.linter.change.SiteDifferences;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.ChangeRule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Place;
import org.jspecify.annotations.Nullable;

/** {@code change.commissioned-removed}. */
public final class ChangeCommissionedRemoved implements ChangeRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "change.commissioned-removed",
          "A commissioned site keeps its file, and its units stay in it.",
          Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site before, Site after, RuleContext context) {
    if (!before.wasCommissioned() || !after.chain().isGiven()) {
      return;
    }
    for (Difference difference : SiteDifferences.between(before, after)) {
      if (difference instanceof Difference.Removed removed
          && removed.kind() == ItemKind.UNIT
          && !isExchanged(removed.item(), before, after)) {
        context.report(
            context
                .finding(
                    place(removed, after),
                    new Message(
                        "the live unit \"" + removed.item() + "\" is no longer on the chain",
                        "a unit that is still wired answers at an address that the file shows"
                            + " as free",
                        "take the unit off the line in the order that the goal changes gives, or add it"
                            + " here again"))
                .aboutItems(List.of(removed.item())));
      }
    }
  }

  @Override
  public @Nullable Message gone(Site before) {
    return before.wasCommissioned()
        ? new Message(
            "the commissioned site \"" + before.id().or("") + "\" has no file any more",
            "its line is still wired, but nobody checks it or can look up its addresses any more",
            "put the file back; leave it out only once the line is taken down")
        : null;
  }

  /**
   * Whether another unit has its name and its address: nobody can wire both, and {@code
   * change.record-kept} asks for the proof of the other.
   */
  private static boolean isExchanged(String name, Site before, Site after) {
    return before.units().stream()
        .filter(unit -> unit.name().is(name) && unit.address().isGiven())
        .anyMatch(
            unit ->
                after.units().stream()
                    .anyMatch(
                        other ->
                            other.name().is(name) && other.address().is(unit.address().or(0))));
  }

  /** The item that it came after, else the first of the chain. */
  private static Place place(Difference.Removed removed, Site after) {
    for (ChainItem item : after.items()) {
      if (item.name().is(Objects.requireNonNullElse(removed.previous(), ""))) {
        return item.name().place();
      }
    }
    return after.items().isEmpty() ? after.chain().place() : after.items().get(0).name().place();
  }
}
