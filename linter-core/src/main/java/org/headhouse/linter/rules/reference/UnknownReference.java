package org.headhouse.linter.rules.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.UnreadableName;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Nearest;

/** {@code reference.unknown}. */
public final class UnknownReference implements SiteRule {
  private static final int MOST_SHOWN = 8;

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("reference.unknown", "A name that is referred to is there.", Level.ERROR);

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
    List<String> units = names(site.units());
    List<String> items = names(site.items());
    site.weatherStation()
        .optional()
        .ifPresent(station -> check(station.at(), "unit", units, context));
    List<Bias> biases =
        site.line().optional().map(line -> line.bias().or(List.of())).orElse(List.of());
    biases.forEach(bias -> check(bias.at(), "item of the chain", items, context));
    site.commissioning()
        .optional()
        .ifPresent(record -> checkSeen(record.outdoorReadingsSeen().or(List.of()), units, context));
    site.suppressions().forEach(entry -> check(entry.unit(), "item of the chain", items, context));
  }

  private static List<String> names(List<? extends ChainItem> items) {
    List<String> names = new ArrayList<>(items.size());
    for (ChainItem item : items) {
      String name = item.name().orNull();
      if (name != null) {
        names.add(name);
      }
    }
    return names;
  }

  private static void checkDeviceTypes(Site site, RuleContext context) {
    DeviceTypes types = context.deviceTypes();
    if (!types.isComplete() || types.source() == null) {
      return;
    }
    List<String> ids = List.copyOf(types.ids());
    site.units().forEach(unit -> check(unit.deviceType(), "device type", ids, context));
  }

  /** A unit that is gone from the chain is not to be replaced by one that is listed anyway. */
  private static void checkSeen(
      List<Setting<String>> seen, List<String> units, RuleContext context) {
    for (Setting<String> name : seen) {
      if (isUnknown(name, units)) {
        List<String> listed = seen.stream().flatMap(one -> one.optional().stream()).toList();
        List<String> others = units.stream().filter(unit -> !listed.contains(unit)).toList();
        report(name, "unit", others, "delete it, or add the unit to the chain", context);
      }
    }
  }

  private static void check(
      Setting<String> reference, String what, List<String> known, RuleContext context) {
    if (isUnknown(reference, known)) {
      report(
          reference,
          what,
          known,
          known.isEmpty() ? "delete it" : "write one of " + shown(known),
          context);
    }
  }

  private static boolean isUnknown(Setting<String> reference, List<String> known) {
    String name = reference.orNull();
    return name != null && !known.contains(name);
  }

  private static void report(
      Setting<String> reference,
      String what,
      List<String> meant,
      String otherwise,
      RuleContext context) {
    Optional<String> near = Nearest.to(reference.or(""), meant);
    if (near.filter(UnreadableName::isUnreadable).isPresent()) {
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
            .fixedBy(near.map(name -> spelling(reference, name)).orElse(null)));
  }

  private static FixDraft spelling(Setting<String> reference, String name) {
    return FixDraft.inFile("Spell it \"" + name + "\"", Edit.write(reference.place(), name));
  }

  private static String shown(List<String> known) {
    String first =
        known.stream().limit(MOST_SHOWN).collect(Collectors.joining("\", \"", "\"", "\""));
    return known.size() > MOST_SHOWN ? first + " …" : first;
  }
}
