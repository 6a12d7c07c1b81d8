package org.headhouse.linter.site;

/** A value out of a closed set, written as one word. */
public interface Word {
  /** The word as the file has it. */
  String word();
}
