package org.headhouse.linter.bind;

import java.util.List;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Measured;
import org.headhouse.linter.site.MeasuredAt;
import org.headhouse.linter.site.Meter;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.StormResponse;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Mapping;

/** Binds the record of commissioning. */
final class CommissioningBinder {
  private static final int ANY_NUMBER = Integer.MAX_VALUE;
  private static final List<Side> SIDES = List.of(Side.values());

  private CommissioningBinder() {}

  static Commissioning commissioning(MappingReader keys, Place place) {
    return new Commissioning(
        proved(keys, place, new Setting.Missing<>(place)),
        keys.optional("renewed")
            .list(
                0,
                ANY_NUMBER,
                item ->
                    item.mapping(
                        (inner, at) ->
                            proved(inner, at, SiteBinder.text(inner.optional("reason"))))));
  }

  private static ProvingRecord proved(MappingReader keys, Place place, Setting<String> reason) {
    return new ProvingRecord(
        place,
        keys.required("date").recordDate(),
        SiteBinder.text(keys.required("by")),
        reason,
        keys.optional("measured").mapping(CommissioningBinder::measured),
        names(keys.optional("outdoor-readings-seen")),
        keys.optional("storm-response-seen").list(0, ANY_NUMBER, CommissioningBinder::storm),
        names(keys.optional("stale-response-seen")),
        keys.optional("meter").mapping(CommissioningBinder::meter));
  }

  private static Setting<List<Setting<String>>> names(ValueReader value) {
    return value.list(0, ANY_NUMBER, SiteBinder::name);
  }

  private static Measured measured(MappingReader keys, Place place) {
    return new Measured(
        place,
        keys.optional("pair-resistance").parsed(Quantities::resistance),
        keys.optional("idle-voltage").parsed(Quantities::measuredVoltage),
        keys.optional("elsewhere")
            .list(0, ANY_NUMBER, item -> item.mapping(CommissioningBinder::measuredAt)));
  }

  private static MeasuredAt measuredAt(MappingReader keys, Place place) {
    return new MeasuredAt(
        place,
        SiteBinder.name(keys.required("at")),
        keys.optional("side").word(SIDES),
        keys.optional("pair-resistance").parsed(Quantities::resistance),
        keys.optional("idle-voltage").parsed(Quantities::measuredVoltage));
  }

  /** A name alone, or what was stopped by the watch. */
  private static Setting<StormResponse> storm(ValueReader value) {
    if (value.cursor() != null && value.cursor().node() instanceof Mapping) {
      return value.mapping(
          (keys, place) ->
              new StormResponse(
                  place,
                  SiteBinder.name(keys.required("unit")),
                  keys.optional("limit").parsed(Quantities::windSpeed),
                  SiteBinder.period(keys.optional("closed-in"))));
    }
    Setting<String> name = SiteBinder.name(value);
    Place place = name.place();
    return name.isGiven()
        ? new Setting.Given<>(
            new StormResponse(
                place, name, new Setting.Missing<>(place), new Setting.Missing<>(place)),
            place)
        : new Setting.Faulty<>(place);
  }

  private static Meter meter(MappingReader keys, Place place) {
    return new Meter(
        place,
        SiteBinder.text(keys.optional("type")),
        SiteBinder.text(keys.optional("serial-number")),
        keys.optional("calibrated-until").date());
  }
}
