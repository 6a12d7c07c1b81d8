package org.headhouse.linter.site;

import java.time.LocalDate;
import org.headhouse.linter.source.Place;

/**
 * What was measured with.
 *
 * @param calibratedUntil the last day on which its calibration counts
 */
public record Meter(
    Place place,
    Setting<String> type,
    Setting<String> serialNumber,
    Setting<LocalDate> calibratedUntil) {}
