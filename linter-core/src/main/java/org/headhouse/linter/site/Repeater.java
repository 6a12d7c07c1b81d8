package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;

/**
 * A repeater: the end of one segment and the start of the next.
 *
 * @param termination the key {@code termination}, or the repeater where it is missing
 * @param terminationIn on the side towards the head unit
 * @param terminationOut on the far side
 */
public record Repeater(
    Identity identity,
    Place termination,
    Setting<Termination> terminationIn,
    Setting<Termination> terminationOut,
    TrunkRun toNext)
    implements ChainItem {}
