package org.headhouse.linter.rule;

/** A requirement that is checked while a file is read; the reader makes its findings. */
public non-sealed interface StageRule extends Rule {}
