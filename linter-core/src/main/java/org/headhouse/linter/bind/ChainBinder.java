package org.headhouse.linter.bind;

import java.util.List;
import java.util.function.BiFunction;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Network;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.StaleAction;
import org.headhouse.linter.site.SurgeProtection;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.Vents;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Cursor;

/** Binds the items of a chain, in order. */
final class ChainBinder {
  private static final List<Role> ROLES = List.of(Role.values());
  private static final List<CommModule> MODULES = List.of(CommModule.values());
  private static final List<Conductor> CONDUCTORS = List.of(Conductor.values());
  private static final List<Vents> VENTS = List.of(Vents.values());
  private static final List<StaleAction> ACTIONS = List.of(StaleAction.values());
  private static final List<Pair> PAIRS = List.of(Pair.values());
  private static final List<Run> RUNS = List.of(Run.values());
  private static final List<SurgeProtection> PROTECTIONS = List.of(SurgeProtection.values());
  private static final int MOST_CONDUCTORS = 8;

  private final DeviceTypes types;
  private final BiFunction<Fields, Place, ChainItem> unit = this::unit;
  private final BiFunction<Fields, Place, ChainItem> repeater = this::repeater;
  private int position = -1;

  ChainBinder(DeviceTypes types) {
    this.types = types;
  }

  ChainItem item(Field field) {
    position++;
    Cursor cursor = field.cursor();
    boolean isRepeater = cursor != null && cursor.entry("repeater") != null;
    Setting<ChainItem> item = field.mapping(isRepeater ? repeater : unit);
    ChainItem given = item.orNull();
    return given == null ? unknown(item.place(), position) : given;
  }

  private Unit unit(Fields fields, Place place) {
    Setting<String> name = SiteBinder.name(fields.required("unit"));
    Setting<Role> role = fields.required("role").word(ROLES);
    Setting<Integer> address = fields.required("address").integer(0, 255);
    Setting<String> deviceType = SiteBinder.id(fields.optional("device-type"));
    return new Unit(
        place,
        position,
        name,
        role,
        address,
        deviceType,
        types.get(deviceType.orNull()),
        fields.optional("firmware").text(1, 200),
        fields.required("comm-module").word(MODULES),
        fields.required("conductors").list(0, MOST_CONDUCTORS, item -> item.word(CONDUCTORS)),
        fields.optional("termination").parsed(Quantities::termination),
        fields.optional("outdoor").mapping(SiteBinder::outdoor),
        fields.optional("vents").word(VENTS),
        fields.optional("on-stale-readings").word(ACTIONS),
        fields.optional("pair").word(PAIRS),
        fields.optional("stub").parsed(Quantities::length),
        fields.optional("network").mapping(ChainBinder::network),
        fields.optional("cable-to-next").parsed(Quantities::length),
        fields.optional("run-to-next").word(RUNS),
        fields.optional("surge-protection-to-next").word(PROTECTIONS));
  }

  private static Network network(Fields fields, Place place) {
    return new Network(
        place,
        fields.required("ip").text(0, Integer.MAX_VALUE),
        fields.optional("gateway").text(0, Integer.MAX_VALUE));
  }

  private record Sides(Setting<Termination> in, Setting<Termination> out) {}

  private Repeater repeater(Fields fields, Place place) {
    Setting<String> name = SiteBinder.name(fields.required("repeater"));
    Setting<Sides> sides =
        fields
            .optional("termination")
            .mapping(
                (inner, at) ->
                    new Sides(
                        inner.optional("in").parsed(Quantities::termination),
                        inner.optional("out").parsed(Quantities::termination)));
    Setting<Termination> none =
        sides.isFaulty()
            ? new Setting.Faulty<>(sides.place())
            : new Setting.Missing<>(sides.place());
    Sides given = sides.orNull();
    return new Repeater(
        place,
        position,
        name,
        sides.place(),
        given == null ? none : given.in(),
        given == null ? none : given.out(),
        fields.optional("cable-to-next").parsed(Quantities::length),
        fields.optional("run-to-next").word(RUNS),
        fields.optional("surge-protection-to-next").word(PROTECTIONS));
  }

  /** What stands for an item that is not a mapping: a unit of which nothing is understood. */
  private static Unit unknown(Place place, int position) {
    return new Unit(
        place,
        position,
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        DeviceType.UNKNOWN,
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
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place),
        new Setting.Faulty<>(place));
  }
}
