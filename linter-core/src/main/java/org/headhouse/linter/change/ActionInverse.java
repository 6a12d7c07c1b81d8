package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What undoes the work at one place. */
final class ActionInverse {
  private final TrackedItem item;
  private final boolean wasAnswering;

  /**
   * @param now before the work
   */
  ActionInverse(TrackedItem item, LineMoment now) {
    this.item = item;
    this.wasAnswering = now.answering().containsKey(item);
  }

  /** Cables are taken off first, then landed, and what hangs on them follows. */
  List<FieldAction> of(List<FieldAction> actions) {
    List<FieldAction> takenOff = new ArrayList<>();
    List<FieldAction> landed = new ArrayList<>();
    List<FieldAction> others = new ArrayList<>();
    for (int i = actions.size() - 1; i >= 0; i--) {
      FieldAction one = of(actions.get(i));
      if (one instanceof FieldAction.TakeOff) {
        takenOff.add(one);
      } else if (one instanceof FieldAction.Land) {
        landed.add(one);
      } else if (one != null) {
        others.add(one);
      }
    }
    takenOff.addAll(landed);
    takenOff.addAll(others);
    if (item.before() == null) {
      takenOff.add(new FieldAction.TakeOut());
    } else if (item.after() == null && wasAnswering) {
      takenOff.add(new FieldAction.SwitchOn(item.addressBefore()));
    }
    return takenOff;
  }

  private @Nullable FieldAction of(FieldAction action) {
    if (action instanceof FieldAction.TakeOff off) {
      return new FieldAction.Land(off.onward(), off.other(), null);
    }
    if (action instanceof FieldAction.Land land) {
      return new FieldAction.TakeOff(land.onward(), land.other());
    }
    if (action instanceof FieldAction.Terminate terminate) {
      return new FieldAction.Terminate(StepInverse.of(terminate.termination()));
    }
    if (action instanceof FieldAction.Fit fit) {
      return new FieldAction.Fit(StepInverse.of(fit.change()));
    }
    if (action instanceof FieldAction.Replace replace) {
      return new FieldAction.Replace(
          replace.onward(), replace.other(), StepInverse.of(replace.cable()));
    }
    if (action instanceof FieldAction.Protect protect) {
      return new FieldAction.Protect(protect.onward(), protect.other(), !protect.fitted());
    }
    if (action instanceof FieldAction.Exchange exchange) {
      return new FieldAction.Exchange(
          StepInverse.of(exchange.device()), wasAnswering ? item.addressBefore() : null);
    }
    return null;
  }
}
