package org.headhouse.linter.fix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * A random site with some faults, written in a random mixture of styles.
 *
 * <p>Values stand in maps as they are written, and lists as lists, until {@link SiteWriter} writes
 * them.
 */
final class FaultySite {
  static final List<String> READINGS = List.of("light", "temperature", "wind-speed", "rain");

  private final RandomGenerator random;
  final Map<String, Object> site = new LinkedHashMap<>();
  private final List<Map<String, Object>> units = new ArrayList<>();
  private final List<Object> zones = new ArrayList<>();
  private final Map<String, Object> line = new LinkedHashMap<>();
  private final Map<String, Object> cable = new LinkedHashMap<>();
  private final Map<String, Object> station = new LinkedHashMap<>();

  FaultySite(RandomGenerator random) {
    this.random = random;
    valid();
    int faults = 1 + random.nextInt(6);
    for (int i = 0; i < faults; i++) {
      addFault();
    }
  }

  private void valid() {
    int number = 2 + random.nextInt(19);
    boolean planned = random.nextInt(4) > 0;
    site.put("format", "1");
    site.put("site", "example");
    site.put("stage", planned ? "planned" : "commissioned");
    station.put("at", "House 1");
    List<String> readings = READINGS.subList(0, 1 + random.nextInt(READINGS.size()));
    station.put("readings", new ArrayList<Object>(readings));
    site.put("weather-station", station);
    line.put("baud", "9600");
    line.put("parity", "even");
    line.put("stop-bits", "1");
    cable.putAll(map("gauge", "24 AWG", "shielded", "true", "impedance", "120 ohm"));
    line.put("cable", cable);
    site.put("line", line);
    for (int i = 0; i < number; i++) {
      units.add(unit(i, number, readings));
    }
    site.put("chain", units);
    if (random.nextBoolean()) {
      units.forEach(unit -> zones.add(unit.get("unit")));
      Map<String, Object> supervision = new LinkedHashMap<>();
      supervision.put("link", "serial");
      supervision.put("zones", zones);
      site.put("supervision", supervision);
    }
  }

  private Map<String, Object> unit(int index, int number, List<String> readings) {
    Map<String, Object> unit = new LinkedHashMap<>();
    boolean head = index == 0;
    boolean end = head || index == number - 1;
    unit.put("unit", "House " + (index + 1));
    unit.put("role", head ? "head" : "follower");
    unit.put("address", String.valueOf(index + 1));
    unit.put("comm-module", "fitted");
    List<Object> conductors = new ArrayList<>(List.of("A", "B"));
    if (head) {
      conductors.add("G");
    }
    unit.put("conductors", conductors);
    unit.put("termination", end ? "120 ohm" : "none");
    Map<String, Object> outdoor = new LinkedHashMap<>();
    readings.forEach(reading -> outdoor.put(reading, head ? "local" : "head"));
    unit.put("outdoor", outdoor);
    if (random.nextInt(4) == 0) {
      unit.put("vents", "roof");
      unit.put("on-stale-readings", "close");
    }
    if (index < number - 1) {
      unit.put("cable-to-next", (20 + random.nextInt(30)) + " m");
    }
    return unit;
  }

  @SafeVarargs
  private <T> T pick(T... choices) {
    return choices[random.nextInt(choices.length)];
  }

  private Map<String, Object> anyUnit() {
    return units.get(random.nextInt(units.size()));
  }

  private void addFault() {
    List<Consumer<Map<String, Object>>> faults =
        List.of(
            unit -> unit.put("address", String.valueOf(random.nextInt(units.size() + 3))),
            unit -> unit.put("address", pick("0", "250", "\"3\"", "02", "1_0")),
            unit -> unit.put("termination", pick("none", "120 ohm", "68 ohm", "\"120 ohm\"")),
            unit -> unit.remove("termination"),
            unit -> change(unit.get("outdoor"), pick("local", "none", "head", "haed", "lokal")),
            unit -> remove(unit.get("outdoor")),
            unit -> unit.remove("outdoor"),
            unit -> conductors(unit.get("conductors")),
            this::spacesAroundName,
            this::misspellKey,
            unit -> unit.put("role", pick("follower", "folower", "haed", "head")),
            unit -> unit.put("comm-module", pick("absent", "fited", "built_in")),
            unit -> unit.put("vents", pick("roof", "side", "rof")),
            unit -> unit.put("on-stale-readings", pick("hold", "alarm", "colse")),
            unit -> unit.put("firmware", pick("3.2", "\"3.2\"", "010", "3_2", "NO", "1:30")),
            unit -> unit.put("pair", pick("crossed", "straigt")),
            unit -> unit.put("run-to-next", "between-buildings"),
            unit -> zones(),
            unit -> zones(),
            unit -> line.put("stop-bits", pick("2", "\"1\"", "01")),
            unit -> line.put("parity", pick("none", "evn", "no", "odd")),
            unit -> line.put("baud", pick("9601", "\"9600\"", "9_600")),
            unit -> cable.put("shielded", pick("yes", "no", "false", "\"true\"", "on")),
            unit -> cable.put("gauge", pick("26 AWG", "24")),
            unit -> station.put("at", pick("House 2", "Huose 1", "Hous 1")),
            unit -> site.put("title", pick("12", "yes", "\"12\"", "0x1F")),
            unit ->
                line.put(
                    "bias",
                    List.of(
                        map(
                            "at",
                            pick("House 1", "Huose 1"),
                            "resistors",
                            pick("650 ohm", "390 ohm"),
                            "supply",
                            "5 V"))),
            unit ->
                site.put(
                    "suppressions",
                    List.of(
                        new LinkedHashMap<>(
                            Map.of(
                                "rule",
                                pick("address.gap", "termination.mid-line", "adress.gap"),
                                "justification",
                                "Accepted by the owner for this season.")))));
    faults.get(random.nextInt(faults.size())).accept(anyUnit());
  }

  private static Map<String, Object> map(String... keysAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      map.put(keysAndValues[i], keysAndValues[i + 1]);
    }
    return map;
  }

  @SuppressWarnings("unchecked")
  private void change(@Nullable Object outdoor, String source) {
    if (outdoor instanceof Map<?, ?>) {
      ((Map<String, Object>) outdoor).put(pick(READINGS.toArray(String[]::new)), source);
    }
  }

  private void remove(@Nullable Object outdoor) {
    if (outdoor instanceof Map<?, ?> sources && sources.size() > 1) {
      sources.remove(pick(sources.keySet().toArray()));
    }
  }

  @SuppressWarnings("unchecked")
  private void conductors(@Nullable Object list) {
    if (list instanceof List<?>) {
      List<Object> conductors = (List<Object>) list;
      switch (random.nextInt(3)) {
        case 0 -> conductors.remove(random.nextInt(Math.max(1, conductors.size())));
        case 1 -> conductors.clear();
        default -> conductors.add(random.nextInt(conductors.size() + 1), "G");
      }
      if (conductors.isEmpty() && random.nextBoolean()) {
        conductors.add("G");
      }
    }
  }

  private void spacesAroundName(Map<String, Object> unit) {
    Object name = unit.get("unit");
    if (name == null) {
      return;
    }
    String spaced = pick("\" ", "' ", "\"\\t") + name.toString().replaceAll("[\"']", "");
    String quoted = spaced + (random.nextBoolean() ? " " : "") + spaced.charAt(0);
    unit.put("unit", quoted);
    if (random.nextBoolean()) {
      zones.replaceAll(zone -> zone.equals(name) ? quoted : zone);
    }
  }

  private void misspellKey(Map<String, Object> unit) {
    Map<String, String> keys =
        Map.of(
            "role", "rolle",
            "address", "adress",
            "termination", "terminaton",
            "outdoor", "Outdoor",
            "comm-module", "comm_module",
            "cable-to-next", "cable-to-nxt");
    String key = pick(keys.keySet().stream().sorted().toArray(String[]::new));
    if (unit.containsKey(key)) {
      Map<String, Object> copy = new LinkedHashMap<>(unit);
      unit.clear();
      copy.forEach((one, value) -> unit.put(one.equals(key) ? keys.get(key) : one, value));
    }
  }

  private void zones() {
    if (zones.isEmpty()) {
      return;
    }
    switch (random.nextInt(4)) {
      case 0 -> zones.remove(random.nextInt(zones.size()));
      case 1 -> zones.add(random.nextInt(zones.size() + 1), zones.get(0));
      case 2 -> zones.set(random.nextInt(zones.size()), "Huose " + (1 + random.nextInt(4)));
      default -> zones.add("Potting Shed");
    }
  }

  /** The bytes of the file, and how it was written. */
  byte[] bytes() {
    return new SiteWriter(random).write(site);
  }
}
