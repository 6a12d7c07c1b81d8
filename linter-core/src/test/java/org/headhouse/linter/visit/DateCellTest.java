package org.headhouse.linter.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.draft.Cell;
import org.headhouse.linter.draft.Faults;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The day of a visit as people and spreadsheets write it. */
class DateCellTest {
  private static @Nullable LocalDate read(String text) {
    Faults faults = new Faults(new SourceText("visit.csv", text));
    LocalDate day = new DateCell(faults).read(new Cell(text, 0, text.length()));
    assertThat(day == null).isEqualTo(!faults.isEmpty());
    return day;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-03-14",
        "2026-3-14",
        "2026/03/14",
        "2026.03.14",
        "2026-03-14 00:00:00",
        "2026-03-14T09:30",
        "'2026-03-14",
        "14.03.2026",
        "14. 3. 2026",
        "14/03/2026",
        "14-03-2026",
        "03/14/2026",
        "3/14/2026 0:00",
        "14 March 2026",
        "14. March 2026",
        "14 Mar 2026",
        "14-Mar-2026",
        "14-Mar-26",
        "14th March 2026",
        "14 march, 2026",
        "March 14, 2026",
        "Mar 14 2026",
        "Mar. 14, 2026",
        "March 14th, 2026"
      })
  void itIsUnderstood(String text) {
    assertThat(read(text)).isEqualTo(LocalDate.of(2026, 3, 14));
  }

  /** Points are always day first; a day that is its own month can be read in one way only. */
  @ParameterizedTest
  @CsvSource({"03.04.2026, 2026-04-03", "05/05/2026, 2026-05-05", "1 Sept 2026, 2026-09-01"})
  void itCannotBeMisread(String text, LocalDate day) {
    assertThat(read(text)).isEqualTo(day);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "03/04/2026",
        "3-4-2026",
        "03/04/26",
        "14/03/26",
        "14.03.26",
        "14 März 2026",
        "14 Ma 2026",
        "2026-02-29",
        "31.04.2026",
        "13/13/2026",
        "32/01/2026",
        "46095",
        "March 2026",
        "14 March",
        "yesterday",
        "14/03-2026",
        "20260314"
      })
  void itIsAskedAbout(String text) {
    assertThat(read(text)).isNull();
  }

  /**
   * Whatever the short, medium or long form of a country, a day that is read is the right one. The
   * forms are those of the Unicode CLDR, as the JDK has them. Months are known by their English
   * names; three languages have a short name that is the English one of another month.
   */
  @Test
  void noFormOfACountryIsMisread() {
    Set<String> misread = new TreeSet<>();
    Set<String> tried = new HashSet<>();
    int understood = 0;
    for (Locale locale : Locale.getAvailableLocales()) {
      for (FormatStyle style : List.of(FormatStyle.SHORT, FormatStyle.MEDIUM, FormatStyle.LONG)) {
        String pattern =
            DateTimeFormatterBuilder.getLocalizedDateTimePattern(
                style, null, IsoChronology.INSTANCE, locale);
        if (!tried.add(pattern + " " + locale.getLanguage())) {
          continue;
        }
        DateTimeFormatter form = DateTimeFormatter.ofPattern(pattern, locale);
        for (int month = 1; month <= 12; month++) {
          for (int day : List.of(4, 13)) {
            LocalDate date = LocalDate.of(2026, month, day);
            LocalDate read = read(date.format(form));
            understood += date.equals(read) ? 1 : 0;
            if (read != null && !date.equals(read)) {
              misread.add(locale.getLanguage() + " " + style);
            }
          }
        }
      }
    }
    assertThat(misread).containsExactly("bas MEDIUM", "dua MEDIUM", "teo MEDIUM");
    assertThat(understood).isGreaterThan(3000);
  }
}
