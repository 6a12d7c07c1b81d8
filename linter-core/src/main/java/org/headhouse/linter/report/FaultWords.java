package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.headhouse.linter.diagnosis.NamedFault;
import org.headhouse.linter.diagnosis.NextMeasurement;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** Faults and measurements as people say them. */
@Internal
public final class FaultWords {
  /** More names than anybody reads. */
  private static final int MOST_PLACES = 12;

  private FaultWords() {}

  /** {@code the terminator at "Hardening Bay" is missing}. */
  public static String of(NamedFault fault) {
    String at = at(fault);
    String conductors = String.join(" and ", fault.conductors());
    return switch (fault.fault()) {
      case "terminator-missing" -> "the terminator " + at + " is missing";
      case "terminator-extra" -> "there is an extra terminator " + at;
      case "terminator-value" -> "the terminator " + at + " has the wrong value";
      case "conductor-open" -> conductors + " " + open(fault) + " open " + at;
      case "pair-shorted" -> "the pair is shorted " + at;
      case "conductors-swapped" -> "the conductors are swapped " + at;
      case "bias-missing" -> "the bias " + at + " is missing";
      case "bias-half" -> "the bias resistor of " + conductors + " " + at + " is open";
      case "bias-extra" -> "there is extra bias " + at;
      case "bias-reversed" -> "the bias " + at + " is reversed";
      case "unit-unpowered" -> "there is no power " + at;
      case "common-open" -> "the common is open " + at;
      default -> fault.fault() + " " + at;
    };
  }

  /** The same of several, those of one kind in one line: {@code … at "A", "B" or "C"}. */
  public static List<String> merged(List<NamedFault> faults) {
    Map<String, List<NamedFault>> alike = new LinkedHashMap<>();
    for (NamedFault fault : faults) {
      boolean hop = fault.at().size() > 1;
      String key = fault.fault() + (hop ? " in " + fault.at() : " " + fault.conductors());
      alike.computeIfAbsent(key, any -> new ArrayList<>()).add(fault);
    }
    return alike.values().stream().map(FaultWords::together).toList();
  }

  /** {@code D1 or D0 or both}, or fewer of these. */
  private static String conductors(List<NamedFault> alike) {
    List<String> single =
        alike.stream()
            .filter(fault -> fault.conductors().size() == 1)
            .map(fault -> fault.conductors().get(0))
            .toList();
    return single.size() == 2 && alike.size() == 3
        ? String.join(" or ", single) + " or both"
        : alike.stream()
            .map(fault -> String.join(" and ", fault.conductors()))
            .collect(Collectors.joining(", or "));
  }

  private static String together(List<NamedFault> alike) {
    NamedFault first = alike.get(0);
    if (alike.size() == 1) {
      return of(first);
    }
    if (first.at().size() > 1) {
      return conductors(alike) + " are open " + at(first);
    }
    if (alike.size() > MOST_PLACES) {
      NamedFault last = alike.get(alike.size() - 1);
      return of(first)
          .replace(
              at(first),
              "at one of "
                  + alike.size()
                  + " items from "
                  + quoted(first.at().get(0))
                  + " to "
                  + quoted(last.at().get(0)));
    }
    String places =
        alike.stream()
            .map(fault -> quoted(fault.at().get(0)) + side(fault.side()))
            .collect(Collectors.joining(" or "));
    return of(first).replace(at(first), "at " + places);
  }

  private static String open(NamedFault fault) {
    return fault.conductors().size() > 1 ? "are" : "is";
  }

  private static String at(NamedFault fault) {
    String names = fault.at().stream().map(FaultWords::quoted).collect(Collectors.joining(" and "));
    return (fault.at().size() > 1 ? "between " : "at ") + names + side(fault.side());
  }

  private static String quoted(String name) {
    return "\"" + name + "\"";
  }

  private static String side(@Nullable Side side) {
    return side == null ? "" : ", side " + side.word();
  }

  /** {@code the pair resistance at "Mist House", the chain opened there, toward its end}. */
  public static String of(NextMeasurement next) {
    String what =
        switch (next.reading()) {
          case "pair-resistance" -> "the pair resistance";
          case "loop-resistance" -> "the loop resistance with the far end shorted";
          case "idle-voltage" -> "the idle voltage";
          case "d1-voltage" -> "D1 against common";
          case "d0-voltage" -> "D0 against common";
          default -> next.reading();
        };
    String opened =
        next.toward() == null ? "" : ", the chain opened there, toward the " + next.toward().word();
    return what + " at " + quoted(next.at()) + side(next.side()) + opened;
  }
}
