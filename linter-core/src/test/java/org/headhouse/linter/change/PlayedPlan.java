package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Plays a plan on a line, step by step, as people with a printout would, and looks at the line
 * after every single thing that is done.
 */
final class PlayedPlan {

  /** What goes wrong meanwhile. */
  enum Trouble {
    NONE,
    /** The software is started by its computer before and after each step, stopped or not. */
    SOFTWARE_RESTARTS,
    /** The supply fails between each two steps. */
    POWER_FAILS,
    /** After each setting of an address somebody forgets the restart at first. */
    FORGOTTEN_RESTART
  }

  private final LiveLine line;
  private final LivePolling software;
  private final LivePolling head;
  private final Trouble trouble;
  private final Set<String> opened = new HashSet<>();
  private int addressesSet;
  private int measured;
  private @Nullable PlannedStep at;
  private Set<String> counted = Set.of();

  PlayedPlan(LiveLine line, LivePolling software, LivePolling head, Trouble trouble) {
    this.line = line;
    this.software = software;
    this.head = head;
    this.trouble = trouble;
  }

  int addressesSet() {
    return addressesSet;
  }

  /** How often the resistance of the pair was measured. */
  int measured() {
    return measured;
  }

  void play(List<PlannedStep> steps) {
    for (PlannedStep step : steps) {
      play(step);
    }
  }

  /** Plays as many steps, and then undoes them all: after each the line is as it was. */
  void playAndUndo(List<PlannedStep> steps) {
    List<String> states = new ArrayList<>();
    List<Set<String>> answering = new ArrayList<>();
    for (PlannedStep step : steps) {
      states.add(state());
      answering.add(line.answering().keySet());
      play(step);
    }
    opened.clear();
    for (int i = steps.size() - 1; i >= 0; i--) {
      undo(steps.get(i), answering.get(i));
      assertThat(state()).as("undone %s", steps.get(i)).isEqualTo(states.get(i));
    }
  }

  private String state() {
    return line.state() + software.addresses() + head.addresses() + software.running;
  }

  private void play(PlannedStep planned) {
    at = planned;
    counted = counted(planned);
    planned.pollingFirst().forEach(this::apply);
    look();
    work(planned.work());
    assertThat(planned.checks()).as("checks of %s", planned.work()).isNotEmpty();
    for (Check check : planned.checks()) {
      assertThat(isSeen(check)).as("%s after %s", check, planned.work()).isTrue();
    }
    planned.pollingLast().forEach(this::apply);
    finish();
  }

  /** What came with the step goes again. */
  private void undo(PlannedStep planned, Set<String> before) {
    at = planned;
    counted = counted(planned);
    counted.retainAll(before);
    WayBack back = planned.wayBack();
    back.first().forEach(this::apply);
    look();
    if (back.step() != null) {
      work(back.step());
    }
    back.last().forEach(this::apply);
    finish();
  }

  /** Between two steps the line is whole, and the supply may fail. */
  private void finish() {
    line.assertWhole();
    line.settle();
    look();
    if (trouble == Trouble.POWER_FAILS) {
      line.devices.values().forEach(LiveDevice::powerOff);
      line.devices.values().stream().filter(one -> !one.lockedOff).forEach(LiveDevice::powerOn);
      line.assertSafe();
      software.poll(line, false);
    }
  }

  private void apply(PollingChange change) {
    software.apply(change, line);
    head.apply(change, line);
    look();
  }

  /** The units with vents that answer now, and those set aside. */
  private Set<String> counted(PlannedStep planned) {
    Set<String> names = new HashSet<>(line.answering().keySet());
    names.removeIf(
        name ->
            line.device(name).kind != LiveItem.Kind.UNIT
                || !line.device(name).vents
                || isTakenOut(name, planned));
    return names;
  }

  private static boolean isTakenOut(String name, PlannedStep planned) {
    return isTakenOut(name, planned.work())
        || (planned.wayBack().step() != null && isTakenOut(name, planned.wayBack().step()));
  }

  private static boolean isTakenOut(String name, Step step) {
    return step instanceof Step.SwitchOff off
        ? off.unit().equals(name)
        : step instanceof Step.Wire wire
            && wire.places().stream()
                .filter(place -> place.item().equals(name))
                .flatMap(place -> place.actions().stream())
                .anyMatch(PlayedPlan::takesOut);
  }

  private static boolean takesOut(FieldAction act) {
    return act instanceof FieldAction.TakeOut
        || (act instanceof FieldAction.Fit fit && "absent".equals(fit.change().to()));
  }

  private void look() {
    line.assertSafe();
    head.poll(line, false);
    if (trouble == Trouble.SOFTWARE_RESTARTS) {
      software.poll(line, false);
    } else if (software.running) {
      software.poll(line, true);
    }
    if (at != null) {
      Set<String> receiving = line.receiving();
      for (String name : counted) {
        boolean heads = line.isOn(name) && line.device(name).head && line.device(name).powered;
        if (!receiving.contains(name) && !heads) {
          assertThat(at.withoutReadings()).as("without readings in %s", at.work()).contains(name);
        }
      }
    }
  }

  private void work(Step step) {
    if (step instanceof Step.StopSoftware) {
      software.running = false;
    } else if (step instanceof Step.ResumeSoftware) {
      software.resume(line);
    } else if (step instanceof Step.Prepare prepare) {
      line.prepare(prepare);
    } else if (step instanceof Step.SwitchOff off) {
      LiveDevice device = line.device(off.unit());
      assertThat(device.active).isEqualTo(off.address());
      stopped(off.unit());
      device.powerOff();
      device.lockedOff = true;
    } else if (step instanceof Step.Separate one) {
      separate(one);
    } else if (step instanceof Step.SwitchOn on) {
      line.device(on.unit()).lockedOff = false;
      line.device(on.unit()).powerOn();
    } else if (step instanceof Step.SetAddress set) {
      address(set);
    } else if (step instanceof Step.SetAside aside) {
      LiveDevice device = line.device(aside.unit());
      stopped(aside.unit());
      device.powerOff();
      look();
      device.attached = false;
      device.lockedOff = true;
      device.set(aside.to());
    } else if (step instanceof Step.BringBack back) {
      LiveDevice device = line.device(back.unit());
      for (ValueChange change : back.settings()) {
        if (change.what().equals("address")) {
          device.set(back.address());
        }
      }
      assertThat(device.stored).isEqualTo(back.address());
      device.attached = true;
      device.lockedOff = false;
      device.powerOn();
    } else if (step instanceof Step.SetLine set) {
      for (String unit : set.units()) {
        set.settings()
            .forEach(one -> line.device(unit).serial.put(one.what(), String.valueOf(one.to())));
        line.device(unit).powerOff();
        look();
        line.device(unit).powerOn();
        look();
      }
    } else if (step instanceof Step.Wire wire) {
      wire(wire);
    }
    look();
  }

  private void separate(Step.Separate one) {
    LiveDevice device = line.device(one.unit());
    assertThat(device.active).isEqualTo(one.from()).isNotEqualTo(one.to());
    stopped(one.unit());
    device.powerOff();
    look();
    device.attached = false;
    device.powerOn();
    look();
    device.set(one.to());
    device.powerOff();
    look();
    device.attached = true;
    device.powerOn();
  }

  private void address(Step.SetAddress set) {
    addressesSet++;
    LiveDevice device = line.device(set.unit());
    assertThat(device.active).isEqualTo(set.from()).isNotEqualTo(set.to());
    device.set(set.to());
    look();
    if (trouble == Trouble.FORGOTTEN_RESTART && at != null) {
      assertThat(at.checks().stream().allMatch(this::isSeen))
          .as("the checks find that %s was not restarted", set.unit())
          .isFalse();
    }
    device.powerOff();
    look();
    device.powerOn();
  }

  private void wire(Step.Wire wire) {
    settings(wire, true);
    for (String name : wire.isolated()) {
      if (line.isOn(name)) {
        stopped(name);
        line.device(name).powerOff();
        line.device(name).open = true;
        look();
      }
    }
    for (WiringPlace place : wire.places()) {
      for (FieldAction act : place.actions()) {
        if (!(act instanceof FieldAction.Set)) {
          assertThat(wire.isolated()).contains(place.item());
          assertThat(opened.contains(place.item())).as("%s opened again", place.item()).isFalse();
          line.act(place.item(), act);
          look();
        }
      }
    }
    wire.places().stream()
        .filter(
            place -> place.actions().stream().anyMatch(act -> !(act instanceof FieldAction.Set)))
        .forEach(place -> opened.add(place.item()));
    measure(wire);
    for (String name : wire.isolated()) {
      if (line.isOn(name)) {
        line.device(name).open = false;
        if (!line.device(name).lockedOff) {
          line.device(name).powerOn();
        }
        look();
      }
    }
    settings(wire, false);
  }

  /** A meter for resistance is held to a pair that no supply feeds. */
  private void measure(Step.Wire wire) {
    if (at == null || at.work() != wire) {
      return;
    }
    for (Check check : at.checks()) {
      if (check.kind() == Check.Kind.PAIR_RESISTANCE) {
        measured++;
        assertThat(wire.isolated())
            .as("isolated for %s in %s", check, wire)
            .containsAll(line.segment(check.at().get(0), check.side()));
      }
    }
  }

  private void settings(Step.Wire wire, boolean first) {
    for (WiringPlace place : wire.places()) {
      for (FieldAction act : place.actions()) {
        if (act instanceof FieldAction.Set set && set.first() == first) {
          for (ValueChange change : set.settings()) {
            if (change.what().equals("role")) {
              line.device(place.item()).head = "head".equals(change.to());
              look();
            }
          }
        }
      }
    }
  }

  /** Nothing moves the vents of a unit whose supply is off: the step says so. */
  private void stopped(String name) {
    if (at != null && counted.contains(name)) {
      assertThat(at.ventsStill()).as("vents in %s", at.work()).contains(name);
    }
  }

  private boolean isSeen(Check check) {
    Integer address = check.address();
    return switch (check.kind()) {
      case SILENT_SOFTWARE -> !software.running;
      case ZONES_LIVE -> software.running;
      case DARK -> !line.device(check.at().get(0)).powered;
      case NO_ANSWER -> address != null && line.at(address) == null;
      case NAME_READ_BACK, ANSWERS -> address != null && check.at().get(0).equals(line.at(address));
      case RESTARTED -> isRestarted(check);
      case READINGS_SHOWN ->
          check.at().stream()
              .allMatch(name -> line.receiving().contains(name) || line.device(name).head);
      case SETTINGS_SHOWN, PAIR_RESISTANCE, IDLE_VOLTAGE -> true;
    };
  }

  private boolean isRestarted(Check check) {
    Step step = at == null ? null : at.work();
    if (step instanceof Step.Prepare) {
      return true;
    }
    LiveDevice device = line.device(check.at().get(0));
    return device.restarted && Objects.equals(device.active, check.address());
  }
}
