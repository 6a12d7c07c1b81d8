package org.headhouse.linter.materials;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SiteMeasure;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * What a line, or a part of it, is made of.
 *
 * @param measure the unit that lengths are shown in: the one that the file uses
 * @param counts by kind, then by type
 */
public record BillOfMaterials(Measure measure, List<MaterialCount> counts) {

  public BillOfMaterials {
    counts = List.copyOf(counts);
  }

  /** All that the line of a site is made of. */
  public static BillOfMaterials of(Site site) {
    return of(SiteMeasure.of(site), SiteParts.of(site));
  }

  static BillOfMaterials of(Measure measure, List<Part> parts) {
    record Key(Material material, String type) {}
    Map<Key, Sum> sums = new LinkedHashMap<>();
    for (Part part : parts) {
      sums.computeIfAbsent(new Key(part.material(), part.type()), key -> new Sum()).add(part);
    }
    List<MaterialCount> counts = new ArrayList<>();
    sums.forEach((key, sum) -> counts.add(sum.count(key.material(), key.type())));
    counts.sort(Comparator.comparing(MaterialCount::material).thenComparing(MaterialCount::type));
    return new BillOfMaterials(measure, counts);
  }

  private static final class Sum {
    private @Nullable Double amount;
    private final List<String> notCounted = new ArrayList<>();

    void add(Part part) {
      if (part.amount() == null) {
        notCounted.add(part.words());
      } else {
        amount = amount == null ? part.amount() : (Double) (amount + part.amount());
      }
    }

    MaterialCount count(Material material, String type) {
      return new MaterialCount(material, type, amount, notCounted);
    }
  }

  /** Whether there is nothing in it, known or unknown. */
  public boolean isEmpty() {
    return counts.isEmpty();
  }
}
