package org.headhouse.linter.site;

/**
 * The run of the trunk from one item to the next.
 *
 * @param length of the cable, measured along it
 * @param route where it lies
 * @param protection of both of its ends against surges
 */
public record TrunkRun(
    Setting<Length> length, Setting<Run> route, Setting<SurgeProtection> protection) {}
