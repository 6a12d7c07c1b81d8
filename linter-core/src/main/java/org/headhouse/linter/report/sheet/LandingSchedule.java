package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Quantity;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SurgeProtection;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** The connections item by item along the chain. */
final class LandingSchedule {
  private static final String NONE = "none";

  private final Site site;
  private final LineFigures figures;
  private final Attention attention;
  private final Measure measure;

  LandingSchedule(Site site, LineFigures figures, Attention attention, Measure measure) {
    this.site = site;
    this.figures = figures;
    this.attention = attention;
    this.measure = measure;
  }

  List<LandingRow> rows() {
    List<LandingRow> rows = new ArrayList<>();
    for (ChainItem item : site.items()) {
      if (item instanceof Unit unit) {
        rows.add(unit(unit));
      } else if (item instanceof Repeater repeater) {
        rows.add(repeater(repeater));
      } else {
        rows.add(device(item));
      }
    }
    return rows;
  }

  private LandingRow unit(Unit unit) {
    LandedPair pair = LandedPair.of(unit, site);
    return new LandingRow(
        PlainText.name(unit),
        UnitWords.addressAndType(unit),
        pair.positive(),
        pair.negative(),
        pair.note(),
        common(unit.connection(), unit),
        shield(unit),
        surge(unit),
        termination("", unit.termination()) + bias(unit),
        PlainText.word(unit.commModule()),
        cableOut(unit) + branch(unit.connection()),
        attention.wiring(unit));
  }

  private LandingRow repeater(Repeater repeater) {
    return new LandingRow(
        PlainText.name(repeater),
        "repeater",
        "+",
        "−",
        "by its own marks, on both sides",
        commons(repeater),
        shield(repeater),
        surge(repeater),
        termination("in: ", repeater.terminationIn())
            + termination("; out: ", repeater.terminationOut())
            + bias(repeater),
        NONE,
        cableOut(repeater),
        attention.wiring(repeater));
  }

  /** Equipment or a converter: its own marks count, or those of its type. */
  private LandingRow device(ChainItem item) {
    Connection connection = item.connection(Side.IN);
    LandedPair pair = LandedPair.of(item, site);
    String kind = item.kind().word();
    return new LandingRow(
        PlainText.name(item),
        item.address().optional().map(address -> kind + ", address " + address).orElse(kind),
        pair.positive(),
        pair.negative(),
        pair.note(),
        common(connection, item),
        shield(item),
        surge(item),
        termination("", connection.termination()) + bias(item),
        NONE,
        cableOut(item) + branch(connection),
        attention.wiring(item));
  }

  private @Nullable ChainItem before(ChainItem item) {
    return item.index() == 0 ? null : site.items().get(item.index() - 1);
  }

  private String cableOut(ChainItem item) {
    return item.index() == site.items().size() - 1 ? "none, end of line" : run(item);
  }

  private String run(ChainItem from) {
    return from.cableToNext()
            .optional()
            .map(length -> measure.length(length.metres()))
            .orElse("length " + PlainText.NOT_WRITTEN)
        + (from.runToNext().is(Run.BETWEEN_BUILDINGS) ? ", between buildings" : "");
  }

  private String branch(Connection connection) {
    return connection
        .stub()
        .optional()
        .map(stub -> "; itself on a stub of " + measure.length(stub.metres()))
        .orElse("");
  }

  private static String commons(Repeater repeater) {
    Connection in = repeater.connection(Side.IN);
    Connection out = repeater.connection(Side.OUT);
    return in.conductors().isMissing() && out.conductors().isMissing()
        ? "as its manual says"
        : "in: " + common(in, repeater) + "; out: " + common(out, repeater);
  }

  private static String common(Connection connection, ChainItem item) {
    List<Setting<Conductor>> landed = connection.conductors().orNull();
    if (landed == null) {
      return PlainText.NOT_WRITTEN;
    }
    boolean hasGround = landed.stream().anyMatch(conductor -> conductor.is(Conductor.G));
    if (landed.stream().anyMatch(conductor -> conductor.is(Conductor.C))) {
      String common = "on " + PlainText.name(item.type().mark(Conductor.C));
      return hasGround ? common + ", drain on G" : common;
    }
    return hasGround ? "on G" : "not landed";
  }

  /** One end of each cable's shield is grounded (MODBUS over Serial Line V1.02 §3.6). */
  private String shield(ChainItem item) {
    LineSettings line = site.line().orNull();
    Cable cable = line == null ? null : line.cable().orNull();
    if (cable == null || !cable.shielded().is(true)) {
      return "no shield";
    }
    if (item instanceof Repeater) {
      return shield(item, Side.IN) + "; " + shield(item, Side.OUT);
    }
    if (isGrounded(item, Side.IN) || isGrounded(item, Side.OUT)) {
      return "to protective ground, here only";
    }
    boolean isEnd = item.index() == 0 || item.index() == site.items().size() - 1;
    return isEnd ? "cut back, insulated" : "joined, insulated";
  }

  private String shield(ChainItem repeater, Side side) {
    return side.word() + ": " + (isGrounded(repeater, side) ? "to protective ground" : "insulated");
  }

  /** Where the segment at that side of an item has its shield grounded: at one item only. */
  private boolean isGrounded(ChainItem item, Side side) {
    return figures.segments().stream()
        .map(SegmentLine::segment)
        .anyMatch(
            segment ->
                grounded(segment).isSameItemAs(item)
                    && (!(item instanceof Repeater) || segment.side(item) == side));
  }

  /** The item at which the file lands the drain; without one, the first. */
  private static ChainItem grounded(Segment segment) {
    return segment.items().stream()
        .filter(item -> lands(segment.connection(item), Conductor.G))
        .findFirst()
        .orElse(segment.first());
  }

  private static boolean lands(Connection connection, Conductor conductor) {
    return connection.conductors().or(List.of()).stream().anyMatch(one -> one.is(conductor));
  }

  private String surge(ChainItem item) {
    ChainItem before = before(item);
    String in = before == null ? "" : surge("in", before);
    String out = item.index() == site.items().size() - 1 ? "" : surge("out", item);
    return in.isEmpty() && out.isEmpty()
        ? NONE
        : in + (in.isEmpty() || out.isEmpty() ? "" : "; ") + out;
  }

  /** Shown where it is fitted, and where a run leaves the building without it. */
  private static String surge(String side, ChainItem from) {
    if (from.surgeProtectionToNext().is(SurgeProtection.FITTED)) {
      return side + ": fit";
    }
    return from.runToNext().is(Run.BETWEEN_BUILDINGS) ? side + ": missing" : "";
  }

  private static String termination(String side, Setting<Termination> setting) {
    Termination termination = setting.orNull();
    if (termination == null) {
      return side + PlainText.NOT_WRITTEN;
    }
    return side + (termination.isFitted() ? termination.written() : NONE);
  }

  private String bias(ChainItem item) {
    StringBuilder all = new StringBuilder();
    for (SegmentLine segment : figures.segments()) {
      for (Bias bias : segment.biases()) {
        if (segment.segment().items().get(segment.itemOf(bias)).isSameItemAs(item)) {
          String side =
              item instanceof Repeater ? "side " + segment.segment().side(item).word() + ", " : "";
          all.append("; bias ").append(side).append(each(bias));
        }
      }
    }
    return all.toString();
  }

  private static String each(Bias bias) {
    return written(bias.resistors())
        + " each: from "
        + written(bias.supply())
        + " to D1, from D0 to common";
  }

  private static String written(Setting<? extends Quantity> setting) {
    return setting
        .optional()
        .map(Quantity::written)
        .orElse("a value that is " + PlainText.NOT_WRITTEN);
  }
}
