package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.change.FieldAction;
import org.headhouse.linter.change.Step;
import org.headhouse.linter.change.ValueChange;
import org.headhouse.linter.change.WiringPlace;
import org.jspecify.annotations.Nullable;

/** Puts a step of the field work into words: what to do, where, and from what to what. */
final class StepWords {
  private StepWords() {}

  /** The step in sentences. */
  static String of(Step step) {
    if (step instanceof Step.Prepare prepare) {
      return prepare(prepare);
    }
    if (step instanceof Step.StopSoftware) {
      return "Stop the polling and writing of the supervising software, so that it stays stopped"
          + " when its computer restarts.";
    }
    if (step instanceof Step.ResumeSoftware) {
      return "Let the supervising software poll and write again.";
    }
    if (step instanceof Step.SwitchOff off) {
      return "Switch off "
          + ChangeWords.quoted(off.unit())
          + " for good and lock its supply off: another unit has or gets its address "
          + off.address()
          + ".";
    }
    if (step instanceof Step.Separate one) {
      return separate(one);
    }
    if (step instanceof Step.SwitchOn on) {
      return "Switch on " + ChangeWords.quoted(on.unit()) + " again.";
    }
    if (step instanceof Step.SetAddress set) {
      return "At "
          + ChangeWords.quoted(set.unit())
          + " set the address from "
          + set.from()
          + " to "
          + set.to()
          + (set.spare() ? ", a spare one for the time being" : "")
          + also(set.settings())
          + ". Restart the unit.";
    }
    if (step instanceof Step.SetUnit set) {
      return "At "
          + ChangeWords.quoted(set.unit())
          + " set "
          + ChangeWords.set(set.settings())
          + ".";
    }
    if (step instanceof Step.SetLine line) {
      return "At all units set "
          + ChangeWords.set(line.settings())
          + ", in one go, the head unit last: "
          + ChangeWords.quoted(line.units())
          + ". Restart each. Set the software's port and any repeater with a switch for the rate"
          + " alike.";
    }
    return aside(step);
  }

  private static String prepare(Step.Prepare prepare) {
    return "Set "
        + (prepare.instead() ? "the new device for " : "")
        + ChangeWords.quoted(prepare.unit())
        + " before its pair is landed: "
        + address(prepare)
        + also(prepare.settings())
        + ". Restart it, then switch it off. Its address as delivered may be in use on the line.";
  }

  private static String address(Step.Prepare prepare) {
    Integer delivered = prepare.delivered();
    if (delivered != null && delivered == prepare.address()) {
      return "address " + delivered + ", as delivered";
    }
    return "address"
        + (delivered == null ? "" : " from " + delivered + " as delivered")
        + " to "
        + prepare.address();
  }

  private static String separate(Step.Separate one) {
    return "Another device has address "
        + one.from()
        + " too: isolate "
        + ChangeWords.quoted(one.unit())
        + ", take it off the line so that the cable runs on, and restore its supply. Set its address"
        + " from "
        + one.from()
        + " to "
        + one.to()
        + (one.spare() ? ", a spare one for the time being," : "")
        + " there, and restart it. Isolate it again, put it back on the line, and restore its"
        + " supply.";
  }

  private static String aside(Step step) {
    if (step instanceof Step.SetAside aside) {
      return "No address is free: isolate "
          + ChangeWords.quoted(aside.unit())
          + ", take it off the line so that the cable runs on, and set its address from "
          + aside.from()
          + " to "
          + aside.to()
          + " there.";
    }
    if (step instanceof Step.BringBack back) {
      return "Isolate "
          + ChangeWords.quoted(back.unit())
          + " and put it back on the line; it has address "
          + back.address()
          + "."
          + (back.settings().isEmpty()
              ? ""
              : " There set " + ChangeWords.set(back.settings()) + ".");
    }
    return wire((Step.Wire) step);
  }

  private static String wire(Step.Wire wire) {
    List<String> parts = new ArrayList<>();
    settings(wire, true).forEach(one -> parts.add("First, with the supply on, " + one + "."));
    if (!wire.isolated().isEmpty()) {
      parts.add(
          exchanged(wire)
              + "Isolate the supply of "
              + ChangeWords.quoted(wire.isolated())
              + ", lock it off, and work in one go. Then restore the supply.");
    }
    settings(wire, false).forEach(one -> parts.add("Then " + one + "."));
    return String.join(" ", parts);
  }

  /** What takes the place of what: {@code Exchange "Palms": device-type from a to b.} */
  private static String exchanged(Step.Wire wire) {
    StringBuilder text = new StringBuilder();
    for (WiringPlace place : wire.places()) {
      for (FieldAction act : place.actions()) {
        if (act instanceof FieldAction.Exchange exchange) {
          text.append("Exchange ")
              .append(ChangeWords.quoted(place.item()))
              .append(": ")
              .append(ChangeWords.set(exchange.device()))
              .append(". ");
        }
      }
    }
    return text.toString();
  }

  private static List<String> settings(Step.Wire wire, boolean first) {
    List<String> settings = new ArrayList<>();
    for (WiringPlace place : wire.places()) {
      for (FieldAction act : place.actions()) {
        if (act instanceof FieldAction.Set set && set.first() == first) {
          settings.add(
              "at " + ChangeWords.quoted(place.item()) + " set " + ChangeWords.set(set.settings()));
        }
      }
    }
    return settings;
  }

  private static String also(List<ValueChange> settings) {
    return settings.isEmpty() ? "" : "; also " + ChangeWords.set(settings);
  }

  /** What belongs under the step: what is done at each place. */
  static List<String> details(Step step) {
    List<String> details = new ArrayList<>();
    if (step instanceof Step.Wire wire) {
      for (WiringPlace place : wire.places()) {
        List<String> acts =
            place.actions().stream()
                .filter(act -> !(act instanceof FieldAction.Set))
                .map(StepWords::of)
                .toList();
        if (!acts.isEmpty()) {
          details.add(ChangeWords.quoted(place.item()) + ": " + String.join("; ", acts));
        }
      }
    }
    return details;
  }

  private static String of(FieldAction act) {
    if (act instanceof FieldAction.TakeOff off) {
      return "take off the cable " + direction(off.onward()) + ChangeWords.quoted(off.other());
    }
    if (act instanceof FieldAction.Land land) {
      return "land the cable "
          + direction(land.onward())
          + ChangeWords.quoted(land.other())
          + (land.length() == null ? "" : " (" + land.length() + ")");
    }
    if (act instanceof FieldAction.Terminate terminate) {
      return terminate(terminate.termination());
    }
    if (act instanceof FieldAction.Replace replace) {
      return "where the cable "
          + direction(replace.onward())
          + ChangeWords.quoted(replace.other())
          + " is really another, exchange it: "
          + ChangeWords.of(replace.cable());
    }
    if (act instanceof FieldAction.Protect protect) {
      return (protect.fitted() ? "fit a" : "remove the")
          + " surge protector at this end of the run "
          + direction(protect.onward())
          + ChangeWords.quoted(protect.other());
    }
    if (act instanceof FieldAction.Exchange exchange) {
      return "take the old device out and put the new one in, on the same cables"
          + (exchange.address() == null ? "" : "; it has address " + exchange.address());
    }
    if (act instanceof FieldAction.SwitchOn on) {
      return "it comes on the line, with address " + on.address();
    }
    return act instanceof FieldAction.Fit fit ? fit(fit.change()) : "take it out";
  }

  private static String direction(boolean onward) {
    return onward ? "to " : "from ";
  }

  private static String terminate(ValueChange change) {
    String side =
        switch (change.what()) {
          case "termination in" -> " on the side towards the head unit";
          case "termination out" -> " on the far side";
          default -> "";
        };
    if (isNone(change.from())) {
      return "fit a terminator of " + change.to() + side;
    }
    return isNone(change.to())
        ? "remove the terminator of " + change.from() + side
        : "exchange the terminator of " + change.from() + " for " + change.to() + side;
  }

  private static boolean isNone(@Nullable String termination) {
    return termination == null || termination.equals("none");
  }

  private static String fit(ValueChange change) {
    return switch (change.what()) {
      case "weather-station" ->
          change.to() == null ? "take off the weather station" : "wire the weather station to it";
      case "weather-station.readings" ->
          "fit the sensors of the station: " + ChangeWords.of(change);
      case "bias" ->
          change.to() == null
              ? "remove the bias of " + change.from()
              : change.from() == null
                  ? "fit bias: " + change.to()
                  : change.from().equals(change.to())
                      ? "check that it has the bias of " + change.to()
                      : "exchange the bias of " + change.from() + " for " + change.to();
      default -> change.from() == null ? change.what() + " " + change.to() : ChangeWords.of(change);
    };
  }
}
