package org.headhouse.linter.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.headhouse.linter.check.SiteCheck;
import org.headhouse.linter.report.sheet.Bypass;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Finds how a line runs on without one of its units. A unit that has nothing for the line but its
 * two cables is joined through: the pair is as long as before, and loaded less. Where something of
 * a unit moves to a neighbour, the line without it is checked as any other is.
 */
final class BypassPlanner {
  /** What a fault of the wiring is about; addresses and names of a line in need do not matter. */
  private static final Set<String> WIRING =
      Set.of("bias", "cable", "driver", "run", "segment", "signal", "stub", "termination");

  private final SiteCheck check;
  private final boolean groundEverywhere;
  private final LocalDate today;

  /**
   * @param groundEverywhere whether ground is landed at every unit, so that none has to take over
   */
  BypassPlanner(SiteCheck check, boolean groundEverywhere, LocalDate today) {
    this.check = check;
    this.groundEverywhere = groundEverywhere;
    this.today = today;
  }

  /** Of all units, by their places in the chain. */
  Map<Integer, Bypass> of(Site site) {
    Map<Integer, Bypass> bypasses = new HashMap<>();
    Set<String> known = wiring(site);
    for (Unit unit : site.units()) {
      bypasses.put(unit.index(), of(site, unit, known));
    }
    return bypasses;
  }

  private Bypass of(Site site, Unit unit, Set<String> known) {
    LineSettings line = site.line().orNull();
    String terminator =
        unit.termination()
            .optional()
            .filter(Termination::isFitted)
            .map(Termination::written)
            .orElse("");
    boolean biased = line != null && WithoutUnit.hasBias(line, unit);
    boolean drained = !groundEverywhere && WithoutUnit.hasDrain(unit);
    boolean end = unit.index() == 0 || unit.index() == site.items().size() - 1;
    List<ChainItem> neighbours = neighbours(site, unit);
    boolean moves = !terminator.isEmpty() || biased || drained;
    if (unit.isHead() || neighbours.isEmpty() || !(moves || end)) {
      return bypass(unit, end, "", "", false, false, true, List.of());
    }
    @Nullable Attempt best = null;
    for (ChainItem neighbour : neighbours) {
      Site without = new WithoutUnit(site, unit, neighbour).site();
      Set<String> faults = wiring(without);
      faults.removeAll(known);
      if (best == null || faults.size() < best.faults().size()) {
        best = new Attempt(neighbour, List.copyOf(faults), isComputed(without));
      }
      if (faults.isEmpty()) {
        break;
      }
    }
    ChainItem neighbour = Objects.requireNonNull(best).neighbour();
    return bypass(
        unit,
        end,
        neighbour.name().or("item " + (neighbour.index() + 1)),
        terminator,
        biased,
        drained,
        best.isComputed(),
        best.faults());
  }

  /** What becomes of the line where one neighbour takes over. */
  private record Attempt(ChainItem neighbour, List<String> faults, boolean isComputed) {}

  private static Bypass bypass(
      Unit unit,
      boolean end,
      String neighbour,
      String termination,
      boolean bias,
      boolean drain,
      boolean judged,
      List<String> faults) {
    return new Bypass(
        unit.isHead(),
        end,
        unit.stub().isGiven(),
        neighbour,
        termination,
        bias,
        drain,
        judged,
        faults);
  }

  /** Of the same segment, the one towards the start of the chain first. */
  private static List<ChainItem> neighbours(Site site, Unit unit) {
    List<ChainItem> neighbours = new ArrayList<>();
    for (Segment segment : site.segments()) {
      if (segment.contains(unit)) {
        int at = unit.index() - segment.first().index();
        List<ChainItem> items = segment.items();
        if (at > 0) {
          neighbours.add(items.get(at - 1));
        }
        if (at + 1 < items.size()) {
          neighbours.add(items.get(at + 1));
        }
      }
    }
    return neighbours;
  }

  /** The facts that the rules on the wiring report. */
  private Set<String> wiring(Site site) {
    Set<String> facts = new LinkedHashSet<>();
    for (Finding finding : check.findings(site, today)) {
      if (isOfWiring(finding)) {
        facts.add(finding.message().fact());
      }
    }
    return facts;
  }

  private static boolean isOfWiring(Finding finding) {
    String rule = finding.rule();
    return finding.level() != Level.NOTE && WIRING.contains(rule.substring(0, rule.indexOf('.')));
  }

  /** Whether every length is known: without one, what depends on it is silent. */
  private static boolean isComputed(Site site) {
    List<ChainItem> items = site.items();
    LineSettings line = site.line().orNull();
    return line != null
        && line.cable().isGiven()
        && items.subList(0, Math.max(0, items.size() - 1)).stream()
            .allMatch(item -> item.cableToNext().isGiven());
  }
}
