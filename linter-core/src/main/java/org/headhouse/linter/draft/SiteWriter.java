package org.headhouse.linter.draft;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Stage;

/**
 * Writes the text of a site definition. What neither the list nor the settings say for certain
 * stands beside a comment that starts with "look:".
 */
final class SiteWriter {
  private static final int MOST_SHOWN = 8;

  private static final String HEAD =
      """
      # Drafted from a list of units. Go through the lines marked "look" and compare them with the
      # site before anybody works from this file. Have wiring done by licensed people under the local
      # electrical code; isolate and lock off the supply before a unit is opened.
      """;

  private static final String NO_ADDRESSES =
      """
      # look: the list has no addresses, and these are handed out along the chain; where the line is
      # live, read the address of each unit first
      """;

  /** Addresses in a list are those of devices that work: planned would let a safe fix move them. */
  private static final String MAY_BE_LIVE =
      """
      # look: whether the line is already in use; keep this comment until the stage is commissioned:
      # while it is here, no safe fix changes what is set on site
      """;

  private final ListedChain list;
  private final List<ItemText> items;
  private final DraftSettings settings;
  private final SitePolicy policy;
  private final StringBuilder text = new StringBuilder();

  private SiteWriter(ListedChain list, DraftSettings settings, SitePolicy policy) {
    this.list = list;
    this.settings = settings;
    this.policy = policy;
    this.items = items(list, settings, policy);
  }

  /**
   * @param list with at least two units; each has an address, or the list has some addresses
   * @param handedOut whether the addresses are not those of the list
   */
  static String text(
      ListedChain list, boolean handedOut, DraftSettings settings, SitePolicy policy) {
    SiteWriter writer = new SiteWriter(list, settings, policy);
    writer.top();
    writer.line();
    writer.supervision();
    TypeQuestions.of(list.items(), MOST_SHOWN).forEach(writer::look);
    Map<String, String> defaults = writer.defaults();
    writer.beforeChain(handedOut);
    for (ItemText item : writer.items) {
      boolean takesDefaults = item.isFollower();
      item.block("  - ", takesDefaults ? defaults : Map.of())
          .forEach(line -> writer.text.append(line).append('\n'));
    }
    return writer.text.toString();
  }

  private static List<ItemText> items(ListedChain list, DraftSettings settings, SitePolicy policy) {
    int head = list.head();
    ItemTexts texts =
        new ItemTexts(
            list.columns(),
            settings.impedance().written(),
            policy.groundAtEveryUnit(),
            list.items().get(head).type());
    List<ItemText> items = new ArrayList<>();
    int last = list.items().size() - 1;
    for (int i = 0; i <= last; i++) {
      items.add(
          texts.of(
              list.items().get(i),
              new ItemTexts.Position(i == 0, i == last, i == head),
              "its address is not in the list; read it at the unit"));
    }
    return items;
  }

  private void look(String what) {
    text.append("# look: ").append(what).append('\n');
  }

  private void top() {
    text.append(HEAD);
    unread();
    text.append("format: ").append(Format.VERSION).append('\n');
    text.append("site: ").append(YamlScalar.of(settings.site())).append('\n');
    if (settings.title() != null) {
      text.append("title: ").append(YamlScalar.of(settings.title())).append('\n');
    }
    if (list.columns().contains(Column.ADDRESS)) {
      text.append(MAY_BE_LIVE);
    }
    text.append("stage: ").append(Stage.PLANNED.word()).append("\n\n");
    text.append("weather-station:\n");
    text.append("  # look: the station is taken to be wired to the head unit\n");
    text.append("  at: ").append(headName()).append('\n');
    text.append("  # look: what the station really measures\n");
    text.append("  readings: [").append(words(settings.readings())).append("]\n");
  }

  /** Such a column may say what is set in the houses, as a setting that differs from ours. */
  private void unread() {
    if (!list.unread().isEmpty()) {
      look(
          "columns of the list that were not read: "
              + list.unread().stream().limit(MOST_SHOWN).map(YamlScalar::of).collect(joining(", "))
              + (list.unread().size() > MOST_SHOWN ? ", …" : ""));
    }
  }

  private String headName() {
    return YamlScalar.of(list.items().get(list.head()).name());
  }

  private static String words(List<Reading> readings) {
    return readings.stream().map(Reading::word).collect(joining(", "));
  }

  private void line() {
    text.append("\nline:\n");
    text.append("  # look: whether every unit is set to these three\n");
    text.append("  baud: ").append(settings.baud()).append('\n');
    text.append("  parity: ").append(settings.parity().word()).append('\n');
    text.append("  stop-bits: ").append(settings.parity() == Parity.NONE ? 2 : 1).append('\n');
    text.append(
        "  # look: what is printed on the jacket of the cable, or given in its data sheet\n");
    text.append("  cable: {gauge: ").append(settings.gauge().written());
    text.append(", shielded: ").append(settings.shielded());
    text.append(", impedance: ").append(settings.impedance().written()).append("}\n");
    bias(BiasNeed.of(items, list.head(), settings, policy));
  }

  private void bias(BiasNeed need) {
    if (need instanceof BiasNeed.Unknown) {
      text.append(
          "  # look: bias cannot be computed before every length of cable is known"
              + (list.columns().contains(Column.TERMINATION) ? ", and every\n  # terminator" : "")
              + "\n");
    } else if (need instanceof BiasNeed.InEachSegment) {
      text.append("  # look: where the bias of each segment is; a repeater passes no bias on\n");
    } else if (need instanceof BiasNeed.Resistors resistors) {
      resistors(Shown.resistor(resistors.ohms()));
    } else {
      text.append("  # look: no bias resistors of 450 ohm or more are enough for this line;\n");
      text.append(
          "  # terminators with a capacitor in series, such as 120 ohm + 1 nF, or a repeater\n");
      text.append("  # solve that\n");
    }
  }

  private void resistors(String each) {
    if (settings.biasSupply() == null) {
      String supply = Shown.supply(BiasNeed.USUAL_SUPPLY_VOLTS);
      text.append("  # look: it is not known whether the line has bias. If it has none, fit\n");
      text.append("  # resistors at one place; computed for a supply of ").append(supply);
      text.append(":\n  # bias:\n  #   - {at: ").append(headName()).append(", resistors: ");
      text.append(each).append(", supply: ").append(supply).append("}\n");
    } else {
      text.append("  # look: computed; no other unit may have bias resistors switched on\n");
      text.append("  bias:\n    - {at: ").append(headName()).append(", resistors: ");
      text.append(each).append(", supply: ").append(settings.biasSupply().written());
      text.append("}\n");
    }
  }

  private void supervision() {
    text.append('\n');
    List<ItemText> converters =
        items.stream().filter(item -> item.kind() == ItemKind.CONVERTER).toList();
    if (converters.isEmpty()) {
      look(
          "whether supervising software asks the units; where it does, add supervision with link,\n"
              + "# zones and polling, and its converter to the chain where the link is serial");
    } else {
      look(
          "the software at "
              + converters.stream().map(one -> YamlScalar.of(one.name())).collect(joining(", "))
              + "; add supervision with link: serial, at, zones and polling");
    }
  }

  /** Writes what all followers share once; one follower alone shares nothing. */
  private Map<String, String> defaults() {
    List<ItemText> followers = items.stream().filter(ItemText::isFollower).toList();
    Map<String, String> defaults = new HashMap<>();
    if (followers.size() < 2) {
      return defaults;
    }
    List<ItemText.Key> shared =
        ItemText.shared(followers).stream()
            .filter(key -> !Format.KEYS_WITHOUT_DEFAULT.contains(key.key()))
            .toList();
    if (!shared.isEmpty()) {
      text.append("\ndefaults:\n  ").append(Role.FOLLOWER.word()).append(":\n");
      ItemText.lines(shared, "    ").forEach(line -> text.append(line).append('\n'));
      shared.forEach(key -> defaults.put(key.key(), key.value()));
    }
    return defaults;
  }

  private void beforeChain(boolean handedOut) {
    text.append('\n');
    if (handedOut) {
      text.append(NO_ADDRESSES);
    } else {
      look(
          "not in the list, so these are as they should be: outdoor"
              + missing()
              + ";\n# compare each unit with them");
    }
    String run =
        "whether its cable leaves a building (run-to-next: between-buildings, and\n"
            + "# surge protection at both ends of that run)";
    String stub = "whether it hangs on a branch (stub)";
    boolean asksRun = !list.columns().contains(Column.RUN);
    boolean asksStub = !list.columns().contains(Column.STUB);
    if (asksRun || asksStub) {
      look(
          "at each unit, "
              + (asksRun ? run : "")
              + (asksRun && asksStub ? ", and " : "")
              + (asksStub ? stub : ""));
    }
    text.append("chain:\n");
  }

  private String missing() {
    StringBuilder missing = new StringBuilder();
    for (Column column :
        List.of(Column.MODULE, Column.CONDUCTORS, Column.TERMINATION, Column.STALE)) {
      if (!list.columns().contains(column)) {
        missing.append(", ").append(column.heading());
      }
    }
    return missing.toString();
  }
}
