package org.headhouse.linter.goal;

import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.StaleParts;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.report.FiguresReport;
import org.headhouse.linter.report.InventoryReport;
import org.headhouse.linter.report.MaterialsReport;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SheetRequest;
import org.headhouse.linter.report.SiteHistory;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.revision.EarlierFiles;
import org.headhouse.linter.revision.GitHistory;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.SiteRun;
import org.headhouse.linter.run.SitesRequest;

/**
 * The sheets and figures of the sites are written.
 *
 * @param output the folder for them
 * @param units that lengths and temperatures are shown in
 * @param paper that the sheets are printed on
 * @param slack the cable that is ordered beyond the measured lengths
 * @param bundle whether each customer's papers are put into one file as well
 */
public record ReportRequest(
    SitesRequest sites, Path output, Measure units, Paper paper, Slack slack, boolean bundle)
    implements GoalRequest {

  private static final String FIGURES = "figures.json";

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    SiteRun run = sites.find();
    run.reportSettings(console);
    SiteLinter linter = linters.make(run.builder().withoutBaseline());
    Outcome settings = ValidSettingsGuard.check(linter, console);
    if (!settings.isGood()) {
      return settings;
    }
    refuseToReplaceOthers(run, linter);
    Path figures = output.resolve(FIGURES);
    SheetFiles files = new SheetFiles(output);
    SheetReport report = write(run, linter, figures, files);
    console.report(Level.NOTE, "Figures are in " + run.base().shown(figures));
    console.report(
        Level.NOTE, "Sheets are in " + run.base().shown(output.resolve(SheetReport.PAGE)));
    files.filledIn().forEach(list -> reportFilledIn(run.base().shown(list), console));
    ConsoleReport lines = new ConsoleReport(console, Level.NOTE);
    lines.print(report.notifications());
    lines.printCounts(report.counts(), report.files(), report.units());
    return Outcome.of(report.notifications());
  }

  /**
   * What the files are called is known once all sites are read: they are read twice where the
   * folder has a file that may be in the way.
   */
  private void refuseToReplaceOthers(SiteRun run, SiteLinter linter) throws UserError {
    OwnReports own = new OwnReports(output, run.base());
    if (own.hasOthers()) {
      for (String name : names(run, linter)) {
        own.require(name);
      }
    }
  }

  private List<String> names(SiteRun run, SiteLinter linter) {
    List<String> names =
        new ArrayList<>(
            List.of(FIGURES, SheetReport.PAGE, SheetReport.INVENTORY, SheetReport.MATERIALS));
    SheetReport report =
        linter.sheets(
            run.inputs(),
            new SheetRequest(units, paper, slack, SiteHistory.NONE, bundle),
            sheet -> sheet.files().forEach(file -> names.add(file.name())));
    report.papers().forEach(file -> names.add(file.name()));
    report.bundles().forEach(one -> names.add(one.file()));
    return names;
  }

  private static void reportFilledIn(String list, Console console) {
    console.report(
        Level.WARNING,
        list
            + " may be filled in, and was not replaced: add it to the record with goal draft and "
            + console.called().typed("visit", list)
            + ", then delete it");
  }

  /** Everything is written while it is computed, one site at a time. */
  private SheetReport write(SiteRun run, SiteLinter linter, Path figures, SheetFiles files)
      throws UserError {
    StaleParts.sweep(output);
    List<SheetReport> written = new ArrayList<>(1);
    AtomicFile.write(
        figures,
        json ->
            AtomicFile.write(
                output.resolve(SheetReport.INVENTORY),
                inventory ->
                    AtomicFile.write(
                        output.resolve(SheetReport.MATERIALS),
                        materials -> {
                          SheetReport report =
                              write(run, linter, json, inventory, materials, files);
                          files.add(report);
                          written.add(report);
                        })));
    files.failOnError();
    return written.get(0);
  }

  private SheetReport write(
      SiteRun run,
      SiteLinter linter,
      OutputStream figuresOut,
      OutputStream inventoryOut,
      OutputStream materialsOut,
      SheetFiles files) {
    InventoryReport inventory = new InventoryReport(inventoryOut);
    try (GitHistory history =
            GitHistory.open(run.found().sites(), EarlierFiles.placesOfTypes(run.found()));
        FiguresReport figures = new FiguresReport(figuresOut);
        MaterialsReport materials = new MaterialsReport(materialsOut, slack)) {
      return linter.sheets(
          run.inputs(),
          new SheetRequest(units, paper, slack, history, bundle),
          sheet -> {
            figures.add(sheet.figures());
            inventory.add(sheet.inventory());
            materials.add(sheet.materials());
            files.add(sheet);
          });
    }
  }
}
