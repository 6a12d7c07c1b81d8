package org.headhouse.linter.site;

import java.time.LocalDate;
import org.headhouse.linter.source.Place;

/**
 * That the results of a rule are accepted on purpose.
 *
 * @param place the entry as a whole
 * @param unit the unit whose results are meant; missing for the whole site
 * @param until the last day on which they are accepted; missing for always
 */
public record SuppressionEntry(
    Place place,
    Setting<String> rule,
    Setting<String> unit,
    Setting<String> justification,
    Setting<LocalDate> until) {}
