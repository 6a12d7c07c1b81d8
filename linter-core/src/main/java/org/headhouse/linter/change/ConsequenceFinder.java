package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.ProofWords;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SuppressionEntry;

/** Names what a change touches that is not on the line. */
final class ConsequenceFinder {
  private ConsequenceFinder() {}

  /**
   * @param isPlanned whether there is a plan, whose steps say what becomes of each zone and when
   */
  static List<Consequence> of(
      Site before, Site after, List<Difference> differences, boolean isPlanned) {
    List<Consequence> found = new ArrayList<>();
    if (!isPlanned) {
      // A zone that moves or a label that changes alone leads to the wrong house.
      return found;
    }
    software(before, after, found);
    SoftwareChanges.of(before, after, differences)
        .forEach(text -> found.add(new Consequence(Consequence.Kind.SUPERVISION, text)));
    exchanged(before, differences, found);
    if (before.wasCommissioned() && ReprovingCheck.isDue(differences)) {
      found.add(new Consequence(Consequence.Kind.RECORD, proving(after, differences)));
    }
    renamedDevices(after, differences, found);
    labels(differences, found);
    CableLabels.of(before, after, differences)
        .ifPresent(text -> found.add(new Consequence(Consequence.Kind.LABELS, text)));
    suppressions(after, differences, found);
    return found;
  }

  private static String proving(Site after, List<Difference> differences) {
    List<Proof> due = DueProofs.of(after, differences);
    return due.isEmpty() || DueProofs.concernsAll(after, differences)
        ? "prove the whole line again and renew the record of commissioning: measure the line, see"
            + " the outdoor readings at every follower's display and the responses of all vents, and"
            + " enter date and name"
        : "prove again what the change touches, and add it to renewed in the record of commissioning: "
            + ProofWords.of(due);
  }

  /** Software that comes or goes as a whole. */
  private static void software(Site before, Site after, List<Consequence> found) {
    if (before.supervision().isMissing() && after.supervision().isGiven()) {
      found.add(
          new Consequence(
              Consequence.Kind.SUPERVISION,
              "set up the software once the line is proved: a zone for each unit, and read the name"
                  + " of each unit back before it may write"));
    } else if (before.supervision().isGiven() && after.supervision().isMissing()) {
      found.add(
          new Consequence(
              Consequence.Kind.SUPERVISION,
              "stop the software for good, and see that it stays stopped when its computer"
                  + " restarts"));
    }
  }

  private static void exchanged(
      Site before, List<Difference> differences, List<Consequence> found) {
    for (Difference difference : differences) {
      if (difference instanceof Difference.Exchanged one
          && one.kind() == ItemKind.UNIT
          && before.supervision().isGiven()) {
        boolean isOtherType =
            one.device().stream().anyMatch(change -> change.what().equals("device-type"));
        found.add(
            new Consequence(
                Consequence.Kind.SUPERVISION,
                "keep the zone \""
                    + one.item()
                    + "\", which has the same name"
                    + (isOtherType
                        ? "; before it may write, check that it fits the registers of the new type"
                        : "")));
      }
    }
  }

  /** What has no display of names has the later name only where somebody writes it. */
  private static void renamedDevices(
      Site after, List<Difference> differences, List<Consequence> found) {
    for (Difference difference : differences) {
      if (difference instanceof Difference.Renamed renamed
          && after.items().stream()
              .anyMatch(item -> item instanceof Equipment && item.name().is(renamed.item()))) {
        found.add(
            new Consequence(
                Consequence.Kind.SUPERVISION,
                "rename \""
                    + renamed.from()
                    + "\" to \""
                    + renamed.item()
                    + "\" wherever it is asked"));
      }
    }
  }

  private static void labels(List<Difference> differences, List<Consequence> found) {
    Set<String> names = new LinkedHashSet<>();
    for (Difference difference : differences) {
      if (difference instanceof Difference.Added added) {
        names.add(added.item());
      } else if (difference instanceof Difference.Exchanged exchanged) {
        names.add(exchanged.item());
      } else if (difference instanceof Difference.Removed removed) {
        names.add(removed.item());
      } else if (difference instanceof Difference.Renamed renamed) {
        names.add(renamed.item());
      } else if (difference instanceof Difference.Readdressed readdressed) {
        names.add(readdressed.item());
      }
    }
    if (!names.isEmpty()) {
      found.add(
          new Consequence(
              Consequence.Kind.LABELS,
              "correct labels and drawings of "
                  + names.stream()
                      .map(name -> "\"" + name + "\"")
                      .collect(Collectors.joining(", "))));
    }
  }

  private static void suppressions(
      Site after, List<Difference> differences, List<Consequence> found) {
    for (SuppressionEntry entry : after.suppressions()) {
      for (Difference difference : differences) {
        if (difference instanceof Difference.Renamed renamed && entry.unit().is(renamed.from())) {
          found.add(
              new Consequence(
                  Consequence.Kind.SUPPRESSION,
                  "write unit: "
                      + renamed.item()
                      + " in the suppression of "
                      + entry.rule().or("a rule")
                      + ", which still names \""
                      + renamed.from()
                      + "\""));
        } else if (difference instanceof Difference.Removed removed
            && entry.unit().is(removed.item())
            && after.unit(removed.item()) == null) {
          found.add(
              new Consequence(
                  Consequence.Kind.SUPPRESSION,
                  "delete the suppression of "
                      + entry.rule().or("a rule")
                      + " at \""
                      + removed.item()
                      + "\", which is gone"));
        }
      }
    }
  }
}
