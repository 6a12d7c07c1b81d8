package org.headhouse.linter.bind;

import java.util.List;
import org.headhouse.linter.site.FoundReading;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Toward;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Mapping;

/** Binds the readings of a line that misbehaves. */
final class AsFoundBinder {
  private static final List<Side> SIDES = List.of(Side.values());
  private static final List<Toward> WAYS = List.of(Toward.values());
  private static final String FIRST_SILENT = "first-silent";

  private AsFoundBinder() {}

  /** What was measured at an item, or where the answers end. */
  static Setting<FoundReading> reading(ValueReader value) {
    return value.mapping(
        (keys, place) -> namesSilent(value) ? silent(keys, place) : found(keys, place));
  }

  private static boolean namesSilent(ValueReader value) {
    return value.cursor() != null
        && value.cursor().node() instanceof Mapping mapping
        && mapping.entries().stream().anyMatch(it -> it.key().text().equals(FIRST_SILENT));
  }

  private static FoundReading silent(MappingReader keys, Place place) {
    return FoundReading.silent(place, SiteBinder.name(keys.required(FIRST_SILENT)));
  }

  private static FoundReading found(MappingReader keys, Place place) {
    return new FoundReading(
        place,
        SiteBinder.name(keys.required("at")),
        keys.optional("side").word(SIDES),
        keys.optional("toward").word(WAYS),
        keys.optional("pair-resistance").parsed(Quantities::resistance),
        keys.optional("loop-resistance").parsed(Quantities::resistance),
        keys.optional("idle-voltage").parsed(Quantities::measuredVoltage),
        keys.optional("d1-voltage").parsed(Quantities::measuredVoltage),
        keys.optional("d0-voltage").parsed(Quantities::measuredVoltage),
        new Setting.Missing<>(place));
  }
}
