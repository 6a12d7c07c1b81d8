package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.change.Check.Kind;
import org.headhouse.linter.change.PollingChange.Client;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.site.Unit;

/**
 * What has to be seen before the next step begins, so that what was forgotten or set wrong is found
 * while the step before can still be undone: common practice, no source.
 */
final class StepChecks {
  private final boolean hasSoftware;
  private final ReadingsMissed missed;

  StepChecks(boolean hasSoftware, ReadingsMissed missed) {
    this.hasSoftware = hasSoftware;
    this.missed = missed;
  }

  /**
   * @param due what is measured in the course of the step
   */
  List<Check> of(Phase phase, Clients.Changes polling, List<Proof> due) {
    List<Check> checks = new ArrayList<>();
    // First, while the supplies are off.
    measured(due, Proof.Kind.PAIR_RESISTANCE, Kind.PAIR_RESISTANCE, checks);
    atTheDevice(phase, checks);
    boolean asks =
        (hasSoftware && phase.places().stream().anyMatch(item -> isExchanged(item, phase)))
            || polling.last().stream().anyMatch(one -> one.client() == Client.SOFTWARE)
            || polling.first().stream().anyMatch(one -> one.client() == Client.SOFTWARE);
    if (asks) {
      readBack(phase, checks);
      if (phase.step() instanceof Step.Separate one) {
        freed(phase, one.from(), checks);
      }
    }
    readings(phase, checks);
    measured(due, Proof.Kind.IDLE_VOLTAGE, Kind.IDLE_VOLTAGE, checks);
    return checks;
  }

  private static void measured(List<Proof> due, Proof.Kind proven, Kind kind, List<Check> checks) {
    for (Proof proof : due) {
      if (proof.kind() == proven) {
        checks.add(new Check(kind, List.of(proof.at()), null, proof.side()));
      }
    }
  }

  private static void atTheDevice(Phase phase, List<Check> checks) {
    Step step = phase.step();
    if (step instanceof Step.StopSoftware) {
      checks.add(Check.of(Kind.SILENT_SOFTWARE, List.of()));
    } else if (step instanceof Step.ResumeSoftware) {
      checks.add(Check.of(Kind.ZONES_LIVE, List.of()));
    } else if (step instanceof Step.Prepare prepare) {
      checks.add(Check.of(Kind.RESTARTED, prepare.unit(), prepare.address()));
      checks.add(Check.of(Kind.SETTINGS_SHOWN, List.of(prepare.unit())));
    } else if (step instanceof Step.SwitchOff off) {
      checks.add(Check.of(Kind.DARK, List.of(off.unit())));
    } else if (step instanceof Step.SetAddress set) {
      checks.add(Check.of(Kind.RESTARTED, set.unit(), set.to()));
      settingsShown(set.unit(), set.settings(), checks);
    } else if (step instanceof Step.Separate one) {
      checks.add(Check.of(Kind.RESTARTED, one.unit(), one.to()));
    } else if (step instanceof Step.SetUnit set) {
      settingsShown(set.unit(), set.settings(), checks);
    } else if (step instanceof Step.SetLine line) {
      checks.add(Check.of(Kind.SETTINGS_SHOWN, line.units()));
    } else if (step instanceof Step.BringBack back) {
      checks.add(Check.of(Kind.RESTARTED, back.unit(), back.address()));
      settingsShown(back.unit(), back.settings(), checks);
    } else if (step instanceof Step.Wire wire) {
      joined(phase, wire, checks);
    }
  }

  private static void settingsShown(String unit, List<ValueChange> settings, List<Check> checks) {
    if (!settings.isEmpty()) {
      checks.add(Check.of(Kind.SETTINGS_SHOWN, List.of(unit)));
    }
  }

  private static void joined(Phase phase, Step.Wire wire, List<Check> checks) {
    for (TrackedItem item : phase.places()) {
      Integer address = phase.after().answering().get(item);
      if (item.joins() && address != null && !phase.before().wired().contains(item)) {
        checks.add(Check.of(Kind.RESTARTED, item.name(), address));
      }
    }
    for (WiringPlace place : wire.places()) {
      if (place.actions().stream().anyMatch(FieldAction.Set.class::isInstance)) {
        checks.add(Check.of(Kind.SETTINGS_SHOWN, List.of(place.item())));
      }
    }
  }

  /** By hand, while the software is stopped. */
  private static void readBack(Phase phase, List<Check> checks) {
    for (TrackedItem item : phase.places()) {
      Integer from = phase.before().answering().get(item);
      Integer to = phase.after().answering().get(item);
      if (to != null && (!to.equals(from) || isExchanged(item, phase))) {
        checks.add(asked(item, to));
      }
      if (from != null && !phase.after().answering().containsValue(from)) {
        checks.add(new Check(Kind.NO_ANSWER, List.of(), from, null));
      }
    }
  }

  /** Only a unit has a name that can be read. */
  private static Check asked(TrackedItem item, int address) {
    boolean isUnit = item.latest() instanceof Unit;
    return Check.of(isUnit ? Kind.NAME_READ_BACK : Kind.ANSWERS, item.name(), address);
  }

  /** Where one of two that shared an address is left, it answers there alone. */
  private static void freed(Phase phase, int address, List<Check> checks) {
    List<TrackedItem> left = new ArrayList<>();
    phase
        .after()
        .answering()
        .forEach(
            (item, at) -> {
              if (at == address) {
                left.add(item);
              }
            });
    if (left.size() == 1) {
      checks.add(asked(left.get(0), address));
    }
  }

  private static boolean isExchanged(TrackedItem item, Phase phase) {
    return item.isExchanged()
        && phase.step() instanceof Step.Wire
        && !phase.before().wired().contains(item)
        && phase.after().wired().contains(item);
  }

  /** All that missed the readings, and all that came. */
  private void readings(Phase phase, List<Check> checks) {
    if (missed.noneAfter(phase)) {
      return;
    }
    List<String> shown = new ArrayList<>();
    for (TrackedItem unit : missed.during(phase)) {
      if (phase.after().answering().containsKey(unit) && !phase.after().isHead(unit)) {
        shown.add(unit.name());
      }
    }
    for (TrackedItem item : phase.places()) {
      if (item.unitAfter() != null
          && !phase.before().answering().containsKey(item)
          && phase.after().answering().containsKey(item)
          && !phase.after().isHead(item)
          && !shown.contains(item.name())) {
        shown.add(item.name());
      }
    }
    if (!shown.isEmpty()) {
      checks.add(Check.of(Kind.READINGS_SHOWN, shown));
    }
  }
}
