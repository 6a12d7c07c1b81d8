package org.headhouse.linter.command;

import org.headhouse.linter.files.ParameterNames;

/** How the parameters of runs are written as options. */
final class OptionNames implements ParameterNames {
  static final ParameterNames NAMES = new OptionNames();

  /** What the plugin calls a list of units, where a property named list would say too little. */
  static final String LIST_OF_PLUGIN = "csv";

  private OptionNames() {}

  @Override
  public String of(String parameter) {
    return "--" + (parameter.equals(LIST_OF_PLUGIN) ? "list" : parameter);
  }

  @Override
  public String turnedOn(String parameter) {
    return of(parameter);
  }
}
