package org.headhouse.linter.draft;

import static java.util.stream.Collectors.joining;

import java.util.List;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.ModuleNeed;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.StaleAction;
import org.jspecify.annotations.Nullable;

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

  private static final String BEFORE_CHAIN =
      """

      # look: at each unit, whether its cable leaves a building (run-to-next: between-buildings, and
      # surge protection at both ends of that run), and whether it hangs on a branch (stub)
      chain:
      """;

  private final List<ListedUnit> units;
  private final List<String> unread;
  private final DraftSettings settings;
  private final SitePolicy policy;
  private final StringBuilder text = new StringBuilder();

  private SiteWriter(ListedUnits list, DraftSettings settings, SitePolicy policy) {
    this.units = list.units();
    this.unread = list.unread();
    this.settings = settings;
    this.policy = policy;
  }

  /**
   * @param list with at least two units, the head unit first
   */
  static String text(ListedUnits list, DraftSettings settings, SitePolicy policy) {
    SiteWriter writer = new SiteWriter(list, settings, policy);
    writer.top();
    writer.line();
    writer.types();
    writer.text.append(BEFORE_CHAIN);
    for (int i = 0; i < list.units().size(); i++) {
      writer.unit(list.units().get(i), i);
    }
    return writer.text.toString();
  }

  private void top() {
    text.append(HEAD);
    unread();
    text.append("format: ").append(Format.VERSION).append('\n');
    text.append("site: ").append(YamlScalar.of(settings.site())).append('\n');
    if (settings.title() != null) {
      text.append("title: ").append(YamlScalar.of(settings.title())).append('\n');
    }
    text.append("stage: ").append(Stage.PLANNED.word()).append("\n\n");
    text.append("weather-station:\n");
    text.append("  # look: the station is taken to be wired to the first unit of the list\n");
    text.append("  at: ").append(headName()).append('\n');
    text.append("  # look: what the station really measures\n");
    text.append("  readings: [").append(words(settings.readings())).append("]\n");
  }

  /** Such a column may say what is set in the houses, as addresses that differ from ours. */
  private void unread() {
    if (!unread.isEmpty()) {
      text.append("# look: columns of the list that were not read: ");
      text.append(unread.stream().limit(MOST_SHOWN).map(YamlScalar::of).collect(joining(", ")));
      text.append(unread.size() > MOST_SHOWN ? ", …\n" : "\n");
    }
  }

  private String headName() {
    return YamlScalar.of(units.get(0).name());
  }

  private static String words(List<Reading> readings) {
    return readings.stream().map(Reading::word).collect(joining(", "));
  }

  private void line() {
    text.append("\nline:\n");
    text.append("  # look: every unit is to be set to these three\n");
    text.append("  baud: ").append(settings.baud()).append('\n');
    text.append("  parity: ").append(settings.parity().word()).append('\n');
    text.append("  stop-bits: ").append(settings.parity() == Parity.NONE ? 2 : 1).append('\n');
    text.append(
        "  # look: what is printed on the jacket of the cable, or stands in its data sheet\n");
    text.append("  cable: {gauge: ").append(settings.gauge().written());
    text.append(", shielded: ").append(settings.shielded());
    text.append(", impedance: ").append(settings.impedance().written()).append("}\n");
    bias(BiasNeed.of(units, settings, policy));
  }

  private void bias(BiasNeed need) {
    if (need instanceof BiasNeed.Unknown) {
      text.append("  # look: bias cannot be computed before every length of cable is known\n");
    } else if (need instanceof BiasNeed.Resistors resistors) {
      resistors(Shown.resistor(resistors.ohms()));
    } else {
      text.append(
          "  # look: resistors of 450 ohm or more cannot hold this line while it is idle;\n");
      text.append(
          "  # terminators with a capacitor in series, such as 120 ohm + 1 nF, or a repeater\n");
      text.append("  # change that\n");
    }
  }

  private void resistors(String each) {
    if (settings.biasSupply() == null) {
      String supply = Shown.resistor(BiasNeed.USUAL_SUPPLY_VOLTS).replace("ohm", "V");
      text.append(
          "  # look: whether anything holds the idle line is not known. Where nothing does,\n");
      text.append("  # fit resistors at one place; computed for a supply of ").append(supply);
      text.append(":\n  # bias:\n  #   - {at: ").append(headName()).append(", resistors: ");
      text.append(each).append(", supply: ").append(supply).append("}\n");
    } else {
      text.append("  # look: computed; no other unit may have bias resistors switched on\n");
      text.append("  bias:\n    - {at: ").append(headName()).append(", resistors: ");
      text.append(each).append(", supply: ").append(settings.biasSupply().written());
      text.append("}\n");
    }
  }

  private void types() {
    for (String question : TypeQuestions.of(units, MOST_SHOWN)) {
      text.append("# look: ").append(question).append('\n');
    }
  }

  private void unit(ListedUnit unit, int index) {
    boolean head = index == 0;
    boolean last = index == units.size() - 1;
    text.append("  - unit: ").append(YamlScalar.of(unit.name())).append('\n');
    key("role", (head ? Role.HEAD : Role.FOLLOWER).word());
    key("address", String.valueOf(unit.address()));
    if (unit.typeId() != null) {
      key("device-type", YamlScalar.of(unit.typeId()));
    }
    boolean builtIn = unit.type().commModule().is(ModuleNeed.BUILT_IN);
    key("comm-module", (builtIn ? CommModule.BUILT_IN : CommModule.FITTED).word());
    key("conductors", head || policy.groundAtEveryUnit() ? "[A, B, G]" : "[A, B]");
    if (isCrossed(unit)) {
      key(
          "pair",
          Pair.CROSSED.word() + "  # its positive terminal has another mark than the head unit's");
    }
    key("termination", head || last ? settings.impedance().written() : "none");
    key("outdoor", outdoor(head ? ReadingSource.LOCAL : ReadingSource.HEAD));
    text.append("    # look: its vents; set vents: none, roof, side or roof-and-side\n");
    key("on-stale-readings", StaleAction.CLOSE.word());
    if (!last) {
      cable(unit.cableToNext());
    }
  }

  private void key(String key, String value) {
    text.append("    ").append(key).append(": ").append(value).append('\n');
  }

  private void cable(@Nullable Length length) {
    if (length == null) {
      text.append("    # look: cable-to-next is not in the list; measure it along the cable\n");
    } else {
      key("cable-to-next", length.written());
    }
  }

  /** Known only where both types are. */
  private boolean isCrossed(ListedUnit unit) {
    ListedUnit head = units.get(0);
    return unit.type().isKnown()
        && head.type().isKnown()
        && unit.type().positiveTerminal() != head.type().positiveTerminal();
  }

  private String outdoor(ReadingSource source) {
    return settings.readings().stream()
        .map(reading -> reading.word() + ": " + source.word())
        .collect(joining(", ", "{", "}"));
  }
}
