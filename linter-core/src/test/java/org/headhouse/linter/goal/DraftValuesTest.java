package org.headhouse.linter.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parameters of a draft are written as in site files. */
class DraftValuesTest {

  @Test
  void whatSiteFilesHaveIsRead() throws UserError {
    assertThat(DraftValues.parity("linter.parity", "none")).isEqualTo(Parity.NONE);
    assertThat(DraftValues.readings("linter.readings", List.of("rain", " wind-speed ")))
        .containsExactly(Reading.RAIN, Reading.WIND_SPEED);
    assertThat(DraftValues.gauge("linter.gauge", "0.5mm2").written()).isEqualTo("0.5 mm2");
    assertThat(DraftValues.resistance("linter.impedance", "120 ohm").ohms()).isEqualTo(120);
    assertThat(DraftValues.voltage("linter.biasSupply", "3.3 V").volts()).isEqualTo(3.3);
  }

  private static Object read(String name, String written) throws UserError {
    String property = "linter." + name;
    return switch (name) {
      case "parity" -> DraftValues.parity(property, written);
      case "readings" -> DraftValues.readings(property, List.of(written));
      case "gauge" -> DraftValues.gauge(property, written);
      case "impedance" -> DraftValues.resistance(property, written);
      default -> DraftValues.voltage(property, written);
    };
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          parity     | evn    | even
          parity     | mark   | one of even, odd, none
          readings   | windspeed | wind-speed
          gauge      | 24     | a number with AWG or mm2
          gauge      | 41 AWG | a number with AWG or mm2
          impedance  | 120    | a number with ohm or kohm
          biasSupply | 5      | a number with V or mV
          """)
  void otherWordsAreQuotedWithWhatToWrite(String name, String written, String remedy) {
    assertThatThrownBy(() -> read(name, written))
        .isInstanceOf(UserError.class)
        .hasMessage("linter." + name + " cannot be \"" + written + "\": use " + remedy);
  }
}
