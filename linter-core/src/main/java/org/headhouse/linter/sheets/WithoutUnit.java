package org.headhouse.linter.sheets;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.Converter;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.ItemIdentity;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SurgeProtection;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.TrunkRun;
import org.headhouse.linter.site.Unit;

/**
 * A site with one unit taken off the pair: its cables are joined, and what it has for the line is
 * fitted at a neighbour. At an end of the line the neighbour is the new end, and the last run of
 * cable is taken off.
 */
final class WithoutUnit {
  private final Site site;
  private final Unit unit;
  private final ChainItem neighbour;
  private final Side side;

  /**
   * @param neighbour the item beside the unit that takes over
   */
  WithoutUnit(Site site, Unit unit, ChainItem neighbour) {
    this.site = site;
    this.unit = unit;
    this.neighbour = neighbour;
    this.side = neighbour.index() < unit.index() ? Side.OUT : Side.IN;
  }

  Site site() {
    List<ChainItem> items = new ArrayList<>();
    for (ChainItem item : site.items()) {
      if (!item.isSameItemAs(unit)) {
        ChainItem at = item.isSameItemAs(neighbour) ? takingOver(item) : item;
        TrunkRun run = item.index() == unit.index() - 1 ? joined(item.toNext()) : item.toNext();
        items.add(copy(at, items.size(), run));
      }
    }
    return new Site(
        site.source(),
        site.id(),
        site.title(),
        site.customer(),
        site.stage(),
        site.weatherStation(),
        line(),
        new Setting.Given<>(List.copyOf(items), site.chain().place()),
        site.supervision(),
        site.commissioning(),
        // What was measured is of the line as it is.
        new Setting.Missing<>(site.asFound().place()),
        site.suppressions());
  }

  private boolean isLast() {
    return unit.index() == site.items().size() - 1;
  }

  private TrunkRun joined(TrunkRun before) {
    if (isLast()) {
      return new TrunkRun(
          new Setting.Missing<>(before.length().place()),
          new Setting.Missing<>(before.route().place()),
          new Setting.Missing<>(before.protection().place()));
    }
    TrunkRun after = unit.toNext();
    boolean outside = isOutside(before) || isOutside(after);
    boolean safe = isProtected(before) && isProtected(after);
    return new TrunkRun(
        sum(before.length(), after.length()),
        outside
            ? new Setting.Given<>(Run.BETWEEN_BUILDINGS, before.route().place())
            : before.route(),
        new Setting.Given<>(
            outside && safe ? SurgeProtection.FITTED : SurgeProtection.NONE,
            before.protection().place()));
  }

  private static boolean isOutside(TrunkRun run) {
    return run.route().is(Run.BETWEEN_BUILDINGS);
  }

  private static boolean isProtected(TrunkRun run) {
    return !isOutside(run) || run.protection().is(SurgeProtection.FITTED);
  }

  private static Setting<Length> sum(Setting<Length> one, Setting<Length> other) {
    Length first = one.orNull();
    Length second = other.orNull();
    if (first == null || second == null) {
      return first == null ? one : other;
    }
    double metres = first.metres() + second.metres();
    return new Setting.Given<>(new Length(metres, metres + " m"), one.place());
  }

  private ChainItem takingOver(ChainItem item) {
    if (item instanceof Repeater repeater) {
      return side == Side.OUT
          ? new Repeater(
              repeater.identity(),
              repeater.device(),
              repeater.termination(),
              repeater.in(),
              taken(repeater.out()),
              repeater.toNext())
          : new Repeater(
              repeater.identity(),
              repeater.device(),
              repeater.termination(),
              taken(repeater.in()),
              repeater.out(),
              repeater.toNext());
    }
    return copy(item, item.identity(), taken(item.connection(side)), item.toNext());
  }

  /** The terminator and the ground of the shield; what else is connected there stays. */
  private Connection taken(Connection own) {
    Termination termination = unit.termination().orNull();
    return new Connection(
        hasDrain(unit) ? withDrain(own.conductors()) : own.conductors(),
        termination != null && termination.isFitted() ? unit.termination() : own.termination(),
        own.pair(),
        own.stub(),
        own.unitLoad(),
        own.idleBias());
  }

  /** Whether the shield is grounded at a unit. */
  static boolean hasDrain(Unit unit) {
    return unit.conductors().or(List.of()).stream().anyMatch(one -> one.is(Conductor.G));
  }

  private static Setting<List<Setting<Conductor>>> withDrain(
      Setting<List<Setting<Conductor>>> own) {
    List<Setting<Conductor>> landed = own.orNull();
    if (landed == null || landed.stream().anyMatch(one -> one.is(Conductor.G))) {
      return own;
    }
    List<Setting<Conductor>> all = new ArrayList<>(landed);
    all.add(new Setting.Given<>(Conductor.G, own.place()));
    return new Setting.Given<>(List.copyOf(all), own.place());
  }

  private static ChainItem copy(ChainItem item, int index, TrunkRun run) {
    ItemIdentity identity = new ItemIdentity(item.place(), index, item.name());
    return item instanceof Repeater one
        ? new Repeater(identity, one.device(), one.termination(), one.in(), one.out(), run)
        : copy(item, identity, item.connection(Side.IN), run);
  }

  /** Of an item that has one connection only. */
  private static ChainItem copy(
      ChainItem item, ItemIdentity identity, Connection connection, TrunkRun run) {
    if (item instanceof Unit one) {
      return new Unit(
          identity,
          one.device(),
          connection,
          run,
          one.role(),
          one.address(),
          one.firmware(),
          one.commModule(),
          one.ventControl(),
          one.network());
    }
    if (item instanceof Equipment one) {
      return new Equipment(
          identity, one.device(), connection, run, one.address(), one.broadcasts(), one.polled());
    }
    Converter one = (Converter) item;
    return new Converter(identity, one.device(), connection, run, one.latency());
  }

  private Setting<LineSettings> line() {
    LineSettings line = site.line().orNull();
    List<Bias> all = line == null ? null : line.bias().orNull();
    if (line == null || all == null || !hasBias(line, unit)) {
      return site.line();
    }
    List<Bias> moved = new ArrayList<>();
    for (Bias bias : all) {
      moved.add(
          isAt(bias, unit)
              ? new Bias(
                  bias.place(),
                  neighbour.name(),
                  neighbour instanceof Repeater
                      ? new Setting.Given<>(side, bias.place())
                      : bias.side(),
                  bias.resistors(),
                  bias.supply(),
                  bias.tolerance())
              : bias);
    }
    return new Setting.Given<>(
        new LineSettings(
            line.place(),
            line.baud(),
            line.parity(),
            line.stopBits(),
            line.cable(),
            new Setting.Given<>(List.copyOf(moved), line.bias().place()),
            line.broadcast(),
            line.maximumTemperature()),
        site.line().place());
  }

  /** Whether the line is biased at a unit. */
  static boolean hasBias(LineSettings line, Unit unit) {
    return line.bias().or(List.of()).stream().anyMatch(bias -> isAt(bias, unit));
  }

  private static boolean isAt(Bias bias, Unit unit) {
    String at = bias.at().orNull();
    return at != null && unit.name().is(at);
  }
}
