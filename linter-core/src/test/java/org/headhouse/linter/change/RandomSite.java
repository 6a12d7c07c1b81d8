package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A site of which every key can be edited, as its text and as what stands on the line. */
final class RandomSite {
  private static final List<String> KINDS = List.of("unit", "repeater", "equipment", "converter");

  final Map<String, String> site = new LinkedHashMap<>();
  final Map<String, String> station = new TreeMap<>();
  final Map<String, String> line = new TreeMap<>();
  final Map<String, String> supervision = new TreeMap<>();

  /** The items, each by the keys of the file; {@code kind} and {@code name} make the first line. */
  final List<Map<String, String>> chain = new ArrayList<>();

  private RandomSite() {}

  RandomSite copy() {
    RandomSite copy = new RandomSite();
    copy.site.putAll(site);
    copy.station.putAll(station);
    copy.line.putAll(line);
    copy.supervision.putAll(supervision);
    chain.forEach(item -> copy.chain.add(new TreeMap<>(item)));
    return copy;
  }

  static RandomSite of(Random random, int most) {
    RandomSite site = new RandomSite();
    site.site.putAll(
        Map.of(
            "site", "example", "title", "Example", "customer", "growers", "stage", "commissioned"));
    site.station.putAll(
        Map.of("readings", "[light, rain]", "maximum-age", "30 s", "averaging", "10 s"));
    site.line.putAll(
        Map.of(
            "baud", "9600",
            "parity", "even",
            "stop-bits", "1",
            "maximum-temperature", "40 degC",
            "cable", "{gauge: 24 AWG, shielded: true, impedance: 120 ohm}",
            "traffic", "{broadcast: {registers: 12, every: 5 s}}"));
    site.supervision.putAll(
        Map.of("link", "serial", "polling", "{every: 20 s, registers: 10, timeout: 1 s}"));
    int units = 2 + random.nextInt(most - 1);
    for (int i = 0; i < units; i++) {
      site.chain.add(unit("House " + (i + 1), i == 0));
    }
    if (random.nextBoolean()) {
      site.chain.add(1 + random.nextInt(site.chain.size() - 1), equipment("Meter"));
    }
    if (random.nextInt(3) == 0) {
      site.chain.add(1 + random.nextInt(site.chain.size() - 1), repeater("Gate"));
    }
    if (random.nextInt(3) == 0) {
      site.chain.add(1 + random.nextInt(site.chain.size() - 1), converter("Office"));
    }
    if (random.nextBoolean()) {
      site.chain.get(random.nextInt(site.chain.size())).put("surge-protection-to-next", "fitted");
    }
    site.number(random, random.nextBoolean());
    site.dress(site.chain.get(0));
    return site;
  }

  static Map<String, String> unit(String name, boolean head) {
    Map<String, String> unit = item("unit", name);
    unit.put("role", head ? "head" : "follower");
    unit.put("device-type", "eight-way");
    unit.put("serial-number", "S-" + name);
    unit.put("firmware", "\"1\"");
    unit.put("comm-module", "fitted");
    unit.put("outdoor", head ? "{light: local, rain: local}" : "{light: head, rain: head}");
    unit.put("vents", "roof");
    unit.put("on-stale-readings", "close");
    unit.put("stale-after", "1 min");
    unit.put("close-time", "90 s");
    return unit;
  }

  static Map<String, String> equipment(String name) {
    Map<String, String> equipment = item("equipment", name);
    equipment.put("device-type", "meter");
    equipment.put("serial-number", "E-" + name);
    equipment.put("polled", "{by: supervision, registers: 4, every: 10 s}");
    return equipment;
  }

  static Map<String, String> repeater(String name) {
    Map<String, String> repeater = item("repeater", name);
    repeater.put("serial-number", "R-" + name);
    return repeater;
  }

  static Map<String, String> converter(String name) {
    Map<String, String> converter = item("converter", name);
    converter.put("latency", "5 ms");
    converter.put("serial-number", "C-" + name);
    return converter;
  }

  private static Map<String, String> item(String kind, String name) {
    Map<String, String> item = new TreeMap<>();
    item.put("kind", kind);
    item.put("name", name);
    if (!kind.equals("repeater")) {
      item.put("conductors", "[A, B]");
    }
    return item;
  }

  boolean is(Map<String, String> item, String kind) {
    return kind.equals(item.get("kind"));
  }

  /** Units, and other devices that answer. */
  List<Map<String, String>> addressed() {
    return chain.stream().filter(item -> is(item, "unit") || is(item, "equipment")).toList();
  }

  /** Addresses along the chain, or any. */
  void number(Random random, boolean inOrder) {
    List<Integer> addresses = new ArrayList<>();
    for (int i = 1; i <= addressed().size() + 2; i++) {
      addresses.add(i);
    }
    if (!inOrder) {
      Collections.shuffle(addresses, random);
    }
    int next = 0;
    for (Map<String, String> item : addressed()) {
      item.put("address", String.valueOf(addresses.get(next++)));
    }
  }

  /** What follows from the chain: ends, lengths, bias, station, zones. */
  void dress(Map<String, String> head) {
    String value = line.getOrDefault("terminator", "120 ohm");
    List<String> zones = new ArrayList<>();
    for (int i = 0; i < chain.size(); i++) {
      Map<String, String> item = chain.get(i);
      boolean end = i == 0 || i + 1 == chain.size();
      item.put(
          "termination",
          is(item, "repeater") ? "{in: " + value + ", out: 120 ohm}" : end ? value : "none");
      if (i + 1 == chain.size()) {
        item.keySet().removeIf(key -> key.endsWith("-to-next"));
      } else {
        item.putIfAbsent("cable-to-next", (10 + i) + " m");
      }
      if (is(item, "unit")) {
        zones.add(name(item));
        item.put("role", item == head ? "head" : "follower");
      }
    }
    station.put("at", name(head));
    line.putIfAbsent("bias", "560 ohm");
    supervision.put("zones", String.join(", ", zones));
  }

  static String name(Map<String, String> item) {
    return item.getOrDefault("name", "");
  }

  String text() {
    StringBuilder text = new StringBuilder("format: 1\n");
    site.forEach((key, value) -> text.append(key).append(": ").append(value).append('\n'));
    text.append("weather-station:\n");
    station.forEach((key, value) -> append(text, "  ", key, value));
    text.append("line:\n");
    line.forEach(
        (key, value) -> {
          if (key.equals("bias")) {
            append(
                text,
                "  ",
                key,
                "[{at: " + station.get("at") + ", resistors: " + value + ", supply: 5 V}]");
          } else if (!key.equals("terminator")) {
            append(text, "  ", key, value);
          }
        });
    text.append("chain:\n");
    for (Map<String, String> item : chain) {
      text.append("  - ").append(item.get("kind")).append(": ").append(name(item)).append('\n');
      item.forEach(
          (key, value) -> {
            if (!KINDS.contains(key) && !key.equals("kind") && !key.equals("name")) {
              append(text, "    ", key, value);
            }
          });
    }
    text.append("supervision:\n");
    supervision.forEach(
        (key, value) -> append(text, "  ", key, key.equals("zones") ? "[" + value + "]" : value));
    return text.toString();
  }

  private static void append(StringBuilder text, String indent, String key, String value) {
    text.append(indent).append(key).append(": ").append(value).append('\n');
  }

  /** What stands on the line, with the names of the later state. */
  List<LiveItem> items(Map<String, String> renamed) {
    List<LiveItem> items = new ArrayList<>();
    for (int i = 0; i < chain.size(); i++) {
      Map<String, String> item = chain.get(i);
      boolean end = i == 0 || i + 1 == chain.size();
      boolean isRepeater = is(item, "repeater");
      items.add(
          new LiveItem(
              renamed.getOrDefault(name(item), name(item)),
              LiveItem.Kind.valueOf(String.valueOf(item.get("kind")).toUpperCase(Locale.ROOT)),
              address(item),
              "head".equals(item.get("role")),
              is(item, "unit") && !"none".equals(item.get("vents")),
              end || isRepeater,
              isRepeater,
              "fitted".equals(item.get("surge-protection-to-next")),
              item.getOrDefault("device-type", "")));
    }
    return items;
  }

  static @Nullable Integer address(Map<String, String> item) {
    String address = item.get("address");
    return address == null || "absent".equals(item.get("comm-module"))
        ? null
        : Integer.valueOf(address);
  }

  Map<String, String> serial() {
    Map<String, String> serial = new TreeMap<>(line);
    serial.keySet().retainAll(List.of("baud", "parity", "stop-bits"));
    return serial;
  }
}
