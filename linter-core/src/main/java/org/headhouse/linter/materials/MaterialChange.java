package org.headhouse.linter.materials;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SiteMeasure;
import org.headhouse.linter.materials.Part.Spot;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * What a change of a line needs, and what it leaves over.
 *
 * <p>A cable whose length or whose neighbours change is a new cable. What is taken off at one place
 * is not counted for another: the line has to stay whole meanwhile.
 *
 * @param needed what is fitted and was not there before
 * @param removed what is there and comes off
 */
public record MaterialChange(BillOfMaterials needed, BillOfMaterials removed) {
  /** Nothing at all. */
  public static final MaterialChange NONE =
      new MaterialChange(
          new BillOfMaterials(Measure.METRIC, List.of()),
          new BillOfMaterials(Measure.METRIC, List.of()));

  /** The same length in metres and in feet differs by its rounding only. */
  private static final double SAME_METRES = 1e-6;

  /** Whether nothing is needed and nothing comes off, as far as the file says. */
  public boolean isEmpty() {
    return needed.isEmpty() && removed.isEmpty();
  }

  /**
   * Compares two states of a line.
   *
   * @param laterOf the index in the later chain of each item that stays, by its index in the
   *     earlier one
   * @param exchanged the indices in the later chain of items whose device is another; what is in or
   *     part of a device is new with it
   */
  public static MaterialChange between(
      Site before, Site after, Map<Integer, Integer> laterOf, Set<Integer> exchanged) {
    Comparison comparison = new Comparison(SiteMeasure.of(after), exchanged);
    for (Part part : SiteParts.of(before)) {
      comparison.addEarlier(part, laterOf);
    }
    SiteParts.of(after).forEach(comparison::addLater);
    return comparison.change(SiteMeasure.of(before));
  }

  private static final class Comparison {
    private final Measure measure;
    private final Set<Integer> exchanged;
    private final Map<Spot, Deque<Part>> earlier = new LinkedHashMap<>();
    private final List<Part> needed = new ArrayList<>();
    private final List<Part> removed = new ArrayList<>();
    private String otherCable = "";
    private double otherCableMetres;

    Comparison(Measure measure, Set<Integer> exchanged) {
      this.measure = measure;
      this.exchanged = exchanged;
    }

    void addEarlier(Part part, Map<Integer, Integer> laterOf) {
      Spot spot = later(part.spot(), laterOf);
      if (spot == null || (spot.kind() == Part.Kind.DEVICE && exchanged.contains(spot.item()))) {
        removed.add(part);
      } else {
        earlier.computeIfAbsent(spot, key -> new ArrayDeque<>()).add(part);
      }
    }

    private static @Nullable Spot later(Spot spot, Map<Integer, Integer> laterOf) {
      if (spot.item() == Part.NOWHERE) {
        return spot;
      }
      Integer item = laterOf.get(spot.item());
      Integer other = laterOf.get(spot.other());
      return item == null || other == null ? null : new Spot(spot.kind(), item, other, spot.side());
    }

    void addLater(Part part) {
      Deque<Part> there = earlier.get(part.spot());
      Part was = there == null ? null : there.poll();
      if (was == null || (was.isAbsent() && !part.isAbsent())) {
        needed.add(part);
      } else if (part.isAbsent() && !was.isAbsent()) {
        needed.add(part);
        removed.add(was);
      } else if (!isSameAmount(was, part)
          || (!part.material().isLength() && !isSameType(was, part))) {
        exchange(was, part);
      } else if (part.amount() != null && !isSameType(was, part)) {
        otherCable = part.type();
        otherCableMetres += part.amount();
      }
    }

    /** Of what was not known before, nobody can say whether it is there already. */
    private void exchange(Part was, Part is) {
      boolean wasKnown = was.amount() != null && !was.type().isEmpty();
      boolean isKnown = is.amount() != null && !is.type().isEmpty();
      if (wasKnown && isKnown) {
        needed.add(is);
        removed.add(was);
      } else {
        String why = is.amount() == null ? "" : ": the two files do not say whether it is new";
        needed.add(new Part(is.material(), is.type(), null, is.spot(), is.words() + why));
      }
    }

    MaterialChange change(Measure measureBefore) {
      earlier.values().forEach(removed::addAll);
      if (!otherCable.isEmpty()) {
        needed.add(
            new Part(
                Material.CABLE,
                otherCable,
                null,
                Spot.at(Part.Kind.RUN, Part.NOWHERE),
                "the cable is written differently: where it is really another, "
                    + measure.length(otherCableMetres)
                    + " more"));
      }
      return new MaterialChange(
          BillOfMaterials.of(measure, needed),
          BillOfMaterials.of(
              measureBefore, removed.stream().filter(part -> part.amount() != null).toList()));
    }
  }

  private static boolean isSameType(Part was, Part is) {
    return was.type().equals(is.type());
  }

  private static boolean isSameAmount(Part was, Part is) {
    Double one = was.amount();
    Double other = is.amount();
    if (one == null || other == null) {
      return Objects.equals(one, other);
    }
    return Math.abs(one - other) < SAME_METRES;
  }
}
