package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;

/**
 * The maker's marks of the line terminals.
 *
 * @param positive of that for D1
 * @param negative of that for D0
 * @param common of that for the common
 */
public record TerminalMarks(
    Place place, Setting<String> positive, Setting<String> negative, Setting<String> common) {}
