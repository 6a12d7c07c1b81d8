package org.headhouse.linter.change;

import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.CommModule;
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

  TrackedItem(@Nullable ChainItem before, @Nullable ChainItem after) {
    if (before == null && after == null) {
      throw new IllegalArgumentException("an item of neither state");
    }
    this.before = before;
    this.after = after;
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

  /** Whether it answered on the line in the earlier state. */
  boolean liveBefore() {
    return isLive(unitBefore());
  }

  /** Whether it answers on the line in the later state. */
  boolean liveAfter() {
    return isLive(unitAfter());
  }

  /** Whether it is on the line all the time. */
  boolean liveThroughout() {
    return liveBefore() && liveAfter();
  }

  /** Whether it is the head unit in the later state. */
  boolean isHeadAfter() {
    return after instanceof Unit unit && unit.isHead();
  }

  private static boolean isLive(@Nullable Unit unit) {
    return unit != null && !unit.commModule().is(CommModule.ABSENT);
  }

  /** Its address in the later state; only for units whose addresses are known. */
  int addressAfter() {
    return address(unitAfter());
  }

  /** Its address in the earlier state; only for units whose addresses are known. */
  int addressBefore() {
    return address(unitBefore());
  }

  private static int address(@Nullable Unit unit) {
    Integer address = unit == null ? null : unit.address().orNull();
    if (address == null) {
      throw new IllegalStateException("a unit without an address");
    }
    return address;
  }
}
