package org.headhouse.linter.site;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.source.Place;
import org.jspecify.annotations.Nullable;

/**
 * An item of the chain, and the run of cable behind it. What is electrical holds for every item;
 * readings, zones and displays are of units alone.
 */
public sealed interface ChainItem permits Unit, Repeater, Equipment, Converter {
  /** Which item it is. */
  ItemIdentity identity();

  /** The run of the trunk to the next item. */
  TrunkRun toNext();

  /** What is fitted here. */
  Device device();

  /** How it is connected to the pair on one of its sides; only a repeater has two. */
  Connection connection(Side side);

  /** What it is. */
  ItemKind kind();

  /** The names of some items, each null where the file has none. */
  static List<@Nullable String> names(List<? extends ChainItem> items) {
    List<@Nullable String> names = new ArrayList<>(items.size());
    items.forEach(item -> names.add(item.name().orNull()));
    return names;
  }

  /** The item as a whole. */
  default Place place() {
    return identity().place();
  }

  /** Its place in the chain, from 0. */
  default int index() {
    return identity().index();
  }

  /** The name of the item; those of all items of a chain differ. */
  default Setting<String> name() {
    return identity().name();
  }

  /** The id of its type, as it is written. */
  default Setting<String> deviceType() {
    return device().typeId();
  }

  /** What is known of its type; {@link DeviceType#UNKNOWN} where nothing is. */
  default DeviceType type() {
    return device().type();
  }

  /** Its load on one side as the item says, else as its type does. */
  default Setting<Double> unitLoadSetting(Side side) {
    Setting<Double> own = connection(side).unitLoad();
    return own.isMissing() ? type().unitLoadSetting() : own;
  }

  /** Its load on one side; a whole unit load where nothing else is known. */
  default double unitLoad(Side side) {
    return unitLoadSetting(side).or(DeviceType.USUAL_UNIT_LOAD);
  }

  /** Whether it needs bias on one side, as the item says, else as its type does. */
  default Setting<IdleBias> idleBias(Side side) {
    Setting<IdleBias> own = connection(side).idleBias();
    return own.isMissing() ? type().idleBias() : own;
  }

  /** Whether it is galvanically isolated from the line, as the item says, else as its type does. */
  default Setting<Boolean> isolated() {
    Setting<Boolean> own = device().isolated();
    return own.isMissing() ? type().isolated() : own;
  }

  /** Its server address; missing for a repeater and a converter, which have none. */
  default Setting<Integer> address() {
    return new Setting.Missing<>(place());
  }

  /** The length of the cable to the next item; missing where the file says none. */
  default Setting<Length> cableToNext() {
    return toNext().length();
  }

  /** Where that cable lies. */
  default Setting<Run> runToNext() {
    return toNext().route();
  }

  /** How that cable is protected. */
  default Setting<SurgeProtection> surgeProtectionToNext() {
    return toNext().protection();
  }

  /**
   * Whether another item of the same chain is this one. Of two sites, or of two states of one, that
   * says nothing. To compare all that is written of both takes long.
   */
  default boolean isSameItemAs(@Nullable ChainItem other) {
    return other != null && index() == other.index();
  }

  /** The name in quotes for a message, or the place in the chain where there is none. */
  default String called() {
    String name = name().orNull();
    return name == null ? "item " + (index() + 1) + " of the chain" : "\"" + name + "\"";
  }
}
