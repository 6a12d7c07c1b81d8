package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.StaleResponse;
import org.headhouse.linter.proof.VisitEntry;
import org.headhouse.linter.site.OpenMark;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.Unit;

/**
 * What was seen of the vents of one unit, or of several of which the same was seen.
 *
 * @param house its name, or the names joined
 * @param wind whether wind closed them, and in which time
 * @param lost what they were seen to do when readings were lost
 */
record HouseProof(String house, String wind, String lost) {
  /** Of more houses those are put together of which the same was seen. */
  private static final int MOST_SINGLE = 48;

  private static final String NOT_SEEN = "not seen";
  private static final String STAYING = "they stay where they are, as set";
  private static final String EARLIER = "seen in an earlier state of the line only";
  private static final String DOUBTED = "seen once, but not on another visit";

  /** Of the units that move vents, and of those of which the file does not say. */
  static List<HouseProof> of(SiteFacts facts) {
    Site site = facts.site();
    Seen seen = new Seen(facts);
    List<Unit> moving = site.units().stream().filter(VentWords::mayMove).toList();
    return moving.size() > MOST_SINGLE
        ? together(moving, seen)
        : moving.stream()
            .map(
                unit ->
                    new HouseProof(
                        PlainText.name(unit),
                        seen.wind(unit),
                        seen.of(Proof.Kind.STALE_RESPONSE, unit)))
            .toList();
  }

  /**
   * What the record says of the line as it is now: that of a line that is planned again, or was
   * changed after it, says nothing of what was changed; nor does it count against a visit that did
   * not see it.
   */
  private static final class Seen {
    private final LastSeen last;
    private final boolean isInUse;
    private final List<Proof> lapsed;
    private final List<String> open;

    Seen(SiteFacts facts) {
      last = LastSeen.of(facts.site());
      isInUse = facts.site().stage().is(Stage.COMMISSIONED);
      lapsed = facts.provenance().history().unproved();
      open = OpenMark.notSeenIn(facts.site().source().text());
    }

    String of(Proof.Kind kind, Unit unit) {
      if (last.of(kind, unit) == null) {
        return NOT_SEEN;
      }
      String name = unit.name().or("");
      boolean hasLapsed =
          lapsed.stream().anyMatch(proof -> proof.kind() == kind && proof.at().equals(name));
      if (!isInUse || hasLapsed) {
        return EARLIER;
      }
      if (isOpen(kind, name)) {
        return DOUBTED;
      }
      return kind == Proof.Kind.STALE_RESPONSE && StaleResponse.staysOpen(unit)
          ? "seen: " + STAYING
          : "seen to close";
    }

    private boolean isOpen(Proof.Kind kind, String name) {
      List<VisitEntry> entries =
          kind == Proof.Kind.STORM_RESPONSE
              ? List.of(VisitEntry.STORM_RESPONSE)
              : List.of(VisitEntry.STALE_RESPONSE, VisitEntry.STALE_HOLD);
      return open.stream()
          .anyMatch(
              point ->
                  entries.stream()
                      .anyMatch(entry -> point.startsWith(entry.words() + ", " + name + ": ")));
    }

    String wind(Unit unit) {
      String words = of(Proof.Kind.STORM_RESPONSE, unit);
      LastSeen.Seen response = last.of(Proof.Kind.STORM_RESPONSE, unit);
      if (response == null || words.equals(EARLIER) || words.equals(DOUBTED)) {
        return words;
      }
      return words
          + (response.closedIn().isEmpty()
              ? ", not timed"
              : ", in " + SpokenText.quantity(response.closedIn()))
          + (VentWords.getsNoWind(unit) ? ", though the file gives it no reading of the wind" : "");
    }
  }

  /** As short as a list of many houses needs it, under a sentence that says what was seen. */
  String inShort() {
    return house + ": wind " + shortened(wind) + ", lost readings " + shortened(lost);
  }

  private static String shortened(String words) {
    return words
        .replace("seen to close, in ", "")
        .replace("seen to close, ", "")
        .replace("seen to close", "seen")
        .replace(STAYING, "they stay");
  }

  private static List<HouseProof> together(List<Unit> units, Seen seen) {
    Map<List<String>, List<String>> names = new LinkedHashMap<>();
    for (Unit unit : units) {
      names
          .computeIfAbsent(
              List.of(
                  seen.of(Proof.Kind.STORM_RESPONSE, unit),
                  seen.of(Proof.Kind.STALE_RESPONSE, unit)),
              same -> new ArrayList<>())
          .add(PlainText.name(unit));
    }
    List<HouseProof> groups = new ArrayList<>();
    names.forEach(
        (same, houses) ->
            groups.add(
                new HouseProof(
                    SpokenText.count(houses.size(), "house") + ": " + String.join(", ", houses),
                    same.get(0),
                    same.get(1))));
    return groups;
  }
}
