package org.headhouse.linter.rules.traffic;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Only one client is on a serial line at the same time (MODBUS over Serial Line V1.02, 2.1). */
class TrafficTwoClientsTest {
  private static final String TYPE = "id: box, ethernet: true, idle-bias: not-needed";

  /**
   * @param by who asks the equipment
   * @param does what the head unit sends of itself, or nothing where that is no matter
   */
  @ParameterizedTest
  @CsvSource({
    "serial, true, supervision, broadcasts",
    "serial, false, head, asks equipment",
    "serial, true, head, broadcasts and asks equipment",
    "serial, false, supervision, ''",
    "through-head, true, head, ''",
    "ethernet, true, head, ''",
  })
  void whoAsks(String link, boolean broadcast, String by, String does) {
    SiteText site = new SiteText();
    if (broadcast) {
      site.broadcast(12, "5 s");
    }
    site.unit("120 ohm", "10 m", "device-type: box", network(1))
        .equipment("Dosing Rig", "by: " + by + ", registers: 4, every: 1 min", "10 m")
        .unit("120 ohm", "", "device-type: box", network(2))
        .polls(link, "every: 20 s, registers: 10, timeout: 1 s, retries: 1");
    LineCheck unknown = LineCheck.of(site).typesAsWritten(TYPE);
    assertThat(unknown.reported())
        .isEqualTo(does.isEmpty() ? List.of() : List.of("warning traffic.two-clients"));
    if (!does.isEmpty()) {
      assertThat(unknown.reportedBy("traffic.two-clients").get(0))
          .contains("on which the head unit " + does + ":", "the device type \"box\"");
      assertThat(unknown.marked("traffic.two-clients")).isEqualTo(link);
    }
    LineCheck waits = LineCheck.of(site).typesAsWritten(TYPE + ", other-clients: waits");
    assertThat(waits.rules()).isEmpty();
  }

  private static String network(int host) {
    return "network: {ip: 10.0.0." + host + "/24}";
  }
}
