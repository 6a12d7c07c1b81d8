package org.headhouse.linter.change;

import java.util.List;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** What is done in one go. Between two steps the line is whole. */
public sealed interface Step {

  /** Supervising software neither polls nor writes from now on. */
  record StopSoftware() implements Step {}

  /** Supervising software goes on. */
  record ResumeSoftware() implements Step {}

  /**
   * A device that joins is set before it is connected.
   *
   * @param delivered its address as delivered, or null where that is not known
   * @param instead whether it takes the place of one that has its name
   */
  record Prepare(
      String unit,
      @Nullable Integer delivered,
      int address,
      boolean instead,
      List<ValueChange> settings)
      implements Step {
    @Internal
    public Prepare {
      settings = List.copyOf(settings);
    }
  }

  /**
   * A device that shares its address with another gets another one while it is off the pair.
   *
   * @param spare whether the address is only for the time being
   */
  record Separate(String unit, int from, int to, boolean spare) implements Step {}

  /** A device that leaves is switched off for good, since its address is wanted. */
  record SwitchOff(String unit, int address) implements Step {}

  /** A device that was switched off is switched on again. */
  record SwitchOn(String unit, int address) implements Step {}

  /**
   * A unit gets another address, and is restarted.
   *
   * @param spare whether the address is only for the time being
   * @param settings what else is set there at the same visit
   */
  record SetAddress(String unit, int from, int to, boolean spare, List<ValueChange> settings)
      implements Step {
    @Internal
    public SetAddress {
      settings = List.copyOf(settings);
    }
  }

  /** A unit gets another address while it is off the line, since no address is free. */
  record SetAside(String unit, int from, int to, List<ValueChange> settings) implements Step {
    public SetAside {
      settings = List.copyOf(settings);
    }
  }

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
   * All devices get other settings of the line, in one go.
   *
   * @param units in the order of the work: the head unit last
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
   * @param isolated the items whose supply is off meanwhile: those that are opened, and all of a
   *     segment that is measured
   */
  record Wire(List<WiringPlace> places, List<String> isolated) implements Step {
    public Wire {
      places = List.copyOf(places);
      isolated = List.copyOf(isolated);
    }
  }
}
