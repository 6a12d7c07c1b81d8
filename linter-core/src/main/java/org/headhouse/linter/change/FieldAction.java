package org.headhouse.linter.change;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is done by hand at an item; its supply is isolated but where settings are made.
 */
public sealed interface FieldAction {

  /**
   * A cable is taken off.
   *
   * @param onward whether it is the one that leads away from the head unit
   * @param other the item at its other end
   */
  record TakeOff(boolean onward, String other) implements FieldAction {}

  /**
   * A cable is landed.
   *
   * @param onward whether it is the one that leads away from the head unit
   * @param other the item at its other end
   * @param length as the file has it, or null
   */
  record Land(boolean onward, String other, @Nullable String length) implements FieldAction {}

  /** A terminator is fitted, removed or exchanged. */
  record Terminate(ValueChange termination) implements FieldAction {}

  /** Something else on the terminals: conductors, pair, stub, module, bias, weather station. */
  record Fit(ValueChange change) implements FieldAction {}

  /**
   * A cable between two that stay neighbours is replaced by another.
   *
   * @param onward whether it is the one that leads away from the head unit
   * @param other the item at its other end
   * @param cable what differs
   */
  record Replace(boolean onward, String other, ValueChange cable) implements FieldAction {}

  /**
   * The surge protector at this end of a run comes or goes.
   *
   * @param onward whether the run is the one that leads away from the head unit
   * @param other the item at its other end
   * @param fitted whether it is fitted, or removed
   */
  record Protect(boolean onward, String other, boolean fitted) implements FieldAction {}

  /** A unit or repeater leaves for good. */
  record TakeOut() implements FieldAction {}

  /**
   * Another device takes the place of one that leaves, on the same cables.
   *
   * @param device in what it is another
   * @param address with which it answers, or null for an item that has none or stays off
   */
  record Exchange(List<ValueChange> device, @Nullable Integer address) implements FieldAction {
    public Exchange {
      device = List.copyOf(device);
    }
  }

  /**
   * Settings that go with the wiring, made at the unit with its supply on.
   *
   * @param first before any supply is isolated; else once all are back
   */
  record Set(List<ValueChange> settings, boolean first) implements FieldAction {
    public Set {
      settings = List.copyOf(settings);
    }
  }

  /**
   * A unit is on the line from now on.
   *
   * @param address with which it answers
   */
  record SwitchOn(int address) implements FieldAction {}
}
