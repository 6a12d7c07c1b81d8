package org.headhouse.linter.maven;

import org.headhouse.linter.files.ParameterNames;

/** How the parameters of goals are written as properties. */
final class PluginParameters implements ParameterNames {
  static final ParameterNames NAMES = new PluginParameters();

  private PluginParameters() {}

  static String name(String parameter) {
    return "linter." + parameter;
  }

  @Override
  public String of(String parameter) {
    return name(parameter);
  }

  @Override
  public String typed(String parameter) {
    return "-D" + name(parameter);
  }
}
