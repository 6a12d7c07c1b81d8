package org.headhouse.linter.materials;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.materials.Part.Kind;
import org.headhouse.linter.materials.Part.Spot;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Converter;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** Everything of a line that is counted, place by place along the chain. */
final class SiteParts {
  /** One from the supply to D1, one from D0 to common (MODBUS over Serial Line V1.02, 3.4.6). */
  private static final double RESISTORS_OF_A_BIAS = 2;

  private final Site site;
  private final String cable;
  private final List<Part> parts = new ArrayList<>();

  private SiteParts(Site site) {
    this.site = site;
    this.cable = CableType.of(site);
  }

  static List<Part> of(Site site) {
    SiteParts all = new SiteParts(site);
    all.addAll();
    return List.copyOf(all.parts);
  }

  private void addAll() {
    List<ChainItem> items = site.items();
    if (items.isEmpty()) {
      unknown(Material.CABLE, cable, Spot.at(Kind.RUN, Part.NOWHERE), "the chain is not known");
    }
    for (int i = 0; i < items.size(); i++) {
      ChainItem item = items.get(i);
      ChainItem next = i + 1 < items.size() ? items.get(i + 1) : null;
      run(item, next);
      stub(item);
      terminators(item, next == null);
      device(item);
    }
    bias();
  }

  private void run(ChainItem item, @Nullable ChainItem next) {
    Length length = item.cableToNext().orNull();
    Spot spot = Spot.after(Kind.RUN, item.index());
    if (next == null) {
      if (length != null) {
        unknown(
            Material.CABLE,
            cable,
            spot,
            length.written() + " after " + item.called() + ", which is the last item");
      }
      return;
    }
    String words = "cable from " + item.called() + " to " + next.called();
    part(Material.CABLE, cable, length == null ? null : length.metres(), spot, words);
    parts.addAll(SurgeProtectors.of(item, next));
  }

  private void stub(ChainItem item) {
    Setting<Length> stub = item.connection(Side.IN).stub();
    if (!stub.isMissing()) {
      Length length = stub.orNull();
      part(
          Material.CABLE,
          cable,
          length == null ? null : length.metres(),
          Spot.at(Kind.STUB, item.index()),
          "stub of " + item.called());
    }
  }

  private void terminators(ChainItem item, boolean last) {
    if (item instanceof Repeater repeater) {
      // A side without a cable needs none.
      terminator(item, Side.IN, repeater.terminationIn(), item.index() > 0);
      terminator(item, Side.OUT, repeater.terminationOut(), !last);
    } else {
      terminator(item, Side.IN, item.connection(Side.IN).termination(), true);
    }
  }

  private void terminator(
      ChainItem item, Side side, Setting<Termination> setting, boolean connected) {
    Termination termination = setting.orNull();
    Spot spot = Spot.at(Kind.ACROSS_THE_PAIR, item.index(), side);
    String where = "terminator at " + called(item, side);
    if (termination == null) {
      if (connected || setting.isFaulty()) {
        unknown(Material.TERMINATOR, "", spot, where);
      }
    } else if (termination.resistance() != null) {
      part(Material.TERMINATOR, value(termination), 1.0, spot, where);
    }
  }

  /** Equal values are one type, however they are written. */
  private static String value(Termination termination) {
    String resistor = Shown.resistor(Objects.requireNonNull(termination.resistance()).ohms());
    return termination.capacitance() == null
        ? resistor
        : resistor + " + " + Shown.capacitor(termination.capacitance().farads());
  }

  private static String called(ChainItem item, Side side) {
    return item.called() + (item instanceof Repeater ? ", side " + side.word() : "");
  }

  private void device(ChainItem item) {
    Spot spot = Spot.at(Kind.DEVICE, item.index());
    String type = item.deviceType().or("");
    if (item instanceof Unit unit) {
      parts.addAll(CommModules.of(unit));
    } else if (item instanceof Repeater) {
      part(Material.REPEATER, type, 1.0, spot, item.called());
    } else if (item instanceof Converter) {
      part(Material.CONVERTER, type, 1.0, spot, item.called());
    }
  }

  private void bias() {
    LineSettings line = site.line().orNull();
    Setting<List<Bias>> all = line == null ? null : line.bias();
    if (all == null ? site.line().isFaulty() : all.isFaulty()) {
      unknown(
          Material.BIAS_RESISTOR,
          "",
          Spot.at(Kind.BIAS, Part.NOWHERE),
          "the key bias is not understood");
    } else if (all != null && all.isGiven()) {
      Map<String, ChainItem> items = new HashMap<>();
      site.items()
          .forEach(item -> item.name().optional().ifPresent(name -> items.putIfAbsent(name, item)));
      all.or(List.of()).forEach(bias -> bias(bias, items.get(bias.at().or(""))));
    }
  }

  private void bias(Bias bias, @Nullable ChainItem item) {
    Side side = item instanceof Repeater ? bias.side().or(Side.OUT) : Side.IN;
    Spot spot = Spot.at(Kind.BIAS, item == null ? Part.NOWHERE : item.index(), side);
    Resistance each = bias.resistors().orNull();
    String where = item == null ? "an item that is not known" : called(item, side);
    if (each == null) {
      unknown(Material.BIAS_RESISTOR, "", spot, "value of the resistors at " + where);
    } else if (each.ohms() > Levels.WEAK_PULL_OHMS) {
      unknown(
          Material.BIAS_RESISTOR,
          "",
          spot,
          Shown.resistor(each.ohms()) + " at " + where + ", usually built into the device");
    } else {
      part(
          Material.BIAS_RESISTOR,
          Shown.resistor(each.ohms()),
          RESISTORS_OF_A_BIAS,
          spot,
          "bias at " + where);
    }
  }

  private void unknown(Material material, String type, Spot spot, String words) {
    part(material, type, null, spot, words);
  }

  private void part(
      Material material, String type, @Nullable Double amount, Spot spot, String words) {
    parts.add(new Part(material, type, amount, spot, words));
  }
}
