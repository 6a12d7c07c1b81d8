package org.headhouse.linter.command;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.result.Result;

/** Puts the reports of several folders of sites together. */
final class CheckReports {
  private CheckReports() {}

  static CheckReport together(List<CheckReport> reports) {
    if (reports.size() == 1) {
      return reports.get(0);
    }
    return new CheckReport(
        all(reports, CheckReport::results).stream().sorted(Result.ORDER).toList(),
        all(reports, CheckReport::notifications),
        reports.stream().mapToInt(CheckReport::files).sum(),
        reports.stream().mapToInt(CheckReport::units).sum(),
        all(reports, CheckReport::rules).stream().distinct().toList(),
        all(reports, CheckReport::absent),
        reports.stream()
            .flatMap(report -> report.settings().stream())
            .collect(Collectors.toUnmodifiableSet()));
  }

  private static <T> List<T> all(List<CheckReport> reports, Function<CheckReport, List<T>> part) {
    return reports.stream().map(part).flatMap(List::stream).toList();
  }
}
