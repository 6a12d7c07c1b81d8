package org.headhouse.linter.bind;

import java.util.List;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.Device;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.Identity;
import org.headhouse.linter.site.Length;
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
import org.headhouse.linter.site.TrunkRun;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.VentControl;
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

  private final DeviceTypes types;
  private int index;

  ChainBinder(DeviceTypes types) {
    this.types = types;
  }

  ChainItem item(ValueReader value) {
    int position = index++;
    Cursor cursor = value.cursor();
    boolean repeater = cursor != null && cursor.entry("repeater") != null;
    Setting<ChainItem> item =
        value.mapping(
            (keys, place) ->
                repeater ? repeater(keys, place, position) : unit(keys, place, position));
    return item.optional().orElseGet(() -> unknown(item.place(), position));
  }

  private Unit unit(MappingReader keys, Place place, int position) {
    Identity identity = new Identity(place, position, SiteBinder.name(keys.required("unit")));
    Setting<Role> role = keys.required("role").word(ROLES);
    Setting<Integer> address = address(keys.required("address"));
    Setting<String> typeId = SiteBinder.id(keys.optional("device-type"));
    Setting<String> firmware = SiteBinder.text(keys.optional("firmware"));
    Setting<CommModule> module = keys.required("comm-module").word(MODULES);
    Setting<List<Setting<Conductor>>> conductors = conductors(keys.required("conductors"));
    Setting<Termination> termination = keys.optional("termination").parsed(Quantities::termination);
    VentControl ventControl =
        new VentControl(
            keys.optional("outdoor").mapping(SiteBinder::outdoor),
            keys.optional("vents").word(VENTS),
            keys.optional("on-stale-readings").word(ACTIONS));
    Setting<Pair> pair = keys.optional("pair").word(PAIRS);
    Setting<Length> stub = keys.optional("stub").parsed(Quantities::length);
    Setting<Network> network = keys.optional("network").mapping(ChainBinder::network);
    return new Unit(
        identity,
        new Device(typeId, types.get(typeId.orNull())),
        new Connection(conductors, termination, pair, stub),
        toNext(keys),
        role,
        address,
        firmware,
        module,
        ventControl,
        network);
  }

  private static Setting<Integer> address(ValueReader value) {
    return value.integer(BusAddress.WRITABLE.from(), BusAddress.WRITABLE.to());
  }

  private static Setting<List<Setting<Conductor>>> conductors(ValueReader value) {
    return value.list(0, Format.MOST_CONDUCTORS, item -> item.word(CONDUCTORS));
  }

  private static TrunkRun toNext(MappingReader keys) {
    return new TrunkRun(
        keys.optional("cable-to-next").parsed(Quantities::length),
        keys.optional("run-to-next").word(RUNS),
        keys.optional("surge-protection-to-next").word(PROTECTIONS));
  }

  private static Network network(MappingReader keys, Place place) {
    return new Network(
        place,
        keys.required("ip").text(0, Integer.MAX_VALUE),
        keys.optional("gateway").text(0, Integer.MAX_VALUE));
  }

  private record Sides(Setting<Termination> in, Setting<Termination> out) {}

  private static Repeater repeater(MappingReader keys, Place place, int position) {
    Identity identity = new Identity(place, position, SiteBinder.name(keys.required("repeater")));
    Setting<Sides> sides =
        keys.optional("termination")
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
        identity,
        sides.place(),
        given == null ? none : given.in(),
        given == null ? none : given.out(),
        toNext(keys));
  }

  /** What stands for an item that is not a mapping: a unit of which nothing is understood. */
  private static Unit unknown(Place place, int position) {
    return new Unit(
        new Identity(place, position, faulty(place)),
        new Device(faulty(place), DeviceType.UNKNOWN),
        new Connection(faulty(place), faulty(place), faulty(place), faulty(place)),
        new TrunkRun(faulty(place), faulty(place), faulty(place)),
        faulty(place),
        faulty(place),
        faulty(place),
        faulty(place),
        new VentControl(faulty(place), faulty(place), faulty(place)),
        faulty(place));
  }

  private static <T> Setting<T> faulty(Place place) {
    return new Setting.Faulty<>(place);
  }
}
