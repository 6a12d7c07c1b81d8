package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.ProofWords;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.SuppressionEntry;
import org.headhouse.linter.site.Unit;

/** Names what a change touches besides the line. */
final class ConsequenceFinder {
  private ConsequenceFinder() {}

  static List<Consequence> of(Site before, Site after, List<Difference> differences) {
    List<Consequence> found = new ArrayList<>();
    if (before.supervision().isGiven() || after.supervision().isGiven()) {
      supervision(after, differences, found);
    }
    if (before.stage().is(Stage.COMMISSIONED) && ReprovingCheck.isDue(differences)) {
      found.add(new Consequence(Consequence.Kind.RECORD, proving(after, differences)));
    }
    labels(differences, found);
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

  private static void supervision(
      Site after, List<Difference> differences, List<Consequence> found) {
    for (Difference difference : differences) {
      String text = zone(after, difference);
      if (!text.isEmpty()) {
        found.add(new Consequence(Consequence.Kind.SUPERVISION, text));
      }
    }
  }

  private static String zone(Site after, Difference difference) {
    if (difference instanceof Difference.Added added && added.kind() == ItemKind.UNIT) {
      Unit unit = after.unit(added.item());
      Integer address = unit == null ? null : unit.address().orNull();
      return "add the zone \""
          + added.item()
          + "\""
          + (address == null ? "" : " at address " + address);
    }
    if (difference instanceof Difference.Removed removed && removed.kind() == ItemKind.UNIT) {
      return "delete the zone \"" + removed.item() + "\"";
    }
    if (difference instanceof Difference.Renamed renamed && after.unit(renamed.item()) != null) {
      return "rename the zone \"" + renamed.from() + "\" to \"" + renamed.item() + "\"";
    }
    if (difference instanceof Difference.Readdressed readdressed) {
      return "poll the zone \""
          + readdressed.item()
          + "\" at address "
          + readdressed.to()
          + ", not "
          + readdressed.from();
    }
    if (difference instanceof Difference.LineSet line
        && Set.of("baud", "parity", "stop-bits").contains(line.setting().what())) {
      return "set the software's port to " + line.setting().what() + " " + line.setting().to();
    }
    return "";
  }

  private static void labels(List<Difference> differences, List<Consequence> found) {
    Set<String> names = new LinkedHashSet<>();
    for (Difference difference : differences) {
      if (difference instanceof Difference.Added added) {
        names.add(added.item());
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
