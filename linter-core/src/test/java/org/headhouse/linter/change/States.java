package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.YamlReader;

/** States of a site for tests, written as YAML and read as a user's file is. */
final class States {

  /** An item of a chain; a repeater has address 0. */
  record Item(String name, int address, List<String> more) {
    static Item unit(String name, int address, String... more) {
      return new Item(name, address, List.of(more));
    }

    static Item repeater(String name) {
      return new Item(name, 0, List.of());
    }

    boolean isRepeater() {
      return address == 0;
    }

    Item at(int other) {
      return new Item(name, other, more);
    }
  }

  private States() {}

  static Site site(String text) {
    Node.Valued root =
        new YamlReader(Limits.DEFAULT).read(new SourceText("site.yaml", text)).root();
    if (root == null) {
      throw new AssertionError("no YAML:\n" + text);
    }
    return SiteBinder.bind(new SourceText("site.yaml", text), root, DeviceTypes.NONE).model();
  }

  /** A commissioned site: terminators at the ends of each segment, the head unit first. */
  static Site site(List<Item> items) {
    return site(text(items, 9600));
  }

  static String text(List<Item> items, int baud) {
    List<String> lines = new ArrayList<>();
    lines.add("format: 1");
    lines.add("site: example");
    lines.add("stage: commissioned");
    lines.add("weather-station: {at: " + items.get(0).name() + ", readings: [light]}");
    lines.add("line: {baud: " + baud + ", parity: even, stop-bits: 1}");
    lines.add("chain:");
    for (int i = 0; i < items.size(); i++) {
      lines.addAll(item(items, i));
    }
    return String.join("\n", lines) + "\n";
  }

  private static List<String> item(List<Item> items, int at) {
    Item item = items.get(at);
    List<String> lines = new ArrayList<>();
    boolean last = at + 1 == items.size();
    if (item.isRepeater()) {
      lines.add("  - repeater: " + item.name());
      lines.add("    termination: {in: 120 ohm, out: 120 ohm}");
    } else {
      lines.add("  - unit: " + item.name());
      lines.add("    role: " + (at == 0 ? "head" : "follower"));
      lines.add("    address: " + item.address());
      lines.add("    comm-module: fitted");
      lines.add("    conductors: " + (at == 0 ? "[A, B, G]" : "[A, B]"));
      lines.add("    termination: " + (at == 0 || last ? "120 ohm" : "none"));
      lines.add("    outdoor: {light: " + (at == 0 ? "local" : "head") + "}");
    }
    item.more().forEach(key -> lines.add("    " + key));
    if (!last) {
      lines.add("    cable-to-next: " + (10 + item.name().length()) + " m");
    }
    return lines;
  }
}
