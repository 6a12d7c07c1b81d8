package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.headhouse.linter.change.PollingChange.Client;
import org.jspecify.annotations.Nullable;

/** Software, or a head unit, that asks and writes to whatever answers at the addresses it has. */
final class LivePolling {
  private final Client client;
  private final Map<String, Zone> zones = new HashMap<>();
  boolean running = true;

  private static final class Zone {
    final String device;
    @Nullable Integer address;
    String type;

    Zone(String device, @Nullable Integer address, String type) {
      this.device = device;
      this.address = address;
      this.type = type;
    }
  }

  LivePolling(Client client) {
    this.client = client;
  }

  void list(String name, String device, int address, String type) {
    zones.put(name, new Zone(device, address, type));
  }

  void apply(PollingChange change, LiveLine line) {
    if (change.client() != client) {
      return;
    }
    Zone zone = zones.get(change.name());
    switch (change.kind()) {
      case ADD -> {
        assertThat(zone).as("%s", change).isNull();
        Integer to = change.to();
        if (to == null) {
          throw new AssertionError(change);
        }
        list(change.name(), change.name(), to, line.typeOf(change.name()));
      }
      case RENAME -> {
        Zone earlier = zones.remove(change.was());
        assertThat(earlier).as("%s of %s", change, zones.keySet()).isNotNull();
        zones.put(change.name(), earlier);
      }
      case DELETE -> {
        if (zone == null) {
          throw new AssertionError(change + " of " + zones.keySet());
        }
        assertThat(zone.address).isEqualTo(change.from());
        zones.remove(change.name());
      }
      case PAUSE -> {
        if (zone != null) {
          assertThat(zone.address).isEqualTo(change.from());
          zone.address = null;
        }
      }
      case MOVE -> {
        if (zone != null) {
          assertThat(zone.address).as("%s", change).isEqualTo(change.from());
          zone.address = change.to();
        }
      }
    }
  }

  /** Each zone is written to: nobody but its own device may answer there. */
  void poll(LiveLine line, boolean knowsTypes) {
    zones.forEach(
        (name, zone) -> {
          String answering = zone.address == null ? null : line.at(zone.address);
          if (answering != null) {
            assertThat(answering)
                .as("what is written to zone %s at %s", name, zone.address)
                .isEqualTo(zone.device);
            if (knowsTypes) {
              assertThat(line.typeOf(answering)).as("type at zone %s", name).isEqualTo(zone.type);
            }
          }
        });
  }

  /** Somebody looked at each zone before it goes on. */
  void resume(LiveLine line) {
    running = true;
    zones.values().forEach(zone -> zone.type = line.typeOf(zone.device));
  }

  Map<String, @Nullable Integer> addresses() {
    Map<String, @Nullable Integer> addresses = new TreeMap<>();
    zones.forEach((name, zone) -> addresses.put(name, zone.address));
    return addresses;
  }
}
