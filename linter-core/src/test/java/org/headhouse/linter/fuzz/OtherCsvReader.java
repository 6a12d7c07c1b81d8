package org.headhouse.linter.fuzz;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.util.List;

/** Reads a list by a library, so that ours is not compared with itself. */
final class OtherCsvReader {
  private OtherCsvReader() {}

  /** The rows of a list; none where the library cannot read it. */
  static List<List<String>> rows(String list, char separator) {
    try (var reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .trimWhitespacesAroundQuotes(true)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(list)) {
      return reader.stream().map(CsvRecord::getFields).toList();
    } catch (CsvParseException | IOException unreadable) {
      return List.of();
    }
  }
}
