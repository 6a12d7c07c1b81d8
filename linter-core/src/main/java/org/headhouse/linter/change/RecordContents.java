package org.headhouse.linter.change;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.site.Measured;
import org.headhouse.linter.site.MeasuredAt;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.StormResponse;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** What was measured and seen according to one record, by its meaning: 63 ohm is 63.0 ohm. */
@Internal
public record RecordContents(Set<String> facts) {

  public RecordContents {
    facts = Set.copyOf(facts);
  }

  /** The contents of a record, in whatever order it has them. */
  public static RecordContents of(ProvingRecord record) {
    Set<String> facts = new TreeSet<>();
    Measured measured = record.measured().orNull();
    if (measured != null) {
      add("pair-resistance", measured.pairResistance(), facts);
      add("idle-voltage", measured.idleVoltage(), facts);
      for (Setting<MeasuredAt> one : measured.elsewhere().or(List.of())) {
        one.optional().ifPresent(it -> add(it, facts));
      }
    }
    for (Setting<String> unit : record.outdoorReadingsSeen().or(List.of())) {
      add("outdoor-readings-seen", unit, facts);
    }
    for (Setting<String> unit : record.staleResponseSeen().or(List.of())) {
      add("stale-response-seen", unit, facts);
    }
    for (Setting<StormResponse> one : record.stormResponseSeen().or(List.of())) {
      one.optional().ifPresent(it -> add(it, facts));
    }
    return new RecordContents(facts);
  }

  private static void add(MeasuredAt one, Set<String> facts) {
    String at = SettingComparison.text(one.at()) + " " + SettingComparison.text(one.side());
    add("pair-resistance " + at, one.pairResistance(), facts);
    add("idle-voltage " + at, one.idleVoltage(), facts);
  }

  private static void add(StormResponse one, Set<String> facts) {
    String unit = "storm-response-seen " + SettingComparison.text(one.unit());
    facts.add(unit);
    add(unit + " limit", one.limit(), facts);
    add(unit + " closed-in", one.closedIn(), facts);
  }

  private static void add(String what, Setting<?> value, Set<String> facts) {
    @Nullable String meaning = SettingComparison.meaning(value);
    if (meaning != null) {
      facts.add(what + " = " + meaning);
    }
  }

  /** Whether nothing was measured and seen. */
  public boolean isEmpty() {
    return facts.isEmpty();
  }
}
