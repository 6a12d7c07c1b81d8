package org.headhouse.linter.rules.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The Ethernet settings of three units, and what is reported of them. */
class NetworkRulesTest {
  private static final String TYPE = "device-type: box";

  /** The settings of each unit; {@code -} for none. */
  private static LineCheck of(String settings) {
    SiteText site = new SiteText();
    String[] each = settings.split(";", -1);
    for (int i = 0; i < each.length; i++) {
      String network = each[i].strip();
      String termination = i == 0 || i + 1 == each.length ? "120 ohm" : "none";
      String cable = i + 1 == each.length ? "" : "10 m";
      if (network.equals("-")) {
        site.unit(termination, cable, TYPE);
      } else {
        site.unit(termination, cable, TYPE, "network: {" + network + "}");
      }
    }
    return LineCheck.of(site).types("id: box, ethernet: true");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ip: 10.0.0.1/24  | |",
        "ip: 10.0.0.1     | is not an address with a prefix length | write for example 10.0.0.1/24",
        "ip: 10.0.0.300/24| is not an address with a prefix length | write for example 192.168.40.12/24",
        "ip: 10.0.0.0/24  | is the network's own address or its broadcast | set an address that a device of that network can have",
        "ip: 10.0.0.255/24| is the network's own address or its broadcast | set an address that a device of that network can have",
        "ip: 10.0.0.1/24, gateway: 10.0.0.9 | |",
        "ip: 10.0.0.1/24, gateway: 10.0.0.9/24 | is not a gateway address | write the address alone, such as 192.168.40.1",
        "ip: 10.0.0.1/24, gateway: router   | is not a gateway address | write the address alone, such as 192.168.40.1",
        "ip: 10.0.0.1/24, gateway: 10.0.0.1 | cannot be the gateway of this network | write the address of the router; it is neither the unit's own nor the broadcast",
        "ip: 10.0.0.1/24, gateway: 10.0.0.255 | cannot be the gateway of this network | write the address of the router; it is neither the unit's own nor the broadcast",
        // Without an address of the unit nothing can be said of the router's.
        "ip: 10.0.0.0/24, gateway: 10.0.0.255 | is the network's own address or its broadcast | set an address that a device of that network can have",
      })
  void addresses(String settings, String fact, String remedy) {
    LineCheck check = of(settings + "; -");
    assertThat(check.results().stream().map(one -> one.message().remedy()))
        .containsExactlyElementsOf(remedy == null ? List.of() : List.of(remedy));
    assertThat(check.results())
        .allSatisfy(
            one -> {
              assertThat(one.rule()).isEqualTo("network.bad-address");
              assertThat(one.message().fact()).endsWith("\" " + fact);
            });
  }

  /** The network that most units are in is the right one; of equal ones the first. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-; - |",
        "ip: 10.0.0.1/24; ip: 10.0.0.2/24; ip: 10.0.0.3/24 |",
        "ip: 10.0.0.1/24; ip: 10.0.1.2/24; -               | \"Bay 2\", \"10.0.1.2/24\", is outside the subnet of the other units",
        "ip: 10.0.1.1/24; ip: 10.0.0.2/24; ip: 10.0.0.3/24 | \"Head House\", \"10.0.1.1/24\", is outside the subnet of the other units",
        "ip: 10.0.0.1/24; ip: 10.0.0.2/25; ip: 10.0.0.3/24 | \"Bay 2\", \"10.0.0.2/25\", is outside the subnet of the other units",
        "-; ip: 10.0.1.2/24; ip: 10.0.0.3/24               | \"Bay 3\", \"10.0.0.3/24\", is outside the subnet of the other units",
        "ip: 10.0.0.1/24, gateway: 10.0.1.9; -             | the gateway of \"Head House\", \"10.0.1.9\", is outside the subnet of the unit",
        // The gateway is that of the other network as well.
        "ip: 10.0.0.1/24; ip: 10.0.1.2/24, gateway: 10.0.1.9 | \"Bay 2\", \"10.0.1.2/24\", is outside the subnet of the other units",
        "ip: 10.0.0.1/24; ip: 10.0.1.2/24, gateway: 10.0.0.9 | \"Bay 2\", \"10.0.1.2/24\", is outside the subnet of the other units",
      })
  void oneNetwork(String settings, String fact) {
    LineCheck check = of(settings);
    assertThat(check.results().stream().map(one -> one.message().fact()))
        .containsExactlyElementsOf(fact == null ? List.of() : List.of(fact));
    assertThat(check.rules()).allMatch("network.outside-subnet"::equals);
  }

  /** Two units at one address disturb each other even where both lack the prefix. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ip: 10.0.0.1; ip: 10.0.0.1      | network.bad-address, network.bad-address, network.duplicate-ip",
        "ip: 10.0.0.1/24; ip: 10.0.0.1   | network.bad-address, network.duplicate-ip",
        "ip: 10.0.0.1/24; ip: 10.0.0.1/16| network.duplicate-ip, network.outside-subnet",
        "ip: 10.0.0.1/24; ip: 10.0.0.2/24; ip: 10.0.0.1/24 | network.duplicate-ip",
        // What no unit can have is reported as such, and nothing of it twice.
        "ip: 10.0.0.0/24; ip: 10.0.0.0/24| network.bad-address, network.bad-address",
      })
  void anAddressIsTheSameWhateverItsPrefix(String settings, String rules) {
    assertThat(of(settings).rules().stream().sorted()).containsExactly(rules.split(", ", -1));
  }

  /** Ethernet of the type: not said is none. */
  @ParameterizedTest
  @CsvSource({
    "'id: box, ethernet: true', ''",
    "'id: box, ethernet: false', network.unsupported",
    "id: box, network.unsupported",
    "'id: other, ethernet: false', reference.unknown",
  })
  void aTypeHasEthernetOrNot(String type, String rules) {
    LineCheck check = of("ip: 10.0.0.1/24; -").types(type);
    assertThat(check.rules().stream().distinct())
        .containsExactlyElementsOf(rules.isEmpty() ? List.of() : List.of(rules));
  }
}
