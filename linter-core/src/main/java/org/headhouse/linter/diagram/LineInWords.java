package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** What a drawing of a line shows, in words for those who do not see it. */
final class LineInWords {
  private final Site site;
  private final ResultMarks marks;
  private final Measure measure;
  private final int stationAt;
  private final int earthAt;

  LineInWords(Site site, ResultMarks marks, Measure measure, int stationAt) {
    this.site = site;
    this.marks = marks;
    this.measure = measure;
    this.stationAt = stationAt;
    this.earthAt = LandedConductors.earthAt(site);
  }

  /** A sentence for each item, and one for each cable. */
  String of(List<Stop> stops) {
    List<String> sentences = new ArrayList<>();
    for (Stop stop : stops) {
      ChainItem item = site.items().get(stop.card().item());
      sentences.add(item(item));
      Hop hop = stop.toNext();
      if (hop != null) {
        ChainItem next = site.items().get(item.index() + 1);
        sentences.add(
            "Then cable to "
                + Names.inSentence(next)
                + ", "
                + String.join(", ", hop.lines())
                + sign(hop.mark())
                + ".");
      }
    }
    return String.join(" ", sentences);
  }

  private String item(ChainItem item) {
    List<String> clauses = new ArrayList<>();
    if (item instanceof Unit unit) {
      unit(unit, clauses);
    } else if (item instanceof Repeater repeater) {
      clauses.add("repeater");
      clauses.add("towards the head unit " + termination(repeater.terminationIn()));
      clauses.add("on the far side " + termination(repeater.terminationOut()));
    } else {
      device(item, clauses);
    }
    for (Bias bias : Cards.biasesAt(site, item)) {
      Resistance each = bias.resistors().orNull();
      clauses.add("bias" + (each == null ? "" : " " + Shown.resistor(each.ohms()) + " each"));
    }
    if (item.index() == earthAt) {
      clauses.add("the common to earth here");
    }
    if (item.index() == stationAt) {
      clauses.add(
          "weather station with "
              + Cards.readings(site.weatherStation().orNull())
              + sign(marks.ofStation()));
    }
    return Names.inSentence(item) + ": " + String.join(", ", clauses) + sign(marks.of(item)) + ".";
  }

  /** Equipment or a converter. */
  private void device(ChainItem item, List<String> clauses) {
    clauses.add(item.kind().word());
    item.address().optional().ifPresent(address -> clauses.add("address " + address));
    Connection connection = item.connection(Side.IN);
    stub(connection.stub(), clauses);
    clauses.add(termination(connection.termination()));
  }

  private void stub(Setting<Length> stub, List<String> clauses) {
    stub.optional()
        .ifPresent(length -> clauses.add("on a stub of " + measure.length(length.metres())));
  }

  private void unit(Unit unit, List<String> clauses) {
    clauses.add(unit.isHead() ? "head unit" : "follower");
    clauses.add("address " + unit.address().optional().map(String::valueOf).orElse("not known"));
    clauses.add(LandedConductors.marks(unit.conductors(), unit.type()) + " landed");
    if (unit.pair().is(Pair.CROSSED)) {
      clauses.add("pair crossed");
    }
    stub(unit.stub(), clauses);
    clauses.add(termination(unit.termination()));
  }

  private static String termination(Setting<Termination> setting) {
    Termination termination = setting.orNull();
    if (termination == null) {
      return "terminator not known";
    }
    Resistance resistance = termination.resistance();
    return resistance == null
        ? "no terminator"
        : "terminator " + Cards.value(resistance, termination.capacitance());
  }

  private static String sign(@Nullable Mark mark) {
    return mark == null ? "" : ", sign " + mark.number() + " (" + mark.level().word() + ")";
  }
}
