package org.headhouse.linter;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The text of a site that is put together of settings, each of which an edit may change: {@code Bay
 * 2.address = 4}. A dash takes a setting away, or the whole of {@code Bay 2}; what is not there is
 * added. Nothing but what an edit asks for breaks a rule.
 */
public final class EditedSite {
  private static final String CHAIN_END = "Bay 4";

  private final Map<String, Map<String, String>> parts = new LinkedHashMap<>();

  public EditedSite(String... edits) {
    set("site.format = 1");
    set("site.site = example");
    set("site.stage = planned");
    set("site.weather-station = {at: Head House, readings: [light, temperature]}");
    set("line.baud = 9600");
    set("line.parity = even");
    set("line.stop-bits = 1");
    set("line.cable = {gauge: 24 AWG, shielded: true, impedance: 120 ohm}");
    unit("Head House", "head", 1, "local", "120 ohm");
    unit("Bay 2", "follower", 2, "head", "none");
    set("Boiler Room.termination = {in: 120 ohm, out: 120 ohm}");
    set("Boiler Room.idle-bias = {in: not-needed, out: not-needed}");
    set("Boiler Room.cable-to-next = 20 m");
    unit("Bay 3", "follower", 3, "head", "none");
    unit(CHAIN_END, "follower", 4, "head", "120 ohm");
    set(CHAIN_END + ".cable-to-next = -");
    for (String edit : edits) {
      set(edit);
    }
  }

  private void unit(String name, String role, int address, String source, String termination) {
    set(name + ".role = " + role);
    set(name + ".address = " + address);
    set(name + ".device-type = plain");
    set(name + ".comm-module = fitted");
    set(name + ".conductors = " + (role.equals("head") ? "[A, B, G]" : "[A, B]"));
    set(name + ".termination = " + termination);
    set(name + ".outdoor = {light: " + source + ", temperature: " + source + "}");
    set(name + ".cable-to-next = 20 m");
  }

  private void set(String edit) {
    String[] sides = edit.split(" = ", 2);
    int point = sides[0].lastIndexOf('.');
    if (point < 0) {
      parts.remove(sides[0]);
      return;
    }
    Map<String, String> part =
        parts.computeIfAbsent(sides[0].substring(0, point), any -> new LinkedHashMap<>());
    String key = sides[0].substring(point + 1);
    if (sides[1].equals("-")) {
      part.remove(key);
    } else {
      part.put(key, sides[1]);
    }
  }

  private void write(StringBuilder text, String part, String indentation) {
    parts.get(part).forEach((key, value) -> text.append(indentation + key + ": " + value + "\n"));
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    write(text, "site", "");
    text.append("line:\n");
    write(text, "line", "  ");
    text.append("chain:\n");
    for (String part : parts.keySet()) {
      if (!part.equals("site") && !part.equals("line")) {
        String kind =
            part.endsWith("Room") ? "repeater" : part.endsWith("Rig") ? "equipment" : "unit";
        text.append("  - " + kind + ": " + part + "\n");
        write(text, part, "    ");
      }
    }
    return text.toString();
  }
}
