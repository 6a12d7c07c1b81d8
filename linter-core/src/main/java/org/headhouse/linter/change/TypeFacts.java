package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.TerminalMarks;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a type of device that decides how its pair is landed, and what it does to the
 * pair. A line that was laid out and proved by one such fact is not proved for another, though its
 * own file is the same.
 */
@Internal
public final class TypeFacts {
  private static final String UNIT_LOAD = "unit-load";
  private static final String IDLE_BIAS = "idle-bias";
  private static final String ISOLATED = "isolated";

  private TypeFacts() {}

  /** In what two states of the same type differ. */
  private static List<ValueChange> between(DeviceType from, DeviceType to) {
    List<ValueChange> changes =
        new ArrayList<>(
            SettingComparison.change(
                "positive-terminal",
                from.positiveTerminalSetting(),
                to.positiveTerminalSetting(),
                Conductor.B));
    mark("terminals.positive", from, to, TerminalMarks::positive, changes);
    mark("terminals.negative", from, to, TerminalMarks::negative, changes);
    mark("terminals.common", from, to, TerminalMarks::common, changes);
    SettingComparison.compare(UNIT_LOAD, from.unitLoadSetting(), to.unitLoadSetting(), changes);
    SettingComparison.compare(IDLE_BIAS, from.idleBias(), to.idleBias(), changes);
    SettingComparison.compare(ISOLATED, from.isolated(), to.isolated(), changes);
    return changes;
  }

  private static void mark(
      String what,
      DeviceType from,
      DeviceType to,
      Function<TerminalMarks, Setting<?>> mark,
      List<ValueChange> changes) {
    SettingComparison.compare(
        what,
        SettingComparison.in(from.transceiver().terminals().orNull(), mark),
        SettingComparison.in(to.transceiver().terminals().orNull(), mark),
        changes);
  }

  /**
   * The differences at types that an item had and has, each once. A type that is not known in one
   * of the states is compared with nothing.
   */
  static List<Difference> differences(List<TrackedItem> items) {
    List<Difference> found = new ArrayList<>();
    for (TrackedItem item : items) {
      ChainItem before = item.before();
      ChainItem after = item.after();
      if (before != null
          && after != null
          && before.type().isKnown()
          && after.type().isKnown()
          && Objects.equals(before.deviceType().orNull(), after.deviceType().orNull())) {
        for (ValueChange change : between(before.type(), after.type())) {
          Difference difference = new Difference.TypeSet(after.deviceType().or(""), change);
          if (decides(after, change.what()) && !found.contains(difference)) {
            found.add(difference);
          }
        }
      }
    }
    return found;
  }

  /** The items that a fact of a type decides something of, along the chain. */
  static List<ChainItem> items(Site site, Difference.TypeSet fact) {
    return site.items().stream()
        .filter(item -> item.deviceType().is(fact.type()) && decides(item, fact.setting().what()))
        .toList();
  }

  /**
   * What to do on the line where a fact was another before, which no step can know: the file may
   * have been wrong then.
   */
  static String remark(Site after, Difference.TypeSet fact) {
    ValueChange change = fact.setting();
    String names =
        items(after, fact).stream()
            .map(item -> "\"" + item.name().or("") + "\"")
            .collect(Collectors.joining(", "));
    return "The device types say "
        + change.what()
        + ": "
        + change.to()
        + " of the type \""
        + fact.type()
        + "\", and before "
        + change.from()
        + ": see in its manual which is right, and whether "
        + names
        + (isLoad(fact) || change.what().equals(ISOLATED)
            ? " are right for this line as it is."
            : " are landed by it. Isolate and lock off the supply before you open a unit.");
  }

  /** Whether something across the pair changes with it, and not only how the pair is landed. */
  static boolean isLoad(Difference.TypeSet fact) {
    return fact.setting().what().equals(UNIT_LOAD) || fact.setting().what().equals(IDLE_BIAS);
  }

  /** Whether an item does not say so itself. */
  private static boolean decides(ChainItem item, String what) {
    return switch (what) {
      case UNIT_LOAD -> isMissing(item, Connection::unitLoad);
      case IDLE_BIAS -> isMissing(item, Connection::idleBias);
      case ISOLATED -> item.device().isolated().isMissing();
      default -> true;
    };
  }

  private static boolean isMissing(ChainItem item, Function<Connection, Setting<?>> value) {
    return Stream.of(Side.values())
        .anyMatch(side -> value.apply(item.connection(side)).isMissing());
  }

  /**
   * All such facts of the types that a site names, as text: where it is the same, no type has
   * changed for the site.
   */
  public static String of(Site site, DeviceTypes types) {
    TreeSet<String> ids = new TreeSet<>();
    site.items().forEach(item -> item.deviceType().optional().ifPresent(ids::add));
    return ids.stream()
        .map(id -> id + ": " + written(types.get(id)))
        .collect(Collectors.joining("\n"));
  }

  private static @Nullable String written(DeviceType type) {
    return type.isKnown()
        ? between(DeviceType.UNKNOWN, type).stream()
            .map(change -> change.what() + " " + change.to())
            .collect(Collectors.joining(", "))
        : null;
  }
}
