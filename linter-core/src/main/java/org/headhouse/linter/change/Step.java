package org.headhouse.linter.change;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A step of the field work. Between two steps the line is whole. */
public sealed interface Step {

  /**
   * A unit that joins is set before it is connected.
   *
   * @param delivered its address as delivered, or null where that is not known
   */
  record Prepare(String unit, @Nullable Integer delivered, int address, List<ValueChange> settings)
      implements Step {
    public Prepare {
      settings = List.copyOf(settings);
    }
  }

  /** A unit that leaves is switched off for good, since its address is wanted. */
  record SwitchOff(String unit, int address) implements Step {}

  /**
   * A unit gets another address, and is restarted.
   *
   * @param spare whether the address is only for the time being
   * @param settings what else is set there at the same visit
   */
  record SetAddress(String unit, int from, int to, boolean spare, List<ValueChange> settings)
      implements Step {
    public SetAddress {
      settings = List.copyOf(settings);
    }
  }

  /** A unit gets another address while it is off the line, since no address is free. */
  record SetAside(String unit, int from, int to) implements Step {}

  /** A unit that was set aside comes back to the line. */
  record BringBack(String unit, int address, List<ValueChange> settings) implements Step {
    public BringBack {
      settings = List.copyOf(settings);
    }
  }

  /** A unit gets other settings than its address. */
  record SetUnit(String unit, List<ValueChange> settings) implements Step {
    public SetUnit {
      settings = List.copyOf(settings);
    }
  }

  /**
   * All units get other settings of the line, in one go.
   *
   * @param units in the order of the work
   */
  record SetLine(List<ValueChange> settings, List<String> units) implements Step {
    public SetLine {
      settings = List.copyOf(settings);
      units = List.copyOf(units);
    }
  }

  /**
   * A piece of wiring, in one go.
   *
   * @param places in the order of the work
   * @param withoutReadings the units that may miss the outdoor readings meanwhile
   */
  record Wire(List<WiringPlace> places, List<String> withoutReadings) implements Step {
    public Wire {
      places = List.copyOf(places);
      withoutReadings = List.copyOf(withoutReadings);
    }
  }
}
