/**
 * The physics of a line: wire, DC network, timing. Numbers in, numbers out.
 *
 * <p>Pure functions and small records in SI units; each name carries its unit. Neither YAML nor the
 * model of a site nor any reading or writing may enter here, and nothing here judges: a rule
 * compares the figures with its limits.
 *
 * <p>A segment is a {@link org.headhouse.linter.line.SegmentCircuit} as written, or a {@link
 * org.headhouse.linter.line.SegmentSpread} whose parts may differ from that.
 *
 * <p>What the model of the network leaves out: losses that grow with frequency, differences of
 * ground, noise, resistance of stubs and contacts, and the current limit of a real driver. A margin
 * computed here is no guarantee.
 */
@NullMarked
@Stable
package org.headhouse.linter.line;

import org.headhouse.linter.stability.Stable;
import org.jspecify.annotations.NullMarked;
