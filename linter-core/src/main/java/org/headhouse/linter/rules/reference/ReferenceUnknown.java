package org.headhouse.linter.rules.reference;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.NameUnreadable;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Converter;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.FoundReading;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
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
              "A name that is referred to exists: a unit, an item of the chain, a device type.",
              Level.ERROR)
          .yieldingTo("name.duplicate", "name.unreadable");

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
    Known units = new Known(names(site.units()));
    boolean unitsOnly = site.items().size() == site.units().size();
    Known items = unitsOnly ? units : new Known(names(site.items()));
    WeatherStation station = site.weatherStation().orNull();
    if (station != null) {
      check(station.at(), "unit", units, context);
    }
    LineSettings line = site.line().orNull();
    for (Bias bias : line == null ? List.<Bias>of() : line.bias().or(List.of())) {
      check(bias.at(), "item of the chain", items, context);
    }
    Supervision software = site.supervision().orNull();
    if (software != null && software.at().isGiven()) {
      Known converters =
          new Known(names(site.items().stream().filter(Converter.class::isInstance).toList()));
      check(software.at(), CONVERTER, converters, context);
    }
    Commissioning record = site.commissioning().orNull();
    if (record != null) {
      check(record, units, items, context);
    }
    for (FoundReading found : site.readingsAsFound()) {
      check(found.at(), "item of the chain", items, context);
      check(found.firstSilent(), "item of the chain", items, context);
    }
    for (SuppressionEntry entry : site.suppressions()) {
      check(entry.unit(), "item of the chain", items, context);
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

  private static void check(Commissioning record, Known units, Known items, RuleContext context) {
    record
        .records()
        .forEach(one -> checkSeen(one.outdoorReadingsSeen().or(List.of()), units, context));
    record.responsesSeen().forEach(name -> check(name, "unit", units, context));
    record.placesMeasured().forEach(name -> check(name, "item of the chain", items, context));
  }

  private static void checkDeviceTypes(Site site, RuleContext context) {
    DeviceTypes types = context.deviceTypes();
    if (!types.isComplete() || types.source() == null) {
      return;
    }
    Known ids = new Known(types.ids());
    for (ChainItem item : site.items()) {
      check(item.deviceType(), "device type", ids, context);
    }
  }

  /** A name that is listed already is not proposed for another one. */
  private static void checkSeen(List<Setting<String>> seen, Known units, RuleContext context) {
    List<Setting<String>> unknown = seen.stream().filter(units::lack).toList();
    if (unknown.isEmpty()) {
      return;
    }
    Set<String> others = new LinkedHashSet<>(units.names());
    seen.forEach(name -> others.remove(name.or("")));
    Known meant = new Known(others);
    for (Setting<String> name : unknown) {
      report(name, "unit", meant, "delete it, or add the unit to the chain", context);
    }
  }

  private static void check(
      Setting<String> reference, String what, Known known, RuleContext context) {
    if (known.lack(reference)) {
      report(reference, what, known, known.remedy(what), context);
    }
  }

  private static void report(
      Setting<String> reference, String what, Known meant, String otherwise, RuleContext context) {
    Optional<String> near = meant.nearest().suggest(reference.or(""));
    if (near.filter(NameUnreadable::isUnreadable).isPresent()) {
      return;
    }
    context.report(
        context
            .finding(
                reference.place(),
                new Message(
                    "there is no " + what + " \"" + reference.or("") + "\"",
                    "what is written of it has no effect",
                    near.map(name -> "write \"" + name + "\"").orElse(otherwise)))
            .fixedBy(near.map(name -> spelling(reference, name, meant)).orElse(null)));
  }

  private static FixDraft spelling(Setting<String> reference, String name, Known meant) {
    return new FixDraft(
        meant.nearest().isCertain(reference.or(""), name) ? FixKind.SAFE : FixKind.PROPOSED,
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
