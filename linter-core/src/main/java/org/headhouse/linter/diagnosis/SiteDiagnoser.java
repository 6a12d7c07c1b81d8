package org.headhouse.linter.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.headhouse.linter.fault.Fault;
import org.headhouse.linter.fault.FaultsLeft;
import org.headhouse.linter.fault.Measurement;
import org.headhouse.linter.fault.MeterReading;
import org.headhouse.linter.fault.SegmentFaults;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.FoundReading;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** Compares readings with what each fault of a line would make a meter show. */
@Internal
public final class SiteDiagnoser {
  private final Site site;
  private final LineFigures figures;
  private final SitePolicy policy;
  private final SegmentReadingsFound readings;

  private SiteDiagnoser(Site site, SitePolicy policy, List<FoundReading> found) {
    this.site = site;
    this.policy = policy;
    this.figures = new LineFigures(site, policy);
    this.readings = SegmentReadingsFound.of(site, figures, found);
  }

  /**
   * The diagnosis of a site.
   *
   * @param found readings that count in place of those of the file; null for those of the file
   */
  public static SiteDiagnosis diagnose(
      Site site, SitePolicy policy, @Nullable List<FoundReading> found) {
    return new SiteDiagnoser(site, policy, found == null ? site.readingsAsFound() : found)
        .diagnosis();
  }

  private SiteDiagnosis diagnosis() {
    List<SegmentDiagnosis> segments = new ArrayList<>();
    for (SegmentLine line : figures.segments()) {
      segments.add(diagnosis(line));
    }
    return new SiteDiagnosis(
        site.id().or(site.source().path()), segments, readings.any(), readings.notUsed());
  }

  private SegmentDiagnosis diagnosis(SegmentLine line) {
    SegmentFaults faults = faults(line);
    List<String> items = ItemNames.of(line);
    if (faults == null) {
      return new SegmentDiagnosis(
          items, null, List.of(), 0, null, List.of(WhatIsMissing.of(line, figures)));
    }
    List<MeterReading> taken = readings.of(line);
    ChainItem silent = silent(line);
    boolean silentHere = silent != null && line.segment().contains(silent);
    boolean hasReading = silentHere || !taken.isEmpty();
    FaultsLeft left = faults.left(taken, possible(line, silent), !silentHere);
    NamedFaults names = new NamedFaults(line);
    List<Candidate> candidates = left.groups().stream().map(names::candidate).toList();
    List<Measurement> measured = taken.stream().map(MeterReading::measurement).toList();
    Measurement next = left.next(near(line), measured);
    return new SegmentDiagnosis(
        items,
        hasReading ? left.isSoundLeft() : null,
        candidates,
        faults.all().size() - left.faults().size(),
        next == null ? null : names.next(next, site),
        List.of());
  }

  /** The first silent item where it says something of a segment: not where it is nearer. */
  private @Nullable ChainItem silent(SegmentLine line) {
    ChainItem silent = readings.firstSilent();
    return silent == null || silent.index() < line.segment().first().index() ? null : silent;
  }

  private Predicate<Fault> possible(SegmentLine line, @Nullable ChainItem silent) {
    ChainItem head = site.head();
    if (silent == null || head == null) {
      return any -> true;
    }
    AnswersEnd end = new AnswersEnd(site, line, head.index());
    return fault -> end.fits(fault, silent);
  }

  /** The fault dictionary of a segment; null where a part of what it needs is not known. */
  private @Nullable SegmentFaults faults(SegmentLine line) {
    return SegmentDictionary.of(line, figures, policy);
  }

  private static int near(SegmentLine line) {
    return line.measuredAt();
  }
}
