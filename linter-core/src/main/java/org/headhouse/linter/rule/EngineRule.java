package org.headhouse.linter.rule;

/**
 * A requirement that the linter checks by itself: while it reads a file, or when it applies the
 * suppressions. The code there makes the findings.
 */
public non-sealed interface EngineRule extends Rule {}
