package org.headhouse.linter.bind;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.Capacitance;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.ModuleNeed;
import org.headhouse.linter.site.OtherClients;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.SerialPort;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.TerminalMarks;
import org.headhouse.linter.site.Transceiver;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Node;

/** Binds the file of device types. */
public final class DeviceTypesBinder {
  private static final List<ModuleNeed> NEEDS = List.of(ModuleNeed.values());
  private static final List<Parity> PARITIES = List.of(Parity.values());
  private static final List<OtherClients> OTHER_CLIENTS = List.of(OtherClients.values());
  private static final List<Conductor> POSITIVE = List.of(Conductor.A, Conductor.B);

  private DeviceTypesBinder() {}

  /** Binds the root node of the file. */
  public static Bound<DeviceTypes> bind(SourceText source, Node.Valued root) {
    BindingIssues issues = new BindingIssues();
    ValueReader whole =
        new ValueReader(new Cursor(root, null), Place.at(Region.START_OF_FILE), issues);
    Setting<DeviceTypes> types = whole.mapping((keys, place) -> types(keys, source, issues));
    return issues.bound(types.or(new DeviceTypes(source, List.of(), false)));
  }

  private static DeviceTypes types(MappingReader keys, SourceText source, BindingIssues issues) {
    keys.required("format").oneOf(List.of(Format.VERSION));
    Setting<List<Setting<DeviceType>>> list =
        keys.required("device-types")
            .list(0, Integer.MAX_VALUE, item -> item.mapping(DeviceTypesBinder::type));
    List<Setting<DeviceType>> items = list.or(List.of());
    List<DeviceType> types = items.stream().flatMap(item -> item.optional().stream()).toList();
    boolean complete =
        list.isGiven()
            && types.size() == items.size()
            && types.stream().allMatch(type -> type.id().isGiven());
    reportDuplicates(types, issues);
    return new DeviceTypes(source, types, complete);
  }

  private static void reportDuplicates(List<DeviceType> types, BindingIssues issues) {
    Map<String, Place> first = new HashMap<>();
    for (DeviceType type : types) {
      String id = type.id().orNull();
      Place before = id == null ? null : first.putIfAbsent(id, type.id().place());
      if (before != null) {
        Message message =
            new Message(
                "the id \"" + id + "\" is used twice",
                "units of that type get what is written of the first of the two",
                "give one of the two an id of its own, or delete it");
        issues.report(
            Finding.of("schema.bad-value", type.id().place(), message)
                .related(before.region(), "\"" + id + "\" is first used here"));
      }
    }
  }

  private static DeviceType type(MappingReader keys, Place place) {
    Setting<String> id = SiteBinder.id(keys.required("id"));
    Setting<String> title = SiteBinder.text(keys.optional("title"));
    return new DeviceType(
        place,
        id,
        title,
        transceiver(keys),
        serialPort(keys),
        settable(keys.optional("address-limit")),
        keys.optional("name-limit").integer(1, Format.WIDEST_DISPLAY),
        settable(keys.optional("default-address")),
        keys.optional("comm-module").word(NEEDS),
        keys.optional("ethernet").bool());
  }

  private static Transceiver transceiver(MappingReader keys) {
    return new Transceiver(
        UnitLoads.read(keys.optional("unit-load")),
        keys.optional("rise-time").positive(Quantities::riseTime, Interval::seconds),
        keys.optional("capacitance").positive(Quantities::capacitance, Capacitance::farads),
        ConnectionBinder.idleBias(keys.optional("idle-bias")),
        keys.optional("isolated").bool(),
        keys.optional("positive-terminal").word(POSITIVE),
        keys.optional("terminals").mapping(DeviceTypesBinder::terminals));
  }

  private static TerminalMarks terminals(MappingReader keys, Place place) {
    return new TerminalMarks(
        place,
        mark(keys.required("positive")),
        mark(keys.required("negative")),
        mark(keys.optional("common")));
  }

  private static Setting<String> mark(ValueReader value) {
    return value.text(1, Format.LONGEST_TERMINAL_MARK);
  }

  private static SerialPort serialPort(MappingReader keys) {
    return new SerialPort(
        keys.optional("baud-rates").set(item -> item.oneOf(LineSettings.BAUD_RATES)),
        keys.optional("parities").set(item -> item.word(PARITIES)),
        SiteBinder.period(keys.optional("processing")),
        keys.optional("other-clients").word(OTHER_CLIENTS));
  }

  private static Setting<Integer> settable(ValueReader value) {
    return value.integer(BusAddress.SETTABLE.from(), BusAddress.SETTABLE.to());
  }
}
