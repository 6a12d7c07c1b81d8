package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.headhouse.linter.site.Side;
import org.jspecify.annotations.Nullable;

/**
 * A line of devices and cables. It knows nothing of how a plan is made: cables have two ends, a
 * device answers at the address with which it started, and after each step the cables must lead
 * through all items, past two terminators on each segment.
 */
final class LiveLine {
  final Map<String, LiveDevice> devices = new LinkedHashMap<>();
  private final Map<String, LiveDevice> prepared = new HashMap<>();
  private final Map<String, LiveDevice> replaced = new HashMap<>();
  private final Map<String, String> onward = new HashMap<>();
  private final Map<String, String> backward = new HashMap<>();
  private final Map<String, LiveItem> later = new HashMap<>();

  /** Those that share an address from the start, until each has one of its own. */
  private final Map<Integer, Set<String>> sharing = new HashMap<>();

  /** At which end of which run a surge protector is fitted. */
  private final Set<String> protectors = new TreeSet<>();

  /**
   * @param serial rate and framing
   */
  LiveLine(List<LiveItem> chain, List<LiveItem> later, Map<String, String> serial) {
    later.forEach(item -> this.later.put(item.name(), item));
    for (int i = 0; i < chain.size(); i++) {
      LiveItem item = chain.get(i);
      devices.put(item.name(), new LiveDevice(item, serial));
      if (i > 0) {
        onward.put(chain.get(i - 1).name(), item.name());
        backward.put(item.name(), chain.get(i - 1).name());
      }
    }
    protectors.addAll(protectors(chain));
    for (LiveItem item : chain) {
      if (item.address() != null) {
        sharing.computeIfAbsent(item.address(), address -> new HashSet<>()).add(item.name());
      }
    }
    assertWhole();
  }

  private static Set<String> protectors(List<LiveItem> chain) {
    Set<String> protectors = new TreeSet<>();
    for (int i = 1; i < chain.size(); i++) {
      if (chain.get(i - 1).isProtected()) {
        protectors.add(protector(chain.get(i - 1).name(), true, chain.get(i).name()));
        protectors.add(protector(chain.get(i).name(), false, chain.get(i - 1).name()));
      }
    }
    return protectors;
  }

  private static String protector(String at, boolean onward, String other) {
    return "at " + at + (onward ? " to " : " from ") + other;
  }

  /** Each run that is to have surge protectors has them, and no other. */
  void assertProtected(List<LiveItem> chain) {
    assertThat(protectors).isEqualTo(protectors(chain));
  }

  LiveDevice device(String name) {
    LiveDevice device = devices.get(name);
    if (device == null) {
      throw new AssertionError("no device " + name + " among " + devices.keySet());
    }
    return device;
  }

  boolean isOn(String name) {
    return devices.containsKey(name);
  }

  /** Sets a device that is not connected. */
  void prepare(Step.Prepare step) {
    assertThat(onward.containsKey(step.unit()) && !step.instead()).isFalse();
    LiveItem item = expected(step.unit());
    LiveDevice device = new LiveDevice(item, Map.of());
    device.powered = false;
    device.attached = false;
    device.active = null;
    device.stored = step.address();
    device.head = false;
    device.terminators.replaceAll((side, fitted) -> false);
    for (ValueChange setting : step.settings()) {
      String to = setting.to();
      if (to != null) {
        switch (setting.what()) {
          case "role" -> device.head = to.equals("head");
          case "baud", "parity", "stop-bits" -> device.serial.put(setting.what(), to);
          case "termination" -> device.terminators.put("", !to.equals("none"));
          default -> {}
        }
      }
    }
    prepared.put(step.unit(), device);
  }

  private LiveItem expected(String name) {
    LiveItem item = later.get(name);
    if (item == null) {
      throw new AssertionError("nobody expects " + name);
    }
    return item;
  }

  /** What is done at a place with its supply off. */
  void act(String name, FieldAction act) {
    if (act instanceof FieldAction.TakeOff off) {
      assertThat((off.onward() ? onward : backward).remove(name)).isEqualTo(off.other());
    } else if (act instanceof FieldAction.Land land) {
      assertThat((land.onward() ? onward : backward).put(name, land.other())).isNull();
      if (!devices.containsKey(name)) {
        devices.put(name, arriving(name));
      }
    } else if (act instanceof FieldAction.Terminate terminate) {
      ValueChange change = terminate.termination();
      LiveDevice device = device(name);
      String side = change.what().replaceAll("termination ?", "");
      assertThat(device.isFitted(side)).isEqualTo(!PieceOfWiring.isNone(change.from()));
      device.terminators.put(side, !PieceOfWiring.isNone(change.to()));
    } else if (act instanceof FieldAction.Protect protect) {
      String protector = protector(name, protect.onward(), protect.other());
      assertThat(protect.fitted() ? protectors.add(protector) : protectors.remove(protector))
          .as("%s, to be fitted: %s", protector, protect.fitted())
          .isTrue();
    } else if (act instanceof FieldAction.TakeOut) {
      LiveDevice gone = devices.remove(name);
      if (gone != null) {
        gone.attached = false;
        replaced.put(name, gone);
      }
    } else if (act instanceof FieldAction.Exchange exchange) {
      exchange(name, exchange);
    } else if (act instanceof FieldAction.SwitchOn on) {
      switchOn(name, on.address());
    } else if (act instanceof FieldAction.Fit fit && fit.change().what().equals("comm-module")) {
      device(name).module = !"absent".equals(fit.change().to());
    }
  }

  /** A new item, or one that comes back; it answers once it is switched on. */
  private LiveDevice arriving(String name) {
    LiveDevice back = replaced.remove(name);
    if (back == null) {
      LiveItem item = expected(name);
      back = new LiveDevice(item, Map.of());
      back.stored = null;
      back.terminators.replaceAll((side, fitted) -> false);
    }
    back.attached = true;
    back.powerOff();
    back.open = true;
    return back;
  }

  private void exchange(String name, FieldAction.Exchange exchange) {
    LiveDevice old = device(name);
    LiveDevice other = replaced.remove(name);
    if (other == null) {
      other = prepared.get(name);
    }
    if (other == null) {
      // Nothing is set at it: it is fitted like the old one.
      other = new LiveDevice(expected(name), old.serial);
      other.terminators.putAll(old.terminators);
      other.stored = old.kind == LiveItem.Kind.UNIT ? null : old.stored;
    }
    assertThat(exchange.address()).isEqualTo(other.lockedOff ? null : other.stored);
    old.attached = false;
    replaced.put(name, old);
    other.attached = true;
    other.powerOff();
    other.open = true;
    devices.put(name, other);
  }

  private void switchOn(String name, int address) {
    LiveDevice set = prepared.get(name);
    LiveDevice device = device(name);
    if (device.stored == null) {
      if (set == null) {
        throw new AssertionError(name + " was not set before");
      }
      device.stored = set.stored;
      device.serial = set.serial;
      device.head = set.head;
    }
    assertThat(device.stored).as("%s was set before", name).isEqualTo(address);
  }

  /** The device that answers at an address; two are one too many, and cannot be read. */
  @Nullable String at(int address) {
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, LiveDevice> entry : devices.entrySet()) {
      LiveDevice device = entry.getValue();
      if (device.answers() && device.active != null && device.active == address) {
        found.add(entry.getKey());
      }
    }
    assertShared(address, found);
    return found.size() == 1 ? found.get(0) : null;
  }

  private void assertShared(int address, List<String> names) {
    if (names.size() > 1) {
      assertThat(sharing.getOrDefault(address, Set.of()))
          .as("that answer at %s", address)
          .containsAll(names);
    }
  }

  /** What left a shared address must not come back to it. */
  void settle() {
    sharing.forEach(
        (address, names) ->
            names.removeIf(
                name ->
                    !isOn(name)
                        || device(name).lockedOff
                        || !Objects.equals(device(name).stored, address)));
  }

  void assertSettled() {
    assertThat(sharing.values()).allMatch(names -> names.size() <= 1);
  }

  String typeOf(String name) {
    return isOn(name) ? device(name).type : expected(name).type();
  }

  Map<String, Integer> answering() {
    Map<String, Integer> answering = new TreeMap<>();
    devices.forEach(
        (name, device) -> {
          if (device.answers() && device.active != null) {
            answering.put(name, device.active);
          }
        });
    return answering;
  }

  /** Never two devices at one address, nor two head units. */
  void assertSafe() {
    Map<Integer, List<String>> seen = new HashMap<>();
    String head = null;
    for (Map.Entry<String, LiveDevice> entry : devices.entrySet()) {
      LiveDevice device = entry.getValue();
      if (device.answers() && device.active != null) {
        List<String> all = seen.computeIfAbsent(device.active, address -> new ArrayList<>());
        all.add(entry.getKey());
        assertShared(device.active, all);
        if (device.head && head != null) {
          throw new AssertionError("two head units: " + head + ", " + entry.getKey());
        }
        head = device.head ? entry.getKey() : head;
      }
    }
  }

  /** Units that get the readings of the head unit for sure. */
  Set<String> receiving() {
    Set<String> receiving = new HashSet<>();
    String head = null;
    for (Map.Entry<String, LiveDevice> entry : devices.entrySet()) {
      head = entry.getValue().head && entry.getValue().answers() ? entry.getKey() : head;
    }
    if (head != null) {
      List<List<String>> segments = segments(around(head));
      String at = head;
      int from =
          segments.indexOf(
              segments.stream().filter(one -> one.contains(at)).findFirst().orElseThrow());
      for (int i = from; i < segments.size() && isWhole(segments.get(i)); i++) {
        receive(segments.get(i), head, receiving);
      }
      for (int i = from; i >= 0 && isWhole(segments.get(i)); i--) {
        receive(segments.get(i), head, receiving);
      }
    }
    return receiving;
  }

  private void receive(List<String> segment, String head, Set<String> receiving) {
    for (String name : segment) {
      LiveDevice device = device(name);
      if (device.answers() && device.serial.equals(device(head).serial)) {
        receiving.add(name);
      }
    }
  }

  private boolean isWhole(List<String> segment) {
    return fitted(segment) == 2 && segment.stream().allMatch(name -> device(name).carries());
  }

  private int fitted(List<String> segment) {
    int fitted = 0;
    for (int i = 0; i < segment.size(); i++) {
      LiveDevice device = device(segment.get(i));
      String side =
          device.kind != LiveItem.Kind.REPEATER ? "" : i == 0 && segment.size() > 1 ? "out" : "in";
      fitted += device.isFitted(side) ? 1 : 0;
    }
    return fitted;
  }

  private List<List<String>> segments(List<String> chain) {
    List<List<String>> segments = new ArrayList<>();
    List<String> open = new ArrayList<>();
    for (String name : chain) {
      open.add(name);
      if (device(name).kind == LiveItem.Kind.REPEATER && open.size() > 1) {
        segments.add(open);
        open = new ArrayList<>(List.of(name));
      }
    }
    if (open.size() > 1 || (segments.isEmpty() && !open.isEmpty())) {
      segments.add(open);
    }
    return segments;
  }

  /**
   * All that a meter at an item is connected to.
   *
   * @param side of a repeater; else null
   */
  List<String> segment(String name, @Nullable Side side) {
    List<List<String>> around =
        segments(around(name)).stream().filter(segment -> segment.contains(name)).toList();
    assertThat(around).as("segments of %s, side %s", name, side).isNotEmpty();
    return around.stream()
        .filter(segment -> side == null || (side == Side.OUT) == (segment.indexOf(name) == 0))
        .findFirst()
        .orElseThrow();
  }

  /** All that cables with both ends landed lead to. */
  private List<String> around(String name) {
    String first = name;
    Set<String> seen = new HashSet<>();
    for (String at = name; at != null && seen.add(at); at = joined(backward, onward, at)) {
      first = at;
    }
    Set<String> walked = new LinkedHashSet<>();
    for (String at = first; at != null && walked.add(at); at = joined(onward, backward, at)) {
      // Each once: a ring has no end.
    }
    return List.copyOf(walked);
  }

  private @Nullable String joined(Map<String, String> way, Map<String, String> other, String name) {
    String next = way.get(name);
    return next != null && isOn(next) && name.equals(other.get(next)) ? next : null;
  }

  /** One chain through all cables and items, with two terminators a segment. */
  void assertWhole() {
    List<String> walked = chain();
    assertThat(walked).containsExactlyInAnyOrderElementsOf(devices.keySet());
    for (List<String> segment : segments(walked)) {
      assertThat(fitted(segment)).as("terminators of %s", segment).isEqualTo(2);
    }
    assertThat(onward).hasSize(walked.size() - 1);
    assertThat(backward).hasSize(walked.size() - 1);
  }

  List<String> chain() {
    return around(devices.keySet().iterator().next());
  }

  /** All that can be seen of the line. */
  String state() {
    return chain() + " " + new TreeMap<>(devices) + protectors;
  }
}
