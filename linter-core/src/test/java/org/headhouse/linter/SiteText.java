package org.headhouse.linter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The text of a site whose line is put together item by item, for tests of what is computed of it.
 *
 * <p>Units are called Head House, Bay 2, Bay 3 and so on, with rising addresses; nothing but what a
 * test asks for breaks a rule.
 */
public final class SiteText {
  /**
   * The type of a unit that says no other: nothing is known of it but that it needs no bias and
   * waits for other clients.
   */
  public static final String PLAIN =
      "  - {id: plain, title: Controller, idle-bias: not-needed, other-clients: waits}\n";

  /** What such a unit says of its type. */
  public static final String OF_PLAIN_TYPE = "device-type: plain";

  /** What a piece of equipment says of requests to all. */
  public static final String BROADCASTS_IGNORED = "broadcasts: ignored";

  /** Stands for the readings of the station, which may be given after the units. */
  private static final String OUTDOOR = "\u2026";

  private final Map<String, String> line = new LinkedHashMap<>();
  private final List<String> items = new ArrayList<>();
  private final List<String> names = new ArrayList<>();
  private String station = "[light]";
  private String rest = "";

  /** A line of 9600 bit/s, 8E1, over shielded 24 AWG of 120 ohm. */
  public SiteText() {
    line.put("baud", "9600");
    line.put("parity", "even");
    line.put("stop-bits", "1");
    line.put("cable", cable("24 AWG", "120 ohm"));
  }

  public static String cable(String gauge, String impedance) {
    return "{gauge: " + gauge + ", shielded: true, impedance: " + impedance + "}";
  }

  /** Sets a key of the line. */
  public SiteText line(String key, String value) {
    line.put(key, value);
    return this;
  }

  /** Bias at an item. */
  public SiteText bias(String at, String resistors, String supply) {
    return line("bias", "[{at: " + at + ", resistors: " + resistors + ", supply: " + supply + "}]");
  }

  /** The broadcast of the head unit. */
  public SiteText broadcast(int registers, String every) {
    return line("traffic", "{broadcast: {registers: " + registers + ", every: " + every + "}}");
  }

  /** How old a reading may become. */
  public SiteText maximumAge(String age) {
    return station("[light], maximum-age: " + age);
  }

  /** What the station measures, and further keys of it; the units take each from there. */
  public SiteText station(String readingsAndMore) {
    station = readingsAndMore;
    return this;
  }

  /**
   * A unit; the first is the head unit.
   *
   * @param cableToNext empty on the last item
   * @param more further keys of the unit
   */
  public SiteText unit(String termination, String cableToNext, String... more) {
    boolean head = names.isEmpty();
    String name = head ? "Head House" : "Bay " + (names.size() + 1);
    names.add(name);
    item(
        List.of(
            "unit: " + name,
            "role: " + (head ? "head" : "follower"),
            "address: " + names.size(),
            "comm-module: fitted",
            "conductors: " + (head ? "[A, B, G]" : "[A, B]"),
            "termination: " + termination,
            "outdoor: {" + OUTDOOR + "}"),
        cableToNext,
        more);
    return this;
  }

  /** A repeater with the same terminator on both sides. */
  public SiteText repeater(String name, String termination, String cableToNext) {
    item(
        List.of(
            "repeater: " + name,
            "idle-bias: {in: not-needed, out: not-needed}",
            "termination: {in: " + termination + ", out: " + termination + "}"),
        cableToNext);
    return this;
  }

  /**
   * A piece of equipment in the middle of the chain, at an address from 100 on.
   *
   * @param polled the inside of a flow mapping; empty where nobody asks it
   */
  public SiteText equipment(String name, String polled, String cableToNext, String... more) {
    item(
        List.of(
            "equipment: " + name,
            "address: " + (100 + items.size()),
            BROADCASTS_IGNORED,
            "conductors: [A, B]",
            "idle-bias: not-needed",
            "termination: none",
            polled.isEmpty() ? "unit-load: 1" : "polled: {" + polled + "}"),
        cableToNext,
        more);
    return this;
  }

  /** A converter in the middle of the chain. */
  public SiteText converter(String name, String latency, String cableToNext) {
    item(
        List.of(
            "converter: " + name,
            "conductors: [A, B]",
            "idle-bias: not-needed",
            "termination: none",
            "latency: " + latency),
        cableToNext);
    return this;
  }

  private void item(List<String> keys, String cableToNext, String... more) {
    List<String> all = new ArrayList<>(keys);
    all.addAll(List.of(more));
    if (keys.get(0).startsWith("unit") && all.stream().noneMatch(SiteText::isType)) {
      all.add(3, OF_PLAIN_TYPE);
    }
    if (!cableToNext.isEmpty()) {
      all.add("cable-to-next: " + cableToNext);
    }
    items.add("  - " + String.join("\n    ", all) + "\n");
  }

  private static boolean isType(String keys) {
    return keys.contains("device-type:");
  }

  /** Several units without terminators, each with the same cable behind it. */
  public SiteText units(int number, String cableToNext, String... more) {
    for (int i = 0; i < number; i++) {
      unit("none", cableToNext, more);
    }
    return this;
  }

  /** Polls of all units, as they are at the end, over the serial line or over Ethernet. */
  public SiteText polls(String link, String polling) {
    rest +=
        "supervision: {link: "
            + link
            + ", zones: ["
            + String.join(", ", names)
            + "], polling: {"
            + polling
            + "}}\n";
    return this;
  }

  /** What was measured; the line is commissioned. */
  public SiteText measured(String values) {
    rest +=
        "commissioning: {date: 2020-01-01, by: R.O., measured: {"
            + values
            + "}, outdoor-readings-seen: ["
            + String.join(", ", names.subList(1, names.size()))
            + "]}\n";
    return this;
  }

  /** A unit of a commissioned line says what it moves; here nothing. */
  private static String withoutVents(String item) {
    return item.contains("vents:")
        ? item
        : item.replaceFirst("(?m)^(    outdoor: .*)$", "$1\n    vents: none");
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("format: 1\nsite: example\n");
    text.append("stage: ").append(rest.contains("measured") ? "commissioned" : "planned");
    text.append("\nweather-station: {at: Head House, readings: ").append(station);
    text.append("}\nline:\n");
    line.forEach((key, value) -> text.append("  " + key + ": " + value + "\n"));
    text.append("chain:\n");
    List<String> readings = List.of(station.substring(1, station.indexOf(']')).split(", "));
    for (String item : items) {
      String source = item.contains("role: head") ? ": local" : ": head";
      String whole = item.replace(OUTDOOR, String.join(source + ", ", readings) + source);
      text.append(rest.contains("measured") ? withoutVents(whole) : whole);
    }
    return text.append(rest).toString();
  }
}
