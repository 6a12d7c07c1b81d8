package org.headhouse.linter.bind;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.FoundReading;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.Polling;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.SuppressionEntry;
import org.headhouse.linter.site.WeatherStation;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Node;

/** Binds a site definition, and what its parts have in common. */
public final class SiteBinder {
  private static final int ANY_NUMBER = Integer.MAX_VALUE;
  private static final List<Stage> STAGES = List.of(Stage.values());
  private static final List<Reading> READINGS = List.of(Reading.values());
  private static final List<Link> LINKS = List.of(Link.values());

  private SiteBinder() {}

  /** Binds the root node of a site's file. */
  public static Bound<Site> bind(SourceText source, Node.Valued root, DeviceTypes types) {
    return bind(source, root, types, new BindingIssues());
  }

  /**
   * Binds it once more where keys are not known: what stands under one that is spelt like a known
   * key counts as not understood, not as missing. For files in which such a key is an error that
   * nobody can accept, since nothing else then reports what is missing.
   */
  public static Site withMisspelt(SourceText source, Node.Valued root, DeviceTypes types) {
    return bind(source, root, types, new BindingIssues(true)).model();
  }

  private static Bound<Site> bind(
      SourceText source, Node.Valued root, DeviceTypes types, BindingIssues issues) {
    ValueReader whole =
        new ValueReader(new Cursor(root, null), Place.at(Region.START_OF_FILE), issues);
    Setting<Site> site = whole.mapping((keys, place) -> site(keys, source, types));
    return issues.bound(site.or(nothing(source)));
  }

  /** Binds readings as found that are not in a site's file, under their key alone. */
  public static Bound<List<FoundReading>> readings(Node.Valued root) {
    BindingIssues issues = new BindingIssues();
    ValueReader whole =
        new ValueReader(new Cursor(root, null), Place.at(Region.START_OF_FILE), issues);
    Setting<List<Setting<FoundReading>>> readings =
        whole
            .mapping(
                (keys, place) ->
                    keys.required("as-found").list(0, ANY_NUMBER, AsFoundBinder::reading))
            .or(new Setting.Faulty<>(Place.at(Region.START_OF_FILE)));
    if (!readings.isGiven()) {
      issues.askSchema();
    }
    return issues.bound(given(readings));
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
        new Setting.Faulty<>(place),
        List.of());
  }

  private static Site site(MappingReader keys, SourceText source, DeviceTypes types) {
    keys.required("format").oneOf(List.of(Format.VERSION));
    Setting<String> id = id(keys.required("site"));
    Setting<String> title = text(keys.optional("title"));
    Setting<String> customer = id(keys.optional("customer"));
    Setting<Stage> stage = keys.required("stage").word(STAGES);
    Setting<WeatherStation> station =
        keys.required("weather-station").mapping(SiteBinder::weatherStation);
    Setting<LineSettings> line = keys.required("line").mapping(LineBinder::line);
    ChainBinder chain = new ChainBinder(types, OutdoorBinder.of(station.orNull()));
    keys.optional("defaults").mapping(chain::defaults);
    return new Site(
        source,
        id,
        title,
        customer,
        stage,
        station,
        line,
        keys.required("chain").list(2, Format.MOST_ITEMS, chain::item),
        keys.optional("supervision").mapping(SiteBinder::supervision),
        keys.optional("commissioning").mapping(CommissioningBinder::commissioning),
        keys.optional("as-found").list(0, ANY_NUMBER, AsFoundBinder::reading),
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
        period(keys.optional("maximum-age")),
        keys.optional("averaging").parsed(Quantities::interval),
        period(keys.optional("close-within")));
  }

  /** A time above zero. */
  static Setting<Interval> period(ValueReader value) {
    return value.positive(Quantities::interval, Interval::seconds);
  }

  /** The items of a list that are understood. */
  static <T> List<T> given(Setting<List<Setting<T>>> list) {
    List<T> given = new ArrayList<>();
    for (Setting<T> item : list.or(List.of())) {
      T value = item.orNull();
      if (value != null) {
        given.add(value);
      }
    }
    return List.copyOf(given);
  }

  private static Supervision supervision(MappingReader keys, Place place) {
    return new Supervision(
        place,
        keys.required("link").word(LINKS),
        name(keys.optional("at")),
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
}
