package org.headhouse.linter.bind;

import java.util.List;
import org.headhouse.linter.bind.ConnectionBinder.Sides;
import org.headhouse.linter.site.BroadcastHandling;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.Converter;
import org.headhouse.linter.site.Device;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.ItemIdentity;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Network;
import org.headhouse.linter.site.Polled;
import org.headhouse.linter.site.PolledBy;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.StaleAction;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.TrunkRun;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.VentControl;
import org.headhouse.linter.site.Vents;
import org.headhouse.linter.source.Place;

/** Binds the items of a chain, in order. */
final class ChainBinder {
  private static final List<Role> ROLES = List.of(Role.values());
  private static final List<CommModule> MODULES = List.of(CommModule.values());
  private static final List<Vents> VENTS = List.of(Vents.values());
  private static final List<StaleAction> ACTIONS = List.of(StaleAction.values());
  private static final List<BroadcastHandling> HANDLINGS = List.of(BroadcastHandling.values());
  private static final List<PolledBy> POLLERS = List.of(PolledBy.values());

  /** The kinds whose key makes an item one of them, whatever else it has; else it is a unit. */
  private static final List<ItemKind> TELLING =
      List.of(ItemKind.REPEATER, ItemKind.EQUIPMENT, ItemKind.CONVERTER);

  private final DeviceTypes types;
  private final OutdoorBinder outdoor;
  private int index;

  ChainBinder(DeviceTypes types, OutdoorBinder outdoor) {
    this.types = types;
    this.outdoor = outdoor;
  }

  /**
   * Reads what units of a role have unless they say otherwise. The units have it already; here it
   * only shows whether it is understood, also where no unit takes it.
   */
  Place defaults(MappingReader keys, Place place) {
    for (Role role : ROLES) {
      keys.optional(role.word()).mapping(this::defaultsOfRole);
    }
    return place;
  }

  private Place defaultsOfRole(MappingReader keys, Place place) {
    SiteBinder.id(keys.optional("device-type"));
    SiteBinder.text(keys.optional("firmware"));
    keys.optional("comm-module").word(MODULES);
    ConnectionBinder.defaults(keys);
    ventControl(keys);
    keys.optional("network").mapping(ChainBinder::network);
    return place;
  }

  private VentControl ventControl(MappingReader keys) {
    return new VentControl(
        outdoor.outdoor(keys.optional("outdoor")),
        keys.optional("vents").word(VENTS),
        keys.optional("on-stale-readings").word(ACTIONS),
        SiteBinder.period(keys.optional("stale-after")),
        SiteBinder.period(keys.optional("close-time")));
  }

  ChainItem item(ValueReader value) {
    int position = index++;
    Setting<ChainItem> item =
        value.mapping(
            (keys, place) -> {
              ItemKind kind = kind(keys);
              ItemIdentity identity = identity(keys.required(kind.word()), place, position);
              return switch (kind) {
                case UNIT -> unit(keys, identity);
                case REPEATER -> repeater(keys, identity);
                case EQUIPMENT -> equipment(keys, identity);
                case CONVERTER -> converter(keys, identity);
              };
            });
    return item.optional().orElseGet(() -> unknown(item.place(), position));
  }

  private static ItemKind kind(MappingReader keys) {
    for (int i = 0; i < TELLING.size(); i++) {
      if (keys.has(TELLING.get(i).word())) {
        return TELLING.get(i);
      }
    }
    return ItemKind.UNIT;
  }

  private static ItemIdentity identity(ValueReader name, Place place, int position) {
    return new ItemIdentity(place, position, SiteBinder.name(name));
  }

  private Unit unit(MappingReader keys, ItemIdentity identity) {
    Setting<Role> role = keys.required("role").word(ROLES);
    Setting<Integer> address = address(keys);
    Device device = device(keys, new Setting.Missing<>(identity.place()));
    Setting<String> firmware = SiteBinder.text(keys.optional("firmware"));
    Setting<CommModule> module = keys.required("comm-module").word(MODULES);
    Connection connection = ConnectionBinder.ofUnit(keys, identity.place());
    VentControl ventControl = ventControl(keys);
    Setting<Network> network = keys.optional("network").mapping(ChainBinder::network);
    TrunkRun toNext = ConnectionBinder.toNext(keys);
    return new Unit(
        identity,
        device,
        connection,
        toNext,
        role,
        address,
        firmware,
        module,
        ventControl,
        network);
  }

  private static Setting<Integer> address(MappingReader keys) {
    return keys.required("address").integer(BusAddress.WRITABLE.from(), BusAddress.WRITABLE.to());
  }

  private Device device(MappingReader keys, Setting<Boolean> isolated) {
    Setting<String> typeId = SiteBinder.id(keys.optional("device-type"));
    return new Device(
        typeId,
        types.get(typeId.orNull()),
        SiteBinder.text(keys.optional("serial-number")),
        isolated);
  }

  private static Network network(MappingReader keys, Place place) {
    return new Network(
        place,
        keys.required("ip").text(0, Integer.MAX_VALUE),
        keys.optional("gateway").text(0, Integer.MAX_VALUE));
  }

  private Repeater repeater(MappingReader keys, ItemIdentity identity) {
    Sides<Termination> terminations = ConnectionBinder.terminations(keys);
    TrunkRun toNext = ConnectionBinder.toNext(keys);
    Device device = device(keys, keys.optional("isolated").bool());
    List<Connection> sides = ConnectionBinder.ofRepeater(keys, terminations, identity.place());
    return new Repeater(identity, device, terminations.place(), sides.get(0), sides.get(1), toNext);
  }

  private Equipment equipment(MappingReader keys, ItemIdentity identity) {
    Setting<Integer> address = address(keys);
    Setting<BroadcastHandling> broadcasts = keys.optional("broadcasts").word(HANDLINGS);
    Setting<Polled> polled = keys.optional("polled").mapping(ChainBinder::polled);
    Device device = device(keys, keys.optional("isolated").bool());
    Connection connection = ConnectionBinder.ofDevice(keys);
    return new Equipment(
        identity, device, connection, ConnectionBinder.toNext(keys), address, broadcasts, polled);
  }

  private static Polled polled(MappingReader keys, Place place) {
    return new Polled(
        place,
        keys.required("by").word(POLLERS),
        keys.required("registers").integer(1, Format.MOST_REGISTERS),
        SiteBinder.period(keys.required("every")));
  }

  private Converter converter(MappingReader keys, ItemIdentity identity) {
    Device device = device(keys, keys.optional("isolated").bool());
    return new Converter(
        identity,
        device,
        ConnectionBinder.ofDevice(keys),
        ConnectionBinder.toNext(keys),
        keys.optional("latency").parsed(Quantities::interval));
  }

  /** What stands for an item that is not a mapping: a unit of which nothing is understood. */
  private static Unit unknown(Place place, int position) {
    return new Unit(
        new ItemIdentity(place, position, faulty(place)),
        new Device(faulty(place), DeviceType.UNKNOWN, faulty(place), faulty(place)),
        new Connection(
            faulty(place),
            faulty(place),
            faulty(place),
            faulty(place),
            faulty(place),
            faulty(place)),
        new TrunkRun(faulty(place), faulty(place), faulty(place)),
        faulty(place),
        faulty(place),
        faulty(place),
        faulty(place),
        new VentControl(faulty(place), faulty(place), faulty(place), faulty(place), faulty(place)),
        faulty(place));
  }

  private static <T> Setting<T> faulty(Place place) {
    return new Setting.Faulty<>(place);
  }
}
