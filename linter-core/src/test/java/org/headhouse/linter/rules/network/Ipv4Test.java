package org.headhouse.linter.rules.network;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.ByteBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Prefixes and networks: RFC 4632 §3.1 (from memory), and the JDK's own reading of addresses. */
class Ipv4Test {

  @ParameterizedTest
  @ValueSource(strings = {"192.168.40.12", "0.0.0.0", "255.255.255.255", "10.0.0.1", "1.2.3.4"})
  void anAddressIsReadAsTheJdkReadsIt(String text) throws UnknownHostException {
    int expected = ByteBuffer.wrap(InetAddress.getByName(text).getAddress()).getInt();
    Ipv4 read = of(text);
    assertThat((int) read.address()).isEqualTo(expected);
    assertThat(read.address()).isNotNegative();
    assertThat(read.hasPrefix()).isFalse();
    assertThat(read.network()).isEqualTo(read.address());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "192.168.40",
        "192.168.40.1.2",
        "256.1.1.1",
        "1.256.1.1",
        "1.1.1.256",
        "1.1.1.1000",
        // Some readers take it for a number of base eight.
        "010.1.1.1",
        "1.1.1.00",
        "1.1.1.1/0",
        "1.1.1.1/33",
        "1.1.1.1/",
        "1.1.1.1/240",
        "1.1.1.a",
        " 1.1.1.1",
        "fe80::1",
      })
  void whatIsNoAddress(String text) {
    assertThat(Ipv4.parse(text)).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "192.168.40.77/24, 192.168.40.0",
    "192.168.40.77/26, 192.168.40.64",
    "192.168.40.77/31, 192.168.40.76",
    "192.168.40.77/1, 128.0.0.0",
    "172.20.9.1/12, 172.16.0.0",
    "255.255.255.255/8, 255.0.0.0",
    "192.168.40.77/32, 192.168.40.77",
  })
  void theNetworkIsWhatThePrefixLeaves(String text, String network) {
    assertThat(of(text).network()).isEqualTo(of(network).address());
  }

  @ParameterizedTest
  @CsvSource({
    "192.168.40.1/24, 192.168.40.254, true",
    "192.168.40.1/24, 192.168.41.1, false",
    "192.168.40.1/23, 192.168.41.1, true",
    "192.168.40.1/26, 192.168.40.63, true",
    "192.168.40.1/26, 192.168.40.64, false",
  })
  void anAddressIsInTheNetworkOfAnother(String own, String other, boolean inside) {
    assertThat(of(own).contains(of(other))).isEqualTo(inside);
  }

  /**
   * No host is the network itself or its broadcast (RFC 1122 §3.2.1.3), on "this" network 0, on the
   * loopback 127, or in the ranges of multicast and reserved addresses from 224 on (RFC 1112, RFC
   * 6890; all from memory). A prefix of 31 or 32 leaves no room for unit and router.
   */
  @ParameterizedTest
  @CsvSource({
    "192.168.40.0/24, false",
    "192.168.40.1/24, true",
    "192.168.40.254/24, true",
    "192.168.40.255/24, false",
    "192.168.40.255/23, true",
    "192.168.41.255/23, false",
    "192.168.40.64/26, false",
    "192.168.40.63/26, false",
    "10.0.0.1/30, true",
    "10.0.0.2/30, true",
    "10.0.0.3/30, false",
    "10.0.0.1/31, false",
    "10.0.0.1/32, false",
    "0.0.0.1/8, false",
    "1.0.0.1/8, true",
    "126.0.0.1/8, true",
    "127.0.0.1/8, false",
    "128.0.0.1/8, true",
    "223.255.255.1/24, true",
    "224.0.0.1/24, false",
    "255.0.0.1/24, false",
  })
  void whatADeviceCanHave(String text, boolean host) {
    assertThat(of(text).isHost()).isEqualTo(host);
  }

  @Test
  void anAddressTakesThePrefixOfAnother() {
    assertThat(of("10.0.0.1").inNetworkOf(of("10.9.9.9/24"))).isEqualTo(of("10.0.0.1/24"));
    assertThat(of("10.0.0.1/31").hasPrefix()).isTrue();
  }

  private static Ipv4 of(String text) {
    return requireNonNull(Ipv4.parse(text), text);
  }
}
