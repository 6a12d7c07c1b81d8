/**
 * The physics of faults: what a meter shows on a segment in which one thing is wrong. Numbers in,
 * numbers out.
 *
 * <p>Every answer is a range over all that the parts, the cable, the loads and the meter may have,
 * and no range is shorter than the truth: where its exact end would take a search, a wider one is
 * given. Neither YAML nor the model of a site may enter here.
 *
 * <p>What the model leaves out: two faults at a time, contacts that come and go, noise that a meter
 * takes for a voltage, differences of ground along the line, and the resistance of stubs.
 */
@NullMarked
@Internal
package org.headhouse.linter.fault;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.NullMarked;
