package org.headhouse.linter.bind;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.ModuleNeed;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.jspecify.annotations.Nullable;

/** Binds the file of device types. */
public final class DeviceTypesBinder {
  private static final List<ModuleNeed> NEEDS = List.of(ModuleNeed.values());
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
    return new DeviceType(
        place,
        SiteBinder.id(keys.required("id")),
        SiteBinder.text(keys.optional("title")),
        unitLoad(keys.optional("unit-load")),
        settable(keys.optional("address-limit")),
        keys.optional("name-limit").integer(1, Format.WIDEST_DISPLAY),
        keys.optional("rise-time").positive(Quantities::riseTime, Interval::seconds),
        keys.optional("baud-rates").set(item -> item.oneOf(LineSettings.BAUD_RATES)),
        keys.optional("positive-terminal").word(POSITIVE),
        settable(keys.optional("default-address")),
        keys.optional("comm-module").word(NEEDS),
        keys.optional("ethernet").bool());
  }

  private static Setting<Integer> settable(ValueReader value) {
    return value.integer(BusAddress.SETTABLE.from(), BusAddress.SETTABLE.to());
  }

  /** A fraction is text to YAML and a whole unit load is a number, so both are read. */
  private static Setting<Double> unitLoad(ValueReader value) {
    Cursor cursor = value.cursor();
    if (cursor == null) {
      return value.parsed(Quantities::unitLoad);
    }
    Double load = cursor.node() instanceof Scalar scalar ? load(scalar) : null;
    if (load != null && load > Format.HEAVIEST_UNIT_LOAD && isText(cursor)) {
      return tooHeavy(value.issues(), cursor);
    }
    if (load == null || load <= 0 || load > Format.HEAVIEST_UNIT_LOAD) {
      value.issues().askSchema();
      return new Setting.Faulty<>(cursor.place());
    }
    return new Setting.Given<>(load, cursor.place());
  }

  private static @Nullable Double load(Scalar scalar) {
    return switch (scalar.type()) {
      case TEXT -> Quantities.unitLoad(scalar.text());
      case INTEGER, FLOAT -> Numbers.decimal(scalar);
      case NULL, BOOLEAN -> null;
    };
  }

  private static boolean isText(Cursor cursor) {
    return cursor.node() instanceof Scalar scalar && scalar.type() == CoreType.TEXT;
  }

  /** The schema bounds numbers, but cannot compute a fraction. */
  private static Setting<Double> tooHeavy(BindingIssues issues, Cursor cursor) {
    issues.report(
        "schema.out-of-range",
        cursor.place(),
        new Message(
            "the unit load is above " + Format.HEAVIEST_UNIT_LOAD,
            "a line drives " + Format.HEAVIEST_UNIT_LOAD + " unit loads in all",
            "write the unit load of one device, such as 1/8"));
    return new Setting.Faulty<>(cursor.place());
  }
}
