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
    Place place, Setting<String> positive, Setting<String> negative, Setting<String> common) {

  /** The mark of a terminal of a device whose terminal for D1 has a name in the files. */
  String of(Conductor terminal, Conductor positiveTerminal) {
    Setting<String> mark =
        switch (terminal) {
          case A, B -> terminal == positiveTerminal ? positive : negative;
          case C -> common;
          case G -> new Setting.Missing<>(place);
        };
    return mark.or(terminal.word());
  }
}
