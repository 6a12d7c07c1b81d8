package org.headhouse.linter.bind;

import java.util.List;
import java.util.function.Function;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.IdleBias;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.SurgeProtection;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.TrunkRun;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Mapping;

/** Binds what every item of a chain has: its connection to the pair, and the run to the next. */
final class ConnectionBinder {
  private static final List<Conductor> CONDUCTORS = List.of(Conductor.values());
  private static final List<Pair> PAIRS = List.of(Pair.values());
  private static final List<IdleBias> BIAS_NEEDS = List.of(IdleBias.values());
  private static final List<Run> RUNS = List.of(Run.values());
  private static final List<SurgeProtection> PROTECTIONS = List.of(SurgeProtection.values());

  private ConnectionBinder() {}

  static TrunkRun toNext(MappingReader keys) {
    return new TrunkRun(
        cable(keys.optional("cable-to-next")),
        keys.optional("run-to-next").word(RUNS),
        keys.optional("surge-protection-to-next").word(PROTECTIONS));
  }

  /** An alias cannot drop a key, so the last item of a chain may say that it has no cable. */
  private static Setting<Length> cable(ValueReader value) {
    return value.isText("none")
        ? new Setting.Missing<>(value.place())
        : value.parsed(Quantities::length);
  }

  /** Reads what units of a role may have in common. */
  static void defaults(MappingReader keys) {
    conductors(keys.optional("conductors"));
    pair(keys.optional("pair"));
    stub(keys);
    keys.optional("run-to-next").word(RUNS);
    keys.optional("surge-protection-to-next").word(PROTECTIONS);
  }

  /** The one connection of a unit, whose type says what it loads the pair with. */
  static Connection ofUnit(MappingReader keys, Place place) {
    return new Connection(
        conductors(keys.required("conductors")),
        termination(keys.optional("termination")),
        pair(keys.optional("pair")),
        stub(keys),
        new Setting.Missing<>(place),
        new Setting.Missing<>(place));
  }

  /** The one connection of equipment or a converter. */
  static Connection ofDevice(MappingReader keys) {
    return new Connection(
        conductors(keys.optional("conductors")),
        termination(keys.optional("termination")),
        pair(keys.optional("pair")),
        stub(keys),
        UnitLoads.read(keys.optional("unit-load")),
        idleBias(keys.optional("idle-bias")));
  }

  /**
   * What a repeater has under one key for its two sides.
   *
   * @param place the value, or where it is missing its owner
   */
  record Sides<T>(Place place, Setting<T> in, Setting<T> out) {}

  /**
   * The connections of a repeater, in and out; a branch that it hangs on belongs to the side in.
   */
  static List<Connection> ofRepeater(
      MappingReader keys, Sides<Termination> terminations, Place place) {
    Sides<List<Setting<Conductor>>> conductors =
        sameOrSides(keys.optional("conductors"), ConnectionBinder::conductors);
    Sides<Pair> pair = sameOrSides(keys.optional("pair"), ConnectionBinder::pair);
    Setting<Length> stub = stub(keys);
    Sides<Double> loads = sides(keys.optional("unit-load"), UnitLoads::read);
    Sides<IdleBias> needs = sides(keys.optional("idle-bias"), ConnectionBinder::idleBias);
    Connection in =
        new Connection(conductors.in(), terminations.in(), pair.in(), stub, loads.in(), needs.in());
    Connection out =
        new Connection(
            conductors.out(),
            terminations.out(),
            pair.out(),
            new Setting.Missing<>(place),
            loads.out(),
            needs.out());
    return List.of(in, out);
  }

  static Sides<Termination> terminations(MappingReader keys) {
    return sides(keys.optional("termination"), ConnectionBinder::termination);
  }

  private static <T> Sides<T> sides(ValueReader value, Function<ValueReader, Setting<T>> reader) {
    Setting<Sides<T>> sides =
        value.mapping(
            (keys, at) ->
                new Sides<>(
                    at, reader.apply(keys.optional("in")), reader.apply(keys.optional("out"))));
    Setting<T> none =
        sides.isFaulty()
            ? new Setting.Faulty<>(sides.place())
            : new Setting.Missing<>(sides.place());
    Sides<T> given = sides.orNull();
    return given == null
        ? new Sides<>(sides.place(), none, none)
        : new Sides<>(sides.place(), given.in(), given.out());
  }

  /** One value for both sides, or one for each. */
  private static <T> Sides<T> sameOrSides(
      ValueReader value, Function<ValueReader, Setting<T>> reader) {
    if (value.cursor() != null && value.cursor().node() instanceof Mapping) {
      return sides(value, reader);
    }
    Setting<T> both = reader.apply(value);
    return new Sides<>(both.place(), both, both);
  }

  private static Setting<List<Setting<Conductor>>> conductors(ValueReader value) {
    return value.list(0, Format.MOST_CONDUCTORS, item -> item.word(CONDUCTORS));
  }

  private static Setting<Termination> termination(ValueReader value) {
    return value.parsed(Quantities::termination);
  }

  private static Setting<Pair> pair(ValueReader value) {
    return value.word(PAIRS);
  }

  private static Setting<Length> stub(MappingReader keys) {
    return keys.optional("stub").parsed(Quantities::length);
  }

  static Setting<IdleBias> idleBias(ValueReader value) {
    return value.word(BIAS_NEEDS);
  }
}
