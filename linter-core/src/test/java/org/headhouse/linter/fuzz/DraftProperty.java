package org.headhouse.linter.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.draft.Draft;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.ListFault;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.YamlReader;

/**
 * A list is refused with faults that lie in it, or becomes a site that can be read and whose items
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
        .filter(result -> !isOpenAddress(result))
        .findFirst()
        .ifPresent(
            result -> Demand.that(false, "%s in the draft %s", TextReport.lines(result), text));
    List<String> names = names(text);
    String unmarked = list.startsWith("\uFEFF") ? list.substring(1) : list;
    Demand.that(
        Stream.of(',', ';', '\t', '|').anyMatch(one -> names.equals(listed(unmarked, one))),
        "%s are not the units of %s",
        names,
        list);
  }

  /** A list of a line that exists may leave out an address, and nobody else knows it. */
  private static boolean isOpenAddress(Result result) {
    return result.rule().equals("schema.missing-key")
        && result.message().fact().contains("address");
  }

  private static List<String> names(String text) {
    SourceText source = new SourceText("elm-row.yaml", text);
    var root = Objects.requireNonNull(new YamlReader(Limits.DEFAULT).read(source).root());
    Site site = SiteBinder.bind(source, root, DeviceTypes.NONE).model();
    return site.items().stream().map(item -> item.name().or("")).toList();
  }

  private static List<String> listed(String list, char separator) {
    List<String> names = new ArrayList<>();
    int column = -1;
    for (List<String> row : OtherCsvReader.rows(withoutStatement(list), separator)) {
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

  /** Without the line that says what the separator is, and with spaces that other readers know. */
  private static String withoutStatement(String list) {
    return list.replaceFirst("^(?i:(\"?)sep=[,;\t|]\\1)[ \t]*(\\r\\n?|\\n|$)", "")
        .replaceAll("[\\u00A0\\u2007\\u202F]", " ");
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
