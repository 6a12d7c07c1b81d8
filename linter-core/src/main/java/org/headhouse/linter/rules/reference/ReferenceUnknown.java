package org.headhouse.linter.rules.reference;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.NameUnreadable;
import org.headhouse.linter.rules.name.OldNames;
import org.headhouse.linter.rules.name.SameLetters;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Converter;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.FoundReading;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Measured;
import org.headhouse.linter.site.MeasuredAt;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.StormResponse;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.SuppressionEntry;
import org.headhouse.linter.site.WeatherStation;
import org.headhouse.linter.source.SpellingSuggester;

/** {@code reference.unknown}. */
public final class ReferenceUnknown implements SiteRule {
  private static final int MOST_SHOWN = 8;

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "reference.unknown",
              "Every name that the file refers to exists: a unit, an item of the chain, a device type.",
              Level.ERROR)
          .yieldingTo("name.duplicate", "name.unreadable");

  private static final String ITEM = "item of the chain";
  private static final String NO_EFFECT = "whatever depends on it is not checked";
  private static final String CONVERTER = ItemKind.CONVERTER.word();

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    checkDeviceTypes(site, context);
    if (!site.allNamesKnown()) {
      return;
    }
    OldNames old = new OldNames(site, context);
    Known units = new Known(names(site.units()));
    boolean unitsOnly = site.items().size() == site.units().size();
    Known items = unitsOnly ? units : new Known(names(site.items()));
    WeatherStation station = site.weatherStation().orNull();
    if (station != null) {
      check(station.at(), "unit", units, old, context);
    }
    LineSettings line = site.line().orNull();
    for (Bias bias : line == null ? List.<Bias>of() : line.bias().or(List.of())) {
      check(bias.at(), ITEM, items, old, context);
    }
    Supervision software = site.supervision().orNull();
    if (software != null && software.at().isGiven()) {
      Known converters =
          new Known(names(site.items().stream().filter(Converter.class::isInstance).toList()));
      check(software.at(), CONVERTER, converters, old, context);
    }
    Commissioning record = site.commissioning().orNull();
    if (record != null) {
      record.records().forEach(one -> check(one, units, items, old, context));
    }
    for (FoundReading found : site.readingsAsFound()) {
      // Spelt like another item it would be read there.
      checkProposed(found.at(), items, old, context);
      checkProposed(found.firstSilent(), items, old, context);
    }
    for (SuppressionEntry entry : site.suppressions()) {
      // Spelt like another unit it would hide the faults of that one.
      checkProposed(entry.unit(), items, old, context);
    }
  }

  private static void checkProposed(
      Setting<String> reference, Known items, OldNames old, RuleContext context) {
    if (items.lack(reference)) {
      report(reference, ITEM, items, items.remedy(ITEM), FixKind.PROPOSED, old, context);
    }
  }

  private static Set<String> names(List<? extends ChainItem> items) {
    Set<String> names = new LinkedHashSet<>();
    for (ChainItem item : items) {
      String name = item.name().orNull();
      if (name != null) {
        names.add(name);
      }
    }
    return names;
  }

  private static void check(
      ProvingRecord record, Known units, Known items, OldNames old, RuleContext context) {
    checkAll(record.outdoorReadingsSeen().or(List.of()), "unit", units, old, context);
    List<Setting<String>> storms = new ArrayList<>();
    for (Setting<StormResponse> one : record.stormResponseSeen().or(List.of())) {
      one.optional().ifPresent(storm -> storms.add(storm.unit()));
    }
    checkAll(storms, "unit", units, old, context);
    checkAll(record.staleResponseSeen().or(List.of()), "unit", units, old, context);
    List<Setting<String>> places = new ArrayList<>();
    Measured measured = record.measured().orNull();
    if (measured != null) {
      for (Setting<MeasuredAt> one : measured.elsewhere().or(List.of())) {
        one.optional().ifPresent(place -> places.add(place.at()));
      }
    }
    checkAll(places, ITEM, items, old, context);
  }

  private static void checkDeviceTypes(Site site, RuleContext context) {
    DeviceTypes types = context.deviceTypes();
    if (!types.isComplete() || types.source() == null) {
      return;
    }
    Known ids = new Known(types.ids());
    for (ChainItem item : site.items()) {
      Setting<String> type = item.deviceType();
      if (ids.lack(type)) {
        Optional<String> near = ids.nearest().suggest(type.or(""));
        context.report(
            finding(type, "device type", near, ids.remedy("device type"), context)
                .fixedBy(near.map(name -> spelling(type, name, ids, FixKind.SAFE)).orElse(null)));
      }
    }
  }

  /**
   * Names of a list that proves something. One that is listed already is not proposed for another,
   * and no spelling is safe: nobody knows whether the unit of that name was meant, and what was
   * seen at one unit proves nothing of another.
   */
  private static void checkAll(
      List<Setting<String>> listed, String what, Known known, OldNames old, RuleContext context) {
    List<Setting<String>> unknown = new ArrayList<>(0);
    for (Setting<String> name : listed) {
      if (known.lack(name)) {
        unknown.add(name);
      }
    }
    if (unknown.isEmpty()) {
      return;
    }
    Set<String> others = new LinkedHashSet<>(known.names());
    listed.forEach(name -> others.remove(name.or("")));
    Known meant = new Known(others);
    String otherwise = "delete it, or add the " + what.split(" ", 2)[0] + " to the chain";
    for (Setting<String> name : unknown) {
      report(name, what, meant, otherwise, FixKind.PROPOSED, old, context);
    }
  }

  private static void check(
      Setting<String> reference, String what, Known known, OldNames old, RuleContext context) {
    if (known.lack(reference)) {
      report(reference, what, known, known.remedy(what), FixKind.SAFE, old, context);
    }
  }

  private static void report(
      Setting<String> reference,
      String what,
      Known meant,
      String otherwise,
      FixKind safest,
      OldNames old,
      RuleContext context) {
    Finding renamed = old.finding(reference, NO_EFFECT, otherwise);
    if (renamed != null) {
      context.report(renamed);
      return;
    }
    String name = reference.or("");
    Optional<String> near = old.has(name) ? Optional.empty() : meant.nearest().suggest(name);
    if (near.filter(NameUnreadable::isUnreadable).isEmpty()) {
      context.report(
          finding(reference, what, near, otherwise, context)
              .fixedBy(near.map(one -> spelling(reference, one, meant, safest)).orElse(null)));
    }
  }

  private static Finding finding(
      Setting<String> reference,
      String what,
      Optional<String> near,
      String otherwise,
      RuleContext context) {
    return context.finding(
        reference.place(),
        new Message(
            "there is no " + what + " \"" + reference.or("") + "\"",
            NO_EFFECT,
            near.map(name -> SameLetters.remedy(reference.or(""), name)).orElse(otherwise)));
  }

  private static FixDraft spelling(
      Setting<String> reference, String name, Known meant, FixKind safest) {
    boolean certain = meant.nearest().isCertain(reference.or(""), name);
    return new FixDraft(
        certain ? safest : FixKind.PROPOSED,
        "Spell it \"" + name + "\"",
        List.of(Edit.write(reference.place(), name)));
  }

  /** Names that may be referred to. */
  private record Known(Set<String> names, SpellingSuggester nearest) {
    Known(Set<String> names) {
      this(names, new SpellingSuggester(names));
    }

    boolean lack(Setting<String> reference) {
      String name = reference.orNull();
      return name != null && !names.contains(name);
    }

    String remedy(String what) {
      if (names.isEmpty()) {
        return what.equals(CONVERTER)
            ? "delete it, or add the converter to the chain"
            : "delete it";
      }
      String first =
          names.stream().limit(MOST_SHOWN).collect(Collectors.joining("\", \"", "\"", "\""));
      return "write one of " + first + (names.size() > MOST_SHOWN ? " …" : "");
    }
  }
}
