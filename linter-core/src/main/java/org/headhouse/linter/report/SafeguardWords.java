package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.change.Check;
import org.headhouse.linter.change.PlannedStep;
import org.headhouse.linter.change.PollingChange;
import org.headhouse.linter.change.Step;
import org.headhouse.linter.change.WayBack;

/** Puts into words what keeps a step of the field work from doing harm. */
final class SafeguardWords {
  private SafeguardWords() {}

  /** A sentence with a blank before it, or nothing. */
  static String withoutReadings(PlannedStep step) {
    return step.withoutReadings().isEmpty()
        ? ""
        : " Without readings meanwhile: " + ChangeWords.quoted(step.withoutReadings()) + ".";
  }

  /** What comes before the work. */
  static List<String> first(PlannedStep step) {
    List<String> first = new ArrayList<>();
    if (!step.ventsStill().isEmpty()) {
      first.add(
          "Before: shut the vents of "
              + ChangeWords.quoted(step.ventsStill())
              + "; nothing moves them while the supply is off");
    }
    if (!step.pollingFirst().isEmpty()) {
      first.add("Before: " + String.join("; ", polling(step.pollingFirst())));
    }
    return first;
  }

  /** What comes after the work: checks, then what depends on them, and the way back. */
  static List<String> last(PlannedStep step) {
    List<String> last = new ArrayList<>();
    if (!step.checks().isEmpty()) {
      last.add(
          "Check: " + String.join("; ", step.checks().stream().map(SafeguardWords::of).toList()));
    }
    if (!step.pollingLast().isEmpty()) {
      last.add("After the check: " + String.join("; ", polling(step.pollingLast())));
    }
    last.add("Way back: " + wayBack(step));
    return last;
  }

  static List<String> polling(List<PollingChange> changes) {
    return changes.stream().map(SafeguardWords::of).toList();
  }

  private static String of(PollingChange change) {
    boolean isHead = change.client() == PollingChange.Client.HEAD;
    String what = (isHead || !change.isUnit() ? "" : "zone ") + ChangeWords.quoted(change.name());
    return (isHead ? "at the head unit " : "in the software ")
        + switch (change.kind()) {
          case DELETE -> "delete " + what + " (address " + change.from() + ")";
          case PAUSE ->
              "switch off "
                  + what
                  + (change.from() == null
                      ? ", which is no unit in the file"
                      : " (address " + change.from() + ")");
          case ADD -> "add " + what + " at address " + change.to();
          case MOVE ->
              change.from() == null
                  ? "switch on " + what + (change.to() == null ? "" : " at address " + change.to())
                  : "move " + what + " from address " + change.from() + " to " + change.to();
          case RENAME ->
              "rename zone \"" + change.was() + "\" to " + ChangeWords.quoted(change.name());
        };
  }

  static String of(Check check) {
    String at = ChangeWords.quoted(check.at());
    String display = check.at().size() == 1 ? "the display of " : "the displays of ";
    return switch (check.kind()) {
      case SILENT_SOFTWARE -> "no zone gets a new value, and the software sends nothing";
      case ZONES_LIVE -> "each zone shows the name and the values of its own unit";
      case RESTARTED ->
          display + at + " went dark, came back, and shows address " + check.address();
      case SETTINGS_SHOWN ->
          display + at + (check.at().size() == 1 ? " shows" : " show") + " what was set";
      case DARK -> display + at + " is dark";
      case NAME_READ_BACK ->
          "asked once by hand at address " + check.address() + ", " + at + " gives its name";
      case ANSWERS ->
          "asked once by hand at address "
              + check.address()
              + ", "
              + at
              + " gives values of its own";
      case NO_ANSWER -> "asked once by hand, nothing answers at address " + check.address();
      case READINGS_SHOWN ->
          display
              + at
              + (check.at().size() == 1 ? " shows" : " show")
              + " the outdoor readings of the head unit";
      case PAIR_RESISTANCE ->
          "the resistance of the pair at "
              + at
              + side(check)
              + " is in the range of the sheet, measured with all these supplies locked off and"
              + " proved dead, before they are restored";
      case IDLE_VOLTAGE ->
          "the idle voltage at " + at + side(check) + " is in the range of the sheet";
    };
  }

  private static String side(Check check) {
    return check.side() == null ? "" : ", side " + check.side().word() + ",";
  }

  /** What undoes a step, without a full stop. */
  static String wayBack(PlannedStep step) {
    WayBack back = step.wayBack();
    List<String> parts = new ArrayList<>(polling(back.first()));
    parts.add(back.step() == null ? "leave it off the line" : undo(back.step()));
    parts.addAll(polling(back.last()));
    return String.join("; ", parts);
  }

  private static String undo(Step step) {
    if (step instanceof Step.Wire) {
      return "isolate the same supplies and undo it from the last line to the first; what was taken"
          + " out goes back in its place";
    }
    if (step instanceof Step.SetAside aside) {
      return "isolate "
          + ChangeWords.quoted(aside.unit())
          + " and take it off the line again, so that the cable runs on";
    }
    if (step instanceof Step.BringBack back) {
      return "set the address of "
          + ChangeWords.quoted(back.unit())
          + " to "
          + back.address()
          + " again and put it back on the line";
    }
    if (step instanceof Step.SetLine line) {
      return "at each set " + ChangeWords.set(line.settings()) + ", the head unit last";
    }
    if (step instanceof Step.SetAddress set) {
      return "set the address of "
          + ChangeWords.quoted(set.unit())
          + " to "
          + set.to()
          + (set.settings().isEmpty() ? "" : "; also " + ChangeWords.set(set.settings()))
          + ", and restart it";
    }
    String text = StepWords.of(step);
    return Character.toLowerCase(text.charAt(0)) + text.substring(1, text.length() - 1);
  }
}
