package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Edits of a site, of every kind that there is a key for. */
final class RandomEdits {

  /** One kind of edit. */
  interface Edit {
    void of(RandomSite site, Random random);
  }

  private RandomEdits() {}

  static final List<Edit> ALL = all();

  private static List<Edit> all() {
    List<Edit> edits = new ArrayList<>();
    // Which devices there are, and where.
    edits.add(
        (site, random) -> insert(site, random, RandomSite.unit(unused(site, "New house"), false)));
    edits.add(
        (site, random) -> insert(site, random, RandomSite.unit(unused(site, "Annex"), false)));
    edits.add(
        (site, random) -> insert(site, random, RandomSite.repeater(unused(site, "Amplifier"))));
    edits.add((site, random) -> insert(site, random, RandomSite.equipment(unused(site, "Boiler"))));
    edits.add((site, random) -> insert(site, random, RandomSite.converter(unused(site, "Desk"))));
    edits.add(RandomEdits::remove);
    edits.add(RandomEdits::remove);
    edits.add(RandomEdits::move);
    edits.add((site, random) -> any(site, random).put("name", unused(site, "Renamed")));
    // Another device at the same place.
    edits.add((site, random) -> any(site, random).put("serial-number", "X-" + random.nextInt(999)));
    edits.add((site, random) -> any(site, random).put("serial-number", "Y-" + random.nextInt(999)));
    edits.add((site, random) -> any(site, random).put("device-type", "other-type"));
    edits.add((site, random) -> site.chain.get(0).put("serial-number", "Z"));
    // Addresses.
    edits.add((site, random) -> site.number(random, true));
    edits.add((site, random) -> site.number(random, false));
    edits.add(RandomEdits::swapAddresses);
    // Settings of units and other devices.
    for (String setting :
        List.of(
            "firmware: \"2\"",
            "vents: side",
            "vents: none",
            "on-stale-readings: close-and-alarm",
            "stale-after: 3 min",
            "close-time: 2 min",
            "comm-module: built-in",
            "comm-module: absent",
            "stub: 1 m",
            "pair: crossed",
            "conductors: [A, B, C]",
            "network: {ip: 10.0.0.9/24, gateway: 10.0.0.1}",
            "outdoor: {light: head, rain: none}")) {
      edits.add((site, random) -> put(follower(site, random), setting));
    }
    for (String setting :
        List.of(
            "polled: {by: head, registers: 4, every: 10 s}",
            "polled: {by: supervision, registers: 9, every: 30 s}",
            "broadcasts: ignored")) {
      edits.add((site, random) -> of(site, "equipment", setting));
    }
    edits.add((site, random) -> of(site, "converter", "latency: 9 ms"));
    for (String kind : List.of("equipment", "converter")) {
      for (String setting :
          List.of(
              "unit-load: 1/4",
              "isolated: true",
              "idle-bias: needed",
              "pair: crossed",
              "stub: 2 m",
              "conductors: [A, B, C]")) {
        edits.add((site, random) -> of(site, kind, setting));
      }
      edits.add((site, random) -> of(site, kind, "device-type: other-type"));
    }
    for (String setting :
        List.of(
            "unit-load: {in: 1/4, out: 1/4}",
            "idle-bias: {in: needed, out: needed}",
            "isolated: true",
            "conductors: {in: [A, B], out: [A, B]}",
            "pair: {in: crossed, out: straight}",
            "stub: 2 m",
            "device-type: other-type")) {
      edits.add((site, random) -> of(site, "repeater", setting));
    }
    // Cables.
    for (String setting :
        List.of(
            "cable-to-next: 77 m",
            "run-to-next: between-buildings",
            "surge-protection-to-next: fitted",
            "surge-protection-to-next: none")) {
      edits.add((site, random) -> put(any(site, random), setting));
    }
    edits.add(
        (site, random) -> {
          int at = random.nextInt(site.chain.size());
          site.chain
              .subList(at, Math.min(at + 3, site.chain.size()))
              .forEach(one -> put(one, "cable-to-next: 66 m"));
        });
    // The line, the station, the software.
    for (String setting :
        List.of(
            "baud: 19200",
            "parity: odd",
            "stop-bits: 2",
            "maximum-temperature: 50 degC",
            "terminator: 150 ohm",
            "bias: 470 ohm",
            "cable: {gauge: 22 AWG, shielded: false, impedance: 100 ohm, velocity-factor: 0.7, capacitance: 52 pF}",
            "traffic: {broadcast: {registers: 12, every: 20 s}}",
            "traffic: {broadcast: {registers: 14, every: 2 s}}",
            "traffic: {}")) {
      edits.add((site, random) -> put(site.line, setting));
    }
    for (String setting :
        List.of(
            "readings: [light, rain, humidity]",
            "readings: [light]",
            "maximum-age: 1 min",
            "averaging: 1 min",
            "close-within: 3 min")) {
      edits.add((site, random) -> put(site.station, setting));
    }
    for (String setting :
        List.of(
            "link: through-head",
            "link: ethernet",
            "polling: {every: 10 s, registers: 20, timeout: 2 s, retries: 1}")) {
      edits.add((site, random) -> put(site.supervision, setting));
    }
    edits.add(
        (site, random) ->
            site.chain.stream()
                .filter(item -> site.is(item, "converter"))
                .findFirst()
                .ifPresent(item -> site.supervision.put("at", RandomSite.name(item))));
    for (String setting : List.of("title: Other", "customer: others", "stage: planned")) {
      edits.add((site, random) -> put(site.site, setting));
    }
    return List.copyOf(edits);
  }

  /** A site with a few edits, in which all else is put right. */
  static RandomSite edited(RandomSite before, Random random) {
    RandomSite after = before.copy();
    int number = 1 + random.nextInt(5);
    for (int i = 0; i < number; i++) {
      ALL.get(random.nextInt(ALL.size())).of(after, random);
    }
    Map<String, String> head = after.chain.get(0);
    if (random.nextInt(12) == 0) {
      head = headElsewhere(after, random);
    }
    free(after);
    after.dress(head);
    return after;
  }

  /** The role of the head unit goes to another unit, and the station with it. */
  private static Map<String, String> headElsewhere(RandomSite site, Random random) {
    Map<String, String> old = site.chain.get(0);
    Map<String, String> head = follower(site, random);
    if (!site.is(head, "unit") || "absent".equals(head.get("comm-module"))) {
      return old;
    }
    String sources = old.getOrDefault("outdoor", "{}");
    old.put("outdoor", head.getOrDefault("outdoor", "{}"));
    head.put("outdoor", sources);
    return head;
  }

  /** One or two more get the address of another. */
  static void share(RandomSite site, Random random) {
    List<Map<String, String>> items = site.addressed();
    String address = items.get(random.nextInt(items.size())).getOrDefault("address", "1");
    for (int i = 0; i < 2; i++) {
      items.get(random.nextInt(items.size())).put("address", address);
    }
  }

  /** Each has an address of its own again. */
  private static void free(RandomSite site) {
    List<String> taken = new ArrayList<>();
    for (Map<String, String> item : site.addressed()) {
      String address = item.getOrDefault("address", "1");
      for (int next = 1; taken.contains(address); next++) {
        address = String.valueOf(next);
      }
      taken.add(address);
      item.put("address", address);
    }
  }

  private static void put(Map<String, String> keys, String setting) {
    String[] part = setting.split(": ", 2);
    keys.put(part[0], part[1]);
  }

  private static void of(RandomSite site, String kind, String setting) {
    site.chain.stream()
        .filter(item -> site.is(item, kind))
        .findAny()
        .ifPresent(one -> put(one, setting));
  }

  private static Map<String, String> any(RandomSite site, Random random) {
    return site.chain.get(random.nextInt(site.chain.size()));
  }

  /** A unit that is not the first. */
  private static Map<String, String> follower(RandomSite site, Random random) {
    List<Map<String, String>> units =
        site.chain.stream().skip(1).filter(item -> site.is(item, "unit")).toList();
    return units.isEmpty() ? site.chain.get(0) : units.get(random.nextInt(units.size()));
  }

  private static String unused(RandomSite site, String name) {
    String unused = name;
    for (int i = 2; names(site).contains(unused); i++) {
      unused = name + " " + i;
    }
    return unused;
  }

  private static List<String> names(RandomSite site) {
    return site.chain.stream().map(RandomSite::name).toList();
  }

  private static void insert(RandomSite site, Random random, Map<String, String> item) {
    boolean last = site.is(item, "repeater");
    int places = site.chain.size() - (last ? 1 : 0);
    site.chain.add(1 + random.nextInt(Math.max(1, places)), item);
  }

  /** The first stays, and the last is no repeater. */
  private static void remove(RandomSite site, Random random) {
    if (site.chain.size() > 3) {
      site.chain.remove(1 + random.nextInt(site.chain.size() - 1));
      if (site.is(site.chain.get(site.chain.size() - 1), "repeater")) {
        site.chain.remove(site.chain.size() - 1);
      }
    }
  }

  private static void move(RandomSite site, Random random) {
    List<Map<String, String>> rest = site.chain.subList(1, site.chain.size());
    Map<String, String> moved = rest.remove(random.nextInt(rest.size()));
    rest.add(random.nextInt(rest.size() + 1), moved);
    if (site.is(rest.get(rest.size() - 1), "repeater")) {
      Collections.swap(rest, 0, rest.size() - 1);
    }
  }

  private static void swapAddresses(RandomSite site, Random random) {
    List<Map<String, String>> items = site.addressed();
    Map<String, String> one = items.get(random.nextInt(items.size()));
    Map<String, String> other = items.get(random.nextInt(items.size()));
    String address = one.getOrDefault("address", "1");
    one.put("address", other.getOrDefault("address", "1"));
    other.put("address", address);
  }
}
