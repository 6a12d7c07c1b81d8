package org.headhouse.linter.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.draft.Draft;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.ListFault;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.YamlReader;

/**
 * A list is refused with faults that lie in it, or becomes a site that can be read and whose units
 * are those of the list, as another reader of such lists has them.
 */
final class DraftProperty implements Property {
  private static final String FILE = "units.csv";
  private static final DraftSettings SETTINGS =
      new DraftSettings(
          "elm-row",
          "Elm Row",
          List.of(Reading.LIGHT, Reading.RAIN),
          9600,
          Parity.EVEN,
          Objects.requireNonNull(Quantities.gauge("24 AWG")),
          true,
          Objects.requireNonNull(Quantities.resistance("120 ohm")),
          Quantities.voltage("5 V"));

  private final SiteLinter linter;

  DraftProperty() throws IOException {
    this.linter = CheckProperty.linter(1);
  }

  @Override
  public void tryWith(byte[] input) throws IOException {
    Draft draft = linter.draft(new SiteInput(FILE, most -> input), SETTINGS);
    if (draft instanceof Draft.Refused refused) {
      Told told = new Told(FILE, input);
      for (ListFault fault : refused.faults()) {
        told.location(fault.location());
        Told.message(fault.message());
        Told.printable(TextReport.lines(fault.location(), fault.message()));
      }
    } else {
      made(((Draft.Made) draft).text(), new String(input, UTF_8));
    }
  }

  private void made(String text, String list) {
    CheckReport report = linter.checkText("elm-row.yaml", text);
    Told.noTrouble(report.notifications());
    report.results().stream()
        .filter(result -> result.rule().matches("(file|yaml|schema|reference)\\..*"))
        .findFirst()
        .ifPresent(
            result -> Demand.that(false, "%s in the draft %s", TextReport.lines(result), text));
    List<String> names = names(text);
    String unmarked = list.startsWith("\uFEFF") ? list.substring(1) : list;
    Demand.that(
        names.equals(listed(unmarked, ',')) || names.equals(listed(unmarked, ';')),
        "%s are not the units of %s",
        names,
        list);
  }

  private static List<String> names(String text) {
    SourceText source = new SourceText("elm-row.yaml", text);
    var root = Objects.requireNonNull(new YamlReader(Limits.DEFAULT).read(source).root());
    Site site = SiteBinder.bind(source, root, DeviceTypes.NONE).model();
    return site.units().stream().map(unit -> unit.name().or("")).toList();
  }

  private static List<String> listed(String list, char separator) {
    List<String> names = new ArrayList<>();
    int column = -1;
    for (List<String> row : rows(list, separator)) {
      if (row.stream().allMatch(String::isBlank)) {
        continue;
      }
      if (column < 0) {
        column = columnOfNames(row);
      } else {
        names.add(row.get(column).strip());
      }
    }
    return names;
  }

  private static List<List<String>> rows(String list, char separator) {
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

  private static int columnOfNames(List<String> header) {
    for (int i = 0; i < header.size(); i++) {
      if (header.get(i).strip().matches("(?i)name|unit|unit[\\s_-]+name")) {
        return i;
      }
    }
    return 0;
  }
}
