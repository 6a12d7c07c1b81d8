package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.materials.Material;
import org.headhouse.linter.materials.MaterialCount;
import org.headhouse.linter.materials.MaterialTotals;
import org.headhouse.linter.materials.Slack;
import org.jspecify.annotations.Nullable;

/**
 * The materials of all sites as a table for spreadsheets, written site by site so that none is
 * kept; at its end the sums of all sites of each stage, and of all.
 */
public final class MaterialsReport implements AutoCloseable {
  private static final List<String> HEADINGS =
      List.of(
          "customer",
          "site",
          "stage",
          "material",
          "type",
          "amount",
          "unit",
          "to-order",
          "complete",
          "not-counted");

  /** No site can have such an id. */
  private static final String ALL_SITES = "all sites";

  private static final String ANY_STAGE = "any";
  private static final String PIECES = "pieces";

  private final OutputStream out;
  private final Slack slack;
  private final MaterialTotals all;
  private final Map<String, MaterialTotals> byStage = new TreeMap<>();

  /** Begins the report; the stream is left open. */
  public MaterialsReport(OutputStream out, Slack slack) {
    this.out = out;
    this.slack = slack;
    this.all = new MaterialTotals(slack);
    write(HEADINGS);
  }

  /** Writes the materials of one site. */
  public void add(SiteMaterials site) {
    Measure measure = site.bill().measure();
    for (MaterialCount count : site.bill().counts()) {
      write(
          List.of(
              site.customer(),
              site.site(),
              site.stage(),
              count.material().word(),
              count.type(),
              number(count.amountIn(measure)),
              unit(count.material(), measure),
              number(count.toOrder(measure, slack)),
              yesOrNo(count.isComplete()),
              String.join("; ", count.notCounted())));
    }
    all.add(site.bill());
    byStage.computeIfAbsent(site.stage(), stage -> new MaterialTotals(slack)).add(site.bill());
  }

  /** Ends the report with the sums. */
  @Override
  public void close() {
    byStage.forEach(this::totals);
    totals(ANY_STAGE, all);
  }

  private void totals(String stage, MaterialTotals totals) {
    for (MaterialTotals.Total total : totals.totals()) {
      write(
          List.of(
              "",
              ALL_SITES,
              stage,
              total.material().word(),
              total.type(),
              number(total.amountInUnits()),
              unit(total.material(), total.measure()),
              number(total.toOrderInUnits()),
              yesOrNo(total.incomplete() == 0),
              total.incomplete() == 0 ? "" : "something at " + sites(total.incomplete())));
    }
  }

  private static String sites(int number) {
    return number + (number == 1 ? " site" : " sites");
  }

  private static String number(@Nullable Double amount) {
    return amount == null ? "" : Shown.plain(amount);
  }

  private static String unit(Material material, Measure measure) {
    return material.isLength() ? measure.unit() : PIECES;
  }

  private static String yesOrNo(boolean value) {
    return value ? "yes" : "no";
  }

  private void write(List<String> fields) {
    try {
      out.write(CsvLine.of(fields).getBytes(UTF_8));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
