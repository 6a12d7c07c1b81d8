package org.headhouse.linter.materials;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The materials of many sites together. Keeps one sum for each material, whatever the number of
 * sites. For one thread.
 */
public final class MaterialTotals {
  private final Slack slack;
  private final Map<Key, Sum> sums =
      new TreeMap<>(Comparator.comparing(Key::material).thenComparing(Key::type));

  public MaterialTotals(Slack slack) {
    this.slack = slack;
  }

  private record Key(Material material, String type) {}

  /**
   * The sum of one material.
   *
   * @param measure the unit that lengths are shown in: feet where all sites that have it use feet
   * @param amount metres or pieces of all that is counted; null where nothing is
   * @param toOrder what is ordered for each site, added up: metres or pieces; null where nothing is
   *     counted
   * @param incomplete the number of sites of which a part is not counted
   */
  public record Total(
      Material material,
      String type,
      Measure measure,
      @Nullable Double amount,
      @Nullable Double toOrder,
      int incomplete) {
    @Internal
    public Total {}

    /** The amount in the unit of length, or in pieces; null where nothing is counted. */
    public @Nullable Double amountInUnits() {
      return amount == null || !material.isLength() ? amount : (Double) measure.lengthOf(amount);
    }

    /** The sum of the orders, rounded up to a whole unit; null where nothing is counted. */
    public @Nullable Double toOrderInUnits() {
      return toOrder == null || !material.isLength()
          ? toOrder
          : (Double) new Slack(0).wholeUnits(measure.lengthOf(toOrder));
    }
  }

  private static final class Sum {
    private double amount;
    private double toOrder;
    private boolean counted;
    private boolean inMetres;
    private int incomplete;
  }

  /** Adds the materials of a site. */
  public void add(BillOfMaterials bill) {
    for (MaterialCount count : bill.counts()) {
      Sum sum = sums.computeIfAbsent(new Key(count.material(), count.type()), key -> new Sum());
      Double toOrder = count.toOrder(bill.measure(), slack);
      if (count.amount() != null && toOrder != null) {
        sum.counted = true;
        sum.amount += count.amount();
        sum.toOrder += count.material().isLength() ? bill.measure().metres(toOrder) : toOrder;
      }
      sum.inMetres |= bill.measure() == Measure.METRIC;
      sum.incomplete += count.isComplete() ? 0 : 1;
    }
  }

  /** The sums by kind, then by type. */
  public List<Total> totals() {
    return sums.entrySet().stream()
        .map(
            entry -> {
              Sum sum = entry.getValue();
              return new Total(
                  entry.getKey().material(),
                  entry.getKey().type(),
                  sum.inMetres ? Measure.METRIC : Measure.US,
                  sum.counted ? (Double) sum.amount : null,
                  sum.counted ? (Double) sum.toOrder : null,
                  sum.incomplete);
            })
        .toList();
  }
}
