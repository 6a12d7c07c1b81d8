package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * The units of all sites as a table for spreadsheets, written site by site so that none is kept.
 */
public final class InventoryReport {
  private final OutputStream out;

  /** Begins the report; the stream is left open. */
  public InventoryReport(OutputStream out) {
    this.out = out;
    write(InventoryRow.HEADINGS);
  }

  /** Writes the units of one site. */
  public void add(List<InventoryRow> units) {
    units.forEach(unit -> write(unit.fields()));
  }

  private void write(List<String> fields) {
    try {
      out.write(CsvLine.of(fields).getBytes(UTF_8));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
