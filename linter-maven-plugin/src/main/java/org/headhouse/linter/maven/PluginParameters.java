package org.headhouse.linter.maven;

/** How the parameters of goals are written as properties. */
final class PluginParameters {
  private PluginParameters() {}

  static String name(String parameter) {
    return "linter." + parameter;
  }
}
