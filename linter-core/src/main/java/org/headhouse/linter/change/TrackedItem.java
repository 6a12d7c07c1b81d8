package org.headhouse.linter.change;

import java.util.Objects;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * An item of the chain in both states; one of them is null where it joins or leaves.
 *
 * <p>Two are the same only if they are one object.
 */
@Internal
public final class TrackedItem {
  private final @Nullable ChainItem before;
  private final @Nullable ChainItem after;

  /** Instead of the one in the file; null for that one. */
  private final @Nullable Integer addressBefore;

  TrackedItem(@Nullable ChainItem before, @Nullable ChainItem after) {
    this(before, after, null);
  }

  private TrackedItem(
      @Nullable ChainItem before, @Nullable ChainItem after, @Nullable Integer addressBefore) {
    if (before == null && after == null) {
      throw new IllegalArgumentException("an item of neither state");
    }
    this.before = before;
    this.after = after;
    this.addressBefore = addressBefore;
  }

  /** The same item, set to another address before all other work. */
  TrackedItem withAddressBefore(int address) {
    return new TrackedItem(before, after, address);
  }

  /** The item in the earlier state, or null where it joins. */
  public @Nullable ChainItem before() {
    return before;
  }

  /** The item in the later state, or null where it leaves. */
  public @Nullable ChainItem after() {
    return after;
  }

  /** The item in the later state where it has one. */
  ChainItem latest() {
    ChainItem item = after == null ? before : after;
    if (item == null) {
      throw new IllegalStateException("an item of neither state");
    }
    return item;
  }

  /** The later name, or the place on the chain where there is none. */
  String name() {
    ChainItem latest = latest();
    return latest.name().optional().orElseGet(latest::called);
  }

  boolean stays() {
    return before != null && after != null;
  }

  @Nullable Unit unitBefore() {
    return before instanceof Unit unit ? unit : null;
  }

  @Nullable Unit unitAfter() {
    return after instanceof Unit unit ? unit : null;
  }

  /** Whether another device takes its place, under the same name. */
  boolean isExchanged() {
    return before != null && after != null && isAnotherDevice(before, after);
  }

  /** Whether the types or the serial numbers say that two items are not one device. */
  static boolean isAnotherDevice(ChainItem one, ChainItem other) {
    return isAnother(one.deviceType(), other.deviceType())
        || isAnother(one.device().serialNumber(), other.device().serialNumber());
  }

  private static boolean isAnother(Setting<String> one, Setting<String> other) {
    return one.isGiven() && other.isGiven() && !Objects.equals(one.orNull(), other.orNull());
  }

  /** Whether it answered on the line in the earlier state. */
  boolean liveBefore() {
    return isLive(before);
  }

  /** Whether it answers on the line in the later state. */
  boolean liveAfter() {
    return isLive(after);
  }

  /** Whether one device is on the line all the time. */
  boolean liveThroughout() {
    return liveBefore() && liveAfter() && !isExchanged();
  }

  /** Whether a device comes on the line, for another or not. */
  boolean joins() {
    return liveAfter() && !liveThroughout();
  }

  /** Whether a device leaves the line, for another or not. */
  boolean leaves() {
    return liveBefore() && !liveThroughout();
  }

  /** Whether it is the head unit in the earlier state. */
  boolean isHeadBefore() {
    return before instanceof Unit unit && unit.isHead();
  }

  /** Whether it is the head unit in the later state. */
  boolean isHeadAfter() {
    return after instanceof Unit unit && unit.isHead();
  }

  /** Whether it answers, if it is on the chain. */
  static boolean isLive(@Nullable ChainItem item) {
    return item instanceof Unit unit
        ? !unit.commModule().is(CommModule.ABSENT)
        : item instanceof Equipment;
  }

  /** Its address in the later state; only for devices whose addresses are known. */
  int addressAfter() {
    return address(after);
  }

  /** Its address in the earlier state; only for devices whose addresses are known. */
  int addressBefore() {
    return addressBefore == null ? address(before) : addressBefore;
  }

  private static int address(@Nullable ChainItem item) {
    Integer address = item == null ? null : item.address().orNull();
    if (address == null) {
      throw new IllegalStateException("a device without an address");
    }
    return address;
  }
}
