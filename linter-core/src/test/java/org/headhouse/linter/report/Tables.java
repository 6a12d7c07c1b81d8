package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.materials.Slack;

/**
 * The tables over all sites, as a run writes them, read back by another reader of RFC 4180.
 *
 * @param inventory the whole file
 * @param materials the whole file
 */
record Tables(String inventory, String materials) {

  static Tables of(SiteLinter linter, Stream<SiteInput> inputs) {
    ByteArrayOutputStream inventoryOut = new ByteArrayOutputStream();
    ByteArrayOutputStream materialsOut = new ByteArrayOutputStream();
    InventoryReport inventory = new InventoryReport(inventoryOut);
    try (MaterialsReport materials = new MaterialsReport(materialsOut, Slack.USUAL)) {
      linter.sheets(
          inputs,
          Measure.METRIC,
          Paper.A4,
          sheet -> {
            inventory.add(sheet.inventory());
            materials.add(sheet.materials());
          });
    }
    return new Tables(inventoryOut.toString(UTF_8), materialsOut.toString(UTF_8));
  }

  List<Map<String, String>> units() {
    return read(inventory);
  }

  List<Map<String, String>> counts() {
    return read(materials);
  }

  /** The rows by the headings; every row has as many fields as there are headings. */
  private static List<Map<String, String>> read(String text) {
    assertThat(text).endsWith("\r\n");
    try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(text)) {
      List<String> headings = new ArrayList<>();
      List<Map<String, String>> rows = new ArrayList<>();
      for (CsvRecord record : reader) {
        if (headings.isEmpty()) {
          headings.addAll(record.getFields());
          continue;
        }
        assertThat(record.getFields()).hasSameSizeAs(headings);
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < headings.size(); i++) {
          row.put(headings.get(i), record.getField(i));
        }
        rows.add(row);
      }
      return rows;
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
