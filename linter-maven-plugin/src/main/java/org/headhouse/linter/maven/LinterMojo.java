package org.headhouse.linter.maven;

import java.util.Properties;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.Trouble;

/** A goal of this plugin: it refuses properties that no goal knows. */
abstract class LinterMojo extends AbstractMojo {
  /** What the build was started with. */
  @Parameter(defaultValue = "${session.userProperties}", readonly = true)
  private Properties userProperties = new Properties();

  /** What the project sets. */
  @Parameter(defaultValue = "${project.properties}", readonly = true)
  private Properties projectProperties = new Properties();

  /** Most builds give no property, and need not know which there are. */
  final void checkProperties() throws Trouble {
    if (hasAny(userProperties) || hasAny(projectProperties)) {
      KnownProperties.ofPlugin().check(userProperties, projectProperties);
    }
  }

  private static boolean hasAny(Properties properties) {
    return properties.stringPropertyNames().stream()
        .anyMatch(name -> name.startsWith(PluginParameters.name("")));
  }
}
