package org.headhouse.linter.fault;

import org.headhouse.linter.line.MeterAccuracy;

/** What is measured with. */
public record Meters(MeterAccuracy ohmmeter, MeterAccuracy voltmeter) {}
