package org.headhouse.linter.change;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What changes in the list of devices that somebody asks and writes to.
 *
 * @param name the zone, or the device that is no unit
 * @param from the address that it was asked at, or null
 * @param to the address that it is asked at from now on, or null
 * @param was the earlier name, where it is renamed; else null
 * @param isUnit whether the software has it as a zone; another device is in a list of its own
 */
public record PollingChange(
    Client client,
    Kind kind,
    String name,
    @Nullable Integer from,
    @Nullable Integer to,
    @Nullable String was,
    boolean isUnit) {
  @Internal
  public PollingChange {}

  /** Who asks. */
  public enum Client {
    SOFTWARE,
    HEAD
  }

  /** What becomes of it. */
  public enum Kind {
    /** It is asked no more. */
    DELETE,
    /** It is not asked for a while. */
    PAUSE,
    /** It is asked from now on. */
    ADD,
    /** It is asked at another address, or again. */
    MOVE,
    RENAME
  }

  static PollingChange delete(Client client, String name, int from) {
    return new PollingChange(client, Kind.DELETE, name, from, null, null, true);
  }

  static PollingChange pause(Client client, String name, @Nullable Integer from) {
    return new PollingChange(client, Kind.PAUSE, name, from, null, null, true);
  }

  static PollingChange add(Client client, String name, int to) {
    return new PollingChange(client, Kind.ADD, name, null, to, null, true);
  }

  static PollingChange move(
      Client client, String name, @Nullable Integer from, @Nullable Integer to) {
    return new PollingChange(client, Kind.MOVE, name, from, to, null, true);
  }

  static PollingChange rename(Client client, String was, String name) {
    return new PollingChange(client, Kind.RENAME, name, null, null, was, true);
  }

  /** The same of a device that is no unit. */
  PollingChange ofOtherDevice() {
    return new PollingChange(client, kind, name, from, to, was, false);
  }

  /** What undoes it. */
  PollingChange undone() {
    return switch (kind) {
      case DELETE -> with(Kind.ADD, null, from);
      case ADD -> with(Kind.DELETE, to, null);
      case PAUSE -> with(Kind.MOVE, null, from);
      case MOVE -> with(from == null ? Kind.PAUSE : Kind.MOVE, to, from);
      case RENAME ->
          new PollingChange(client, kind, was == null ? name : was, null, null, name, isUnit);
    };
  }

  private PollingChange with(Kind other, @Nullable Integer earlier, @Nullable Integer later) {
    return new PollingChange(client, other, name, earlier, later, null, isUnit);
  }
}
