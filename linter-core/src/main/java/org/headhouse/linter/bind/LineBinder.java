package org.headhouse.linter.bind;

import java.util.List;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.Broadcast;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.Capacitance;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Temperature;
import org.headhouse.linter.site.Voltage;
import org.headhouse.linter.source.Place;

/** Binds what a site says of the whole line. */
final class LineBinder {
  private static final double ABSOLUTE_ZERO_CELSIUS = -273.15;
  private static final Message BELOW_ABSOLUTE_ZERO =
      new Message(
          "the temperature is below absolute zero",
          "nothing can be computed with it",
          "write the highest temperature of the cable, such as 50 degC");
  private static final int ANY_NUMBER = Integer.MAX_VALUE;
  private static final List<Parity> PARITIES = List.of(Parity.values());
  private static final List<Side> SIDES = List.of(Side.values());

  private LineBinder() {}

  static LineSettings line(MappingReader keys, Place place) {
    return new LineSettings(
        place,
        keys.required("baud").oneOf(LineSettings.BAUD_RATES),
        keys.required("parity").word(PARITIES),
        keys.required("stop-bits").oneOf(List.of(1, 2)),
        keys.required("cable").mapping(LineBinder::cable),
        biases(keys.optional("bias")),
        broadcast(keys.optional("traffic")),
        keys.optional("maximum-temperature")
            .above(
                ABSOLUTE_ZERO_CELSIUS,
                Quantities::temperature,
                Temperature::celsius,
                BELOW_ABSOLUTE_ZERO));
  }

  private static Cable cable(MappingReader keys, Place place) {
    return new Cable(
        place,
        keys.required("gauge").parsed(Quantities::gauge),
        keys.required("shielded").bool(),
        ohms(keys.required("impedance")),
        keys.optional("velocity-factor").positiveNumber(1),
        keys.optional("capacitance").positive(Quantities::capacitance, Capacitance::farads));
  }

  private static Setting<Resistance> ohms(ValueReader value) {
    return value.positive(Quantities::resistance, Resistance::ohms);
  }

  private static Setting<List<Bias>> biases(ValueReader value) {
    Setting<List<Setting<Bias>>> list =
        value.list(0, ANY_NUMBER, item -> item.mapping(LineBinder::bias));
    List<Setting<Bias>> items = list.orNull();
    if (items == null) {
      return list.isMissing()
          ? new Setting.Missing<>(list.place())
          : new Setting.Faulty<>(list.place());
    }
    List<Bias> biases = SiteBinder.given(list);
    return biases.size() < items.size()
        ? new Setting.Faulty<>(list.place())
        : new Setting.Given<>(biases, list.place());
  }

  private static Bias bias(MappingReader keys, Place place) {
    return new Bias(
        place,
        SiteBinder.name(keys.required("at")),
        keys.optional("side").word(SIDES),
        ohms(keys.required("resistors")),
        keys.required("supply").positive(Quantities::voltage, Voltage::volts),
        keys.optional("tolerance").parsed(Quantities::percentage));
  }

  private static Setting<Broadcast> broadcast(ValueReader traffic) {
    Setting<Setting<Broadcast>> setting =
        traffic.mapping(
            (keys, place) ->
                keys.required("broadcast")
                    .mapping(
                        (inner, at) ->
                            new Broadcast(
                                at,
                                inner.required("registers").integer(1, Format.MOST_REGISTERS),
                                SiteBinder.period(inner.required("every")))));
    Setting<Broadcast> inner = setting.orNull();
    if (inner != null) {
      return inner;
    }
    return setting.isMissing()
        ? new Setting.Missing<>(setting.place())
        : new Setting.Faulty<>(setting.place());
  }
}
