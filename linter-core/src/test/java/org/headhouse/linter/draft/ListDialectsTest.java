package org.headhouse.linter.draft;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.bind.UnitDefaults;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;

/**
 * One list in many dialects, written by its own writer here and read by another reader of such
 * files: the units of the draft are those that the other reader finds.
 */
class ListDialectsTest {
  private static final Pattern NUMBER = Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*(\\p{L}*)");

  /** How a list is written. */
  private record Dialect(char separator, boolean comma, boolean feet, boolean unitInHeading) {
    static Dialect any(Random random) {
      char separator = ",;\t".charAt(random.nextInt(3));
      return new Dialect(
          separator, random.nextBoolean(), random.nextBoolean(), random.nextBoolean());
    }
  }

  @Test
  void unitsAreThoseThatAnotherReaderFinds() {
    RandomCases.each(
        1500,
        random -> {
          Dialect dialect = Dialect.any(random);
          String list = list(random, dialect);
          String text = Lists.made(list);
          List<List<String>> rows = rows(list, dialect.separator());
          List<ChainItem> items = site(text).items();
          assertThat(items).as(list).hasSize(rows.size() - 1);
          for (int i = 0; i < items.size(); i++) {
            for (int column = 0; column < rows.get(0).size(); column++) {
              String cell = plain(rows.get(i + 1).get(column));
              String heading = plain(rows.get(0).get(column));
              assertThat(value(items.get(i), heading))
                  .as("%s of %s in\n%s\n%s", heading, items.get(i).called(), list, text)
                  .isEqualTo(wanted(heading, cell, items.get(i)));
            }
          }
        });
  }

  private static List<List<String>> rows(String list, char separator) {
    String stated = list.replaceFirst("^\"?sep=.\"?(\r\n|\r|\n)", "");
    try (var reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .trimWhitespacesAroundQuotes(true)
            .skipEmptyLines(true)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(stated)) {
      return reader.stream().map(CsvRecord::getFields).toList();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static String plain(String cell) {
    return cell.replace('\u00A0', ' ').strip();
  }

  private static Site site(String text) {
    SourceText source = new SourceText("elm-row.yaml", text);
    var root = Objects.requireNonNull(new YamlReader(Limits.DEFAULT).read(source).root());
    return SiteBinder.bind(source, UnitDefaults.spread(root), DeviceTypes.NONE).model();
  }

  /** What the draft has under a heading; lengths and resistors in SI units. */
  private static String value(ChainItem item, String heading) {
    String name = heading.replaceAll("(?i)[ (\\[]*(in )?(metres|feet|m|ft|ohm)[)\\]]?$", "");
    return switch (name.toLowerCase(Locale.ROOT).replaceAll("[ _-]+", "-")) {
      case "name" -> text(item.name());
      case "role" ->
          item instanceof Unit unit
              ? unit.role().optional().map(role -> role.word()).orElse("")
              : item.kind().word();
      case "address" -> text(item.address());
      case "firmware" -> item instanceof Unit unit ? text(unit.firmware()) : "";
      case "vents" ->
          item instanceof Unit unit
              ? unit.vents().optional().map(vents -> vents.word()).orElse("")
              : "";
      case "serial-number" -> text(item.device().serialNumber());
      case "conductors" -> conductors(item);
      case "stub" -> number(item.connection(Side.IN).stub().optional().map(one -> one.metres()));
      case "cable-to-next" -> number(item.cableToNext().optional().map(one -> one.metres()));
      case "termination" ->
          number(
              item.connection(Side.IN)
                  .termination()
                  .optional()
                  .map(one -> one.resistance() == null ? 0 : one.resistance().ohms()));
      default -> throw new AssertionError(heading);
    };
  }

  private static String text(Setting<?> setting) {
    return setting.optional().map(String::valueOf).orElse("");
  }

  private static String number(java.util.Optional<Double> number) {
    return number.map(one -> String.format(Locale.ROOT, "%.6f", one)).orElse("");
  }

  private static String conductors(ChainItem item) {
    StringBuilder marks = new StringBuilder();
    for (Setting<Conductor> one : item.connection(Side.IN).conductors().or(List.of())) {
      marks.append(one.optional().map(Conductor::word).orElse("?"));
    }
    return marks.toString();
  }

  /** What the cell means to somebody who knows the heading. */
  private static String wanted(String heading, String cell, ChainItem item) {
    String lower = heading.toLowerCase(Locale.ROOT);
    if (lower.startsWith("conductors")) {
      boolean head = item instanceof Unit unit && unit.isHead();
      return cell.isEmpty() ? (head ? "ABG" : "AB") : cell.replaceAll("[^A-Z]", "");
    }
    if (lower.startsWith("role") && cell.isEmpty()) {
      return "follower";
    }
    if (lower.startsWith("vents")) {
      return cell.toLowerCase(Locale.ROOT).replace(" + ", "-and-").replace(' ', '-');
    }
    boolean measured =
        lower.startsWith("cable") || lower.startsWith("stub") || lower.startsWith("termination");
    if (!measured || cell.isEmpty()) {
      return cell;
    }
    Matcher matcher = NUMBER.matcher(cell);
    if (!matcher.find()) {
      return number(java.util.Optional.of(0.0));
    }
    double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
    boolean feet = (matcher.group(2) + lower).matches(".*(ft|feet).*");
    return number(java.util.Optional.of(feet ? number * 0.3048 : number));
  }

  private static String list(Random random, Dialect dialect) {
    List<String> columns =
        new ArrayList<>(List.of("name", "role", "address", "firmware", "vents", "serial number"));
    columns.addAll(List.of("conductors", "termination", "stub", "cable to next"));
    Collections.shuffle(columns, random);
    int rows = 2 + random.nextInt(8);
    StringBuilder list = new StringBuilder();
    String end = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
    boolean stated = random.nextInt(3) == 0;
    if (stated) {
      String line = "sep=" + dialect.separator();
      list.append(random.nextBoolean() ? line : "\"" + line + "\"").append(end);
    }
    boolean commas = dialect.comma();
    List<String> cells = new ArrayList<>();
    for (String column : columns) {
      cells.add(heading(column, random, dialect));
    }
    list.append(row(cells, random, dialect)).append(end);
    for (int i = 0; i < rows; i++) {
      boolean other = i > 0 && i < rows - 1 && random.nextInt(6) == 0;
      cells.clear();
      for (String column : columns) {
        cells.add(cell(column, i, i == rows - 1, other, random, dialect, commas));
      }
      list.append(row(cells, random, dialect)).append(end);
    }
    return list.toString();
  }

  private static String heading(String column, Random random, Dialect dialect) {
    String heading =
        random.nextBoolean() ? column : column.replace(' ', random.nextBoolean() ? '-' : '\u00A0');
    heading = random.nextInt(3) == 0 ? heading.toUpperCase(Locale.ROOT) : heading;
    if (!dialect.unitInHeading()) {
      return heading;
    }
    boolean length = column.equals("stub") || column.equals("cable to next");
    String unit = dialect.feet() ? pick(random, "ft", "feet") : pick(random, "m", "metres");
    if (length) {
      return heading
          + pick(random, " (" + unit + ")", "(" + unit + ")", " [" + unit + "]", " in " + unit);
    }
    return column.equals("termination") ? heading + " (ohm)" : heading;
  }

  private static String pick(Random random, String... words) {
    return words[random.nextInt(words.length)];
  }

  private static String cell(
      String column,
      int index,
      boolean last,
      boolean equipment,
      Random random,
      Dialect dialect,
      boolean commas) {
    boolean open = random.nextInt(5) == 0;
    return switch (column) {
      case "name" -> pick(random, "Bay", "Ñandú", "a, b", "x;y", "say \"hi\"", "NO") + " " + index;
      case "role" -> equipment ? "equipment" : index == 0 ? "head" : open ? "" : "follower";
      case "address" ->
          open && !equipment && index > 0 ? "" : String.valueOf(1 + random.nextInt(247));
      case "firmware" -> equipment || open ? "" : pick(random, "3.2", "3.10", "010", "v1 \"beta\"");
      case "vents" ->
          equipment || open
              ? ""
              : pick(random, "none", "Roof", "side", "roof-and-side", "roof + side");
      case "serial number" -> open ? "" : "00" + random.nextInt(1000);
      case "conductors" -> open ? "" : pick(random, "A B", "A, B", "A/B/G", "A+B", "[A, B, G]");
      case "termination" ->
          open ? "" : random.nextBoolean() ? "none" : quantity(random, "ohm", dialect, commas, 120);
      case "stub" -> open ? "" : quantity(random, dialect.feet() ? "ft" : "m", dialect, commas, 3);
      case "cable to next" ->
          open || last
              ? ""
              : quantity(random, dialect.feet() ? "feet" : "metres", dialect, commas, 90);
      default -> throw new AssertionError(column);
    };
  }

  /** One or two decimals, or four: three could be thousands. */
  private static String quantity(
      Random random, String unit, Dialect dialect, boolean commas, int most) {
    String sign = commas ? "," : ".";
    String number = String.valueOf(1 + random.nextInt(most));
    String decimals = pick(random, "", "", sign + "5", sign + "25", sign + "0625");
    String between = pick(random, "", " ", "\u00A0");
    return number + decimals + (dialect.unitInHeading() ? "" : between + unit);
  }

  private static String row(List<String> cells, Random random, Dialect dialect) {
    List<String> written = new ArrayList<>();
    for (String cell : cells) {
      boolean needed = cell.indexOf('"') >= 0 || cell.indexOf(dialect.separator()) >= 0;
      String quoted = "\"" + cell.replace("\"", "\"\"") + "\"";
      String space = dialect.separator() == '\t' ? "" : pick(random, "", "", " ");
      written.add(space + (needed || random.nextInt(4) == 0 ? quoted : cell) + space);
    }
    return String.join(String.valueOf(dialect.separator()), written);
  }
}
