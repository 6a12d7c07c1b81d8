package org.headhouse.linter.site;

import java.util.List;

/**
 * What the serial port of a type of device can do.
 *
 * @param baudRates those it can be set to, in bit/s
 * @param parities those it can be set to
 * @param processing the longest it takes before it answers
 * @param otherClients of a head unit: what it does while another client uses the line
 */
public record SerialPort(
    Setting<List<Setting<Integer>>> baudRates,
    Setting<List<Setting<Parity>>> parities,
    Setting<Interval> processing,
    Setting<OtherClients> otherClients) {}
