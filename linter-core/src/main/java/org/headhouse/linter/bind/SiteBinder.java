package org.headhouse.linter.bind;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.Broadcast;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.Outdoor;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Polling;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.SuppressionEntry;
import org.headhouse.linter.site.Temperature;
import org.headhouse.linter.site.Voltage;
import org.headhouse.linter.site.WeatherStation;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Node;

/** Binds a site definition. */
public final class SiteBinder {
  private static final double ABSOLUTE_ZERO_CELSIUS = -273.15;
  private static final Message BELOW_ABSOLUTE_ZERO =
      new Message(
          "the temperature is below absolute zero",
          "nothing can be computed with it",
          "write the highest temperature of the cable, such as 50 degC");
  private static final int ANY_NUMBER = Integer.MAX_VALUE;
  private static final List<Stage> STAGES = List.of(Stage.values());
  private static final List<Reading> READINGS = List.of(Reading.values());
  private static final List<ReadingSource> SOURCES = List.of(ReadingSource.values());
  private static final List<Parity> PARITIES = List.of(Parity.values());
  private static final List<Link> LINKS = List.of(Link.values());

  private SiteBinder() {}

  /** Binds the root node of a site's file. */
  public static Bound<Site> bind(SourceText source, Node.Valued root, DeviceTypes types) {
    BindingIssues issues = new BindingIssues();
    ValueReader whole =
        new ValueReader(new Cursor(root, null), Place.at(Region.START_OF_FILE), issues);
    Setting<Site> site = whole.mapping((keys, place) -> site(keys, source, types));
    return issues.bound(site.or(nothing(source)));
  }

  private static Site nothing(SourceText source) {
    Place place = Place.at(Region.START_OF_FILE);
    return new Site(
        source,
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        List.of());
  }

  private static Site site(MappingReader keys, SourceText source, DeviceTypes types) {
    keys.required("format").oneOf(List.of(Format.VERSION));
    ChainBinder chain = new ChainBinder(types);
    return new Site(
        source,
        id(keys.required("site")),
        text(keys.optional("title")),
        id(keys.optional("customer")),
        keys.required("stage").word(STAGES),
        keys.required("weather-station").mapping(SiteBinder::weatherStation),
        keys.required("line").mapping(SiteBinder::line),
        keys.required("chain").list(2, Format.MOST_ITEMS, chain::item),
        keys.optional("supervision").mapping(SiteBinder::supervision),
        keys.optional("commissioning").mapping(SiteBinder::commissioning),
        given(keys.optional("suppressions").list(0, ANY_NUMBER, SiteBinder::suppression)));
  }

  /** Lower-case words of letters and digits with hyphens between. */
  static Setting<String> id(ValueReader value) {
    return value.parsed(text -> Format.isId(text) ? text : null);
  }

  /** The name of an item of the chain, where it is given or referred to. */
  static Setting<String> name(ValueReader value) {
    return text(value);
  }

  /** A text of one line. */
  static Setting<String> text(ValueReader value) {
    return value.text(1, Format.LONGEST_TEXT);
  }

  private static WeatherStation weatherStation(MappingReader keys, Place place) {
    return new WeatherStation(
        place,
        name(keys.required("at")),
        keys.required("readings").set(item -> item.word(READINGS)),
        period(keys.optional("maximum-age")));
  }

  private static Setting<Interval> period(ValueReader value) {
    return value.positive(Quantities::interval, Interval::seconds);
  }

  private static LineSettings line(MappingReader keys, Place place) {
    return new LineSettings(
        place,
        keys.required("baud").oneOf(LineSettings.BAUD_RATES),
        keys.required("parity").word(PARITIES),
        keys.required("stop-bits").oneOf(List.of(1, 2)),
        keys.required("cable").mapping(SiteBinder::cable),
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
        ohms(keys.required("impedance")));
  }

  private static Setting<Resistance> ohms(ValueReader value) {
    return value.positive(Quantities::resistance, Resistance::ohms);
  }

  private static Setting<List<Bias>> biases(ValueReader value) {
    Setting<List<Setting<Bias>>> list =
        value.list(0, ANY_NUMBER, item -> item.mapping(SiteBinder::bias));
    List<Setting<Bias>> items = list.orNull();
    if (items == null) {
      return list.isMissing()
          ? new Setting.Missing<>(list.place())
          : new Setting.Faulty<>(list.place());
    }
    List<Bias> biases = given(list);
    return biases.size() < items.size()
        ? new Setting.Faulty<>(list.place())
        : new Setting.Given<>(biases, list.place());
  }

  /** The items of a list that are understood. */
  private static <T> List<T> given(Setting<List<Setting<T>>> list) {
    List<T> given = new ArrayList<>();
    for (Setting<T> item : list.or(List.of())) {
      T value = item.orNull();
      if (value != null) {
        given.add(value);
      }
    }
    return List.copyOf(given);
  }

  private static Bias bias(MappingReader keys, Place place) {
    return new Bias(
        place,
        name(keys.required("at")),
        ohms(keys.required("resistors")),
        keys.required("supply").positive(Quantities::voltage, Voltage::volts));
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
                                period(inner.required("every")))));
    Setting<Broadcast> inner = setting.orNull();
    if (inner != null) {
      return inner;
    }
    return setting.isMissing()
        ? new Setting.Missing<>(setting.place())
        : new Setting.Faulty<>(setting.place());
  }

  private static Supervision supervision(MappingReader keys, Place place) {
    return new Supervision(
        place,
        keys.required("link").word(LINKS),
        keys.required("zones").list(0, ANY_NUMBER, SiteBinder::name),
        keys.optional("polling").mapping(SiteBinder::polling));
  }

  private static Polling polling(MappingReader keys, Place place) {
    return new Polling(
        place,
        period(keys.required("every")),
        keys.required("registers").integer(1, Format.MOST_REGISTERS),
        period(keys.optional("timeout")),
        keys.optional("retries").integer(0, Format.MOST_RETRIES));
  }

  private static Commissioning commissioning(MappingReader keys, Place place) {
    Setting<Measured> measured = keys.optional("measured").mapping(SiteBinder::measured);
    Measured values = measured.orNull();
    Setting<Resistance> noResistance = new Setting.Missing<>(measured.place());
    Setting<Voltage> noVoltage = new Setting.Missing<>(measured.place());
    return new Commissioning(
        place,
        keys.required("date").date(),
        text(keys.required("by")),
        values == null ? noResistance : values.pairResistance(),
        values == null ? noVoltage : values.idleVoltage(),
        keys.optional("outdoor-readings-seen").list(0, ANY_NUMBER, SiteBinder::name));
  }

  private record Measured(Setting<Resistance> pairResistance, Setting<Voltage> idleVoltage) {}

  private static Measured measured(MappingReader keys, Place place) {
    return new Measured(
        keys.optional("pair-resistance").parsed(Quantities::resistance),
        keys.optional("idle-voltage").parsed(Quantities::voltage));
  }

  private static Setting<SuppressionEntry> suppression(ValueReader value) {
    return value.mapping(
        (keys, place) ->
            new SuppressionEntry(
                place,
                keys.required("rule").text(0, ANY_NUMBER),
                name(keys.optional("unit")),
                justification(keys.required("justification"), value.issues()),
                keys.optional("until").date()));
  }

  private static Setting<String> justification(ValueReader value, BindingIssues issues) {
    Setting<String> setting = value.text(1, ANY_NUMBER);
    String text = setting.orNull();
    if (text == null || !saysNothing(text)) {
      return setting;
    }
    issues.report(
        "schema.bad-value",
        setting.place(),
        new Message(
            "the justification \"" + text + "\" says nothing",
            "the next person cannot tell whether the reason still holds",
            "write why this is accepted"));
    return new Setting.Faulty<>(setting.place());
  }

  private static boolean saysNothing(String text) {
    String word = text.strip();
    return word.isEmpty()
        || word.equalsIgnoreCase("todo")
        || word.equalsIgnoreCase("tbd")
        || word.chars().noneMatch(Character::isLetter);
  }

  /** Where a follower or the head unit takes each reading from. */
  static Outdoor outdoor(MappingReader keys, Place place) {
    Map<Reading, Setting<ReadingSource>> sources = new EnumMap<>(Reading.class);
    for (Reading reading : READINGS) {
      Setting<ReadingSource> source = keys.optional(reading.word()).word(SOURCES);
      if (!source.isMissing()) {
        sources.put(reading, source);
      }
    }
    return new Outdoor(place, sources);
  }
}
