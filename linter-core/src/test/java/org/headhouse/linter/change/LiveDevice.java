package org.headhouse.linter.change;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** One device of a simulated line. What is set is in use only after a restart. */
final class LiveDevice {
  final LiveItem.Kind kind;
  final boolean vents;
  String type;
  boolean head;
  boolean powered = true;
  boolean attached = true;
  boolean lockedOff;
  boolean module = true;
  boolean restarted = true;

  /** Whether somebody works at its terminals. */
  boolean open;

  @Nullable Integer stored;
  @Nullable Integer active;
  Map<String, String> serial;
  final Map<String, Boolean> terminators = new HashMap<>();

  LiveDevice(LiveItem item, Map<String, String> serial) {
    kind = item.kind();
    vents = item.vents();
    type = item.type();
    head = item.head();
    stored = item.address();
    active = stored;
    this.serial = new HashMap<>(serial);
    if (kind == LiveItem.Kind.REPEATER) {
      terminators.put("in", item.in());
      terminators.put("out", item.out());
    } else {
      terminators.put("", item.in());
    }
  }

  void set(@Nullable Integer address) {
    stored = address;
    restarted = false;
  }

  void powerOff() {
    powered = false;
    active = null;
  }

  void powerOn() {
    powered = true;
    open = false;
    active = stored;
    restarted = true;
  }

  /** A device whose supply is off loads the pair no more; a repeater passes nothing on. */
  boolean carries() {
    return !open && (powered || kind != LiveItem.Kind.REPEATER);
  }

  boolean answers() {
    return attached && powered && module && active != null;
  }

  boolean isFitted(String side) {
    return terminators.getOrDefault(side, false);
  }

  /** All that can be seen of it. */
  @Override
  public String toString() {
    return (attached ? "on " : "off ")
        + powered
        + active
        + head
        + type
        + new TreeMap<>(serial)
        + new TreeMap<>(terminators);
  }
}
