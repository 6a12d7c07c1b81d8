package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.headhouse.linter.line.BroadcastLoad;
import org.headhouse.linter.line.PollLoad;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.TimeoutNeed;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Converter;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.Polled;
import org.headhouse.linter.site.PolledBy;
import org.headhouse.linter.site.Polling;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Reads the polls over the line from a site: those of the zones by supervision, and those of the
 * equipment by supervision or the head unit. Where something is not understood, there are none to
 * be had at all.
 */
final class SitePolls {
  private final Site site;
  private final @Nullable Supervision supervision;
  private final TransactionTimes times;

  SitePolls(Site site, TransactionTimes times) {
    this.site = site;
    this.supervision = site.supervision().orNull();
    this.times = times;
  }

  /** How an answer is waited for. */
  private record Waiting(double timeoutSeconds, int retries) {
    /** What the schema documents; common practice for a head unit, whose times no file gives. */
    static final Waiting USUAL =
        new Waiting(PollLoad.USUAL_TIMEOUT_SECONDS, PollLoad.USUAL_RETRIES);
  }

  /**
   * Supervision's polls of its zones, one load for each processing time; empty where there are none
   * or where they go over Ethernet.
   *
   * @return null where they are not understood
   */
  @Nullable List<PollLoad> zones() {
    if (site.supervision().isFaulty()) {
      return null;
    }
    if (supervision == null || supervision.link().is(Link.ETHERNET)) {
      return List.of();
    }
    if (supervision.link().isFaulty() || supervision.polling().isFaulty()) {
      return null;
    }
    Polling polling = supervision.polling().orNull();
    return polling == null ? List.of() : zones(supervision, polling);
  }

  private @Nullable List<PollLoad> zones(Supervision software, Polling polling) {
    Integer registers = polling.registers().orNull();
    Double period = SiteTraffic.seconds(polling.every());
    Waiting waiting = waitingOfSupervision();
    Double latency = latencySeconds();
    List<Setting<String>> names = software.zones().or(List.of());
    if (registers == null
        || period == null
        || waiting == null
        || latency == null
        || names.isEmpty()) {
      return null;
    }
    Map<String, Unit> units = unitsByName();
    Map<Double, Integer> zonesByProcessing = new TreeMap<>();
    for (Setting<String> name : names) {
      Unit unit = units.get(name.or(""));
      zonesByProcessing.merge(times.processingSeconds(unit), 1, Integer::sum);
    }
    List<PollLoad> loads = new ArrayList<>();
    zonesByProcessing.forEach(
        (processing, zones) ->
            loads.add(
                new PollLoad(
                    registers,
                    zones,
                    period,
                    processing + latency,
                    waiting.timeoutSeconds(),
                    waiting.retries())));
    return loads;
  }

  private Map<String, Unit> unitsByName() {
    Map<String, Unit> units = new HashMap<>();
    site.units().forEach(unit -> unit.name().optional().ifPresent(it -> units.put(it, unit)));
    return units;
  }

  /**
   * The polls of the equipment, one load for each in the order of the chain.
   *
   * @return null where some are not understood
   */
  @Nullable List<PollLoad> equipment() {
    List<PollLoad> loads = new ArrayList<>();
    for (Equipment equipment : polledEquipment(site)) {
      Polled polled = equipment.polled().orNull();
      PollLoad load = polled == null ? null : load(equipment, polled);
      if (load == null) {
        return null;
      }
      loads.add(load);
    }
    return loads;
  }

  /** The equipment that is asked, in the order of the chain. */
  static List<Equipment> polledEquipment(Site site) {
    List<Equipment> polled = new ArrayList<>();
    for (ChainItem item : site.items()) {
      if (item instanceof Equipment equipment && !equipment.polled().isMissing()) {
        polled.add(equipment);
      }
    }
    return polled;
  }

  /** On the pair, whatever the link: there is no other way to the equipment. */
  private @Nullable PollLoad load(Equipment equipment, Polled polled) {
    Integer registers = polled.registers().orNull();
    Double period = SiteTraffic.seconds(polled.every());
    PolledBy by = polled.by().orNull();
    Waiting waiting = by == PolledBy.HEAD ? Waiting.USUAL : waitingOfSupervision();
    Double latency = by == PolledBy.HEAD ? Double.valueOf(0) : latencySeconds();
    return registers == null || period == null || by == null || waiting == null || latency == null
        ? null
        : new PollLoad(
            registers,
            1,
            period,
            times.processingSeconds(equipment) + latency,
            waiting.timeoutSeconds(),
            waiting.retries());
  }

  /** Null where what is written is not understood. */
  private @Nullable Waiting waitingOfSupervision() {
    Setting<Polling> setting =
        supervision == null
            ? new Setting.Missing<>(site.supervision().place())
            : supervision.polling();
    if (setting.isMissing() && !site.supervision().isFaulty()) {
      return Waiting.USUAL;
    }
    Polling polling = setting.orNull();
    if (polling == null) {
      return null;
    }
    Double timeout =
        polling.timeout().isMissing()
            ? Double.valueOf(Waiting.USUAL.timeoutSeconds())
            : SiteTraffic.seconds(polling.timeout());
    Integer retries =
        polling.retries().isMissing()
            ? Integer.valueOf(Waiting.USUAL.retries())
            : polling.retries().orNull();
    return timeout == null || retries == null ? null : new Waiting(timeout, retries);
  }

  /**
   * What the converter adds to each answer that supervision gets: of the one that it is attached
   * by, or the most of any where the file does not say which; nothing by way of the head unit.
   *
   * @return null where it is not understood
   */
  private @Nullable Double latencySeconds() {
    double most = 0;
    if (supervision != null && !supervision.link().is(Link.SERIAL)) {
      return most;
    }
    String at = supervision == null ? null : supervision.at().orNull();
    for (ChainItem item : site.items()) {
      if (item instanceof Converter converter
          && (at == null || Objects.equals(at, converter.name().orNull()))) {
        if (converter.latency().isFaulty()) {
          return null;
        }
        Double latency = SiteTraffic.seconds(converter.latency());
        most = Math.max(most, latency == null ? 0 : latency);
      }
    }
    return most;
  }

  /**
   * How long supervision has to wait for an answer at least, of all that it asks over the line.
   *
   * @param traffic that on the line
   * @return null where it asks nothing over the line, or where that is not understood
   */
  @Nullable TimeoutNeed timeoutNeed(Traffic traffic) {
    Polling polling = supervision == null ? null : supervision.polling().orNull();
    Integer registers = polling == null ? null : polling.registers().orNull();
    Double latency = latencySeconds();
    if (supervision == null
        || registers == null
        || latency == null
        || !supervision.link().isGiven()
        || supervision.link().is(Link.ETHERNET)) {
      return null;
    }
    double other = supervision.link().is(Link.THROUGH_HEAD) ? headSeconds(traffic) : 0;
    Map<String, Unit> units = unitsByName();
    double processing = 0;
    for (Setting<String> zone : supervision.zones().or(List.of())) {
      processing = Math.max(processing, times.processingSeconds(units.get(zone.or(""))));
    }
    TimeoutNeed most = TimeoutNeed.of(traffic.serial(), registers, processing, latency, other);
    for (Equipment equipment : polledEquipment(site)) {
      Polled polled = equipment.polled().orNull();
      Integer asked = polled == null ? null : polled.registers().orNull();
      if (polled != null && asked != null && polled.by().is(PolledBy.SUPERVISION)) {
        TimeoutNeed need =
            TimeoutNeed.of(
                traffic.serial(), asked, times.processingSeconds(equipment), latency, other);
        most = need.totalSeconds() > most.totalSeconds() ? need : most;
      }
    }
    return most;
  }

  /** The longest that the head unit holds the line for a matter of its own, all answering. */
  private static double headSeconds(Traffic traffic) {
    BroadcastLoad broadcast = traffic.broadcast();
    return Math.max(
        broadcast == null ? 0 : broadcast.seconds(traffic.serial()),
        ReadingAge.longestSeconds(traffic.serial(), traffic.equipmentPolls(), false));
  }
}
