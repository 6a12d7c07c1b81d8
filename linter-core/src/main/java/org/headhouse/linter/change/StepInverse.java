package org.headhouse.linter.change;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What undoes a step, as long as no later one is begun. A piece of wiring brings its own. */
final class StepInverse {
  private StepInverse() {}

  static @Nullable Step of(Step step) {
    if (step instanceof Step.StopSoftware) {
      return new Step.ResumeSoftware();
    }
    if (step instanceof Step.ResumeSoftware) {
      return new Step.StopSoftware();
    }
    if (step instanceof Step.SwitchOff off) {
      return new Step.SwitchOn(off.unit(), off.address());
    }
    if (step instanceof Step.SetAddress set) {
      return new Step.SetAddress(set.unit(), set.to(), set.from(), set.spare(), of(set.settings()));
    }
    if (step instanceof Step.SetAside aside) {
      return new Step.BringBack(
          aside.unit(),
          aside.from(),
          List.of(
              new ValueChange(
                  "address", String.valueOf(aside.to()), String.valueOf(aside.from()))));
    }
    if (step instanceof Step.BringBack back) {
      return new Step.SetAside(back.unit(), back.address(), back.address(), of(back.settings()));
    }
    if (step instanceof Step.SetUnit set) {
      return new Step.SetUnit(set.unit(), of(set.settings()));
    }
    if (step instanceof Step.SetLine line) {
      return new Step.SetLine(of(line.settings()), line.units());
    }
    return null;
  }

  static List<ValueChange> of(List<ValueChange> settings) {
    return settings.stream().map(StepInverse::of).toList();
  }

  static ValueChange of(ValueChange change) {
    return new ValueChange(change.what(), change.to(), change.from());
  }
}
