package org.headhouse.linter.maven;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.source.SpellingSuggester;

/**
 * The properties that the goals of this plugin take. Maven itself reports neither one that is
 * misspelt nor a word that is neither true nor false, so that a slip could make a build green.
 *
 * @param types of the parameters that the properties set, as in the plugin's descriptor
 */
record KnownProperties(Map<String, String> types) {
  private static final String DESCRIPTOR = "/META-INF/maven/plugin.xml";
  private static final Set<String> TRUTH_VALUES = Set.of("boolean", "java.lang.Boolean");
  private static final Pattern EXPRESSION = Pattern.compile("\\$\\{(linter\\.\\w+)}");

  KnownProperties {
    types = new TreeMap<>(types);
  }

  /** Those of all goals: one command line may run several. */
  static KnownProperties ofPlugin() {
    try (InputStream in = KnownProperties.class.getResourceAsStream(DESCRIPTOR)) {
      if (in == null) {
        throw new IllegalStateException("the plugin has no " + DESCRIPTOR);
      }
      return read(in);
    } catch (IOException | XMLStreamException broken) {
      throw new IllegalStateException("the plugin's " + DESCRIPTOR + " cannot be read", broken);
    }
  }

  private static KnownProperties read(InputStream descriptor) throws XMLStreamException {
    Map<String, String> types = new TreeMap<>();
    XMLStreamReader xml = XMLInputFactory.newDefaultFactory().createXMLStreamReader(descriptor);
    while (xml.hasNext()) {
      String type =
          xml.next() == XMLStreamConstants.START_ELEMENT
              ? xml.getAttributeValue(null, "implementation")
              : null;
      if (type != null) {
        Matcher expression = EXPRESSION.matcher(xml.getElementText());
        if (expression.matches()) {
          types.put(expression.group(1), type);
        }
      }
    }
    return new KnownProperties(types);
  }

  /**
   * Looks at what a build was started with.
   *
   * @param given on the command line
   * @param ofProject what the project sets, which may be for itself, such as the plugin's version
   * @throws UserError that names all that cannot be, and says what to write instead
   */
  void check(Properties given, Properties ofProject) throws UserError {
    List<String> faults = new ArrayList<>();
    for (String name : sorted(given.stringPropertyNames())) {
      if (name.startsWith(PluginParameters.name(""))
          && !types.containsKey(name)
          && !ofProject.containsKey(name)) {
        meant(name)
            .ifPresent(meant -> faults.add("there is no property " + name + ": use " + meant));
      }
    }
    types.forEach(
        (name, type) -> {
          String value = given.getProperty(name, ofProject.getProperty(name));
          if (TRUTH_VALUES.contains(type) && value != null && !isTruthValue(value)) {
            faults.add(name + " cannot be \"" + value + "\": use true or false");
          }
        });
    if (!faults.isEmpty()) {
      throw new UserError(String.join("\n", faults));
    }
  }

  private static List<String> sorted(Collection<String> names) {
    return names.stream().sorted().toList();
  }

  /**
   * What a misspelt name stands for, if one is near; the prefix is not compared, as all have it. A
   * name that is not near any may be the build's own, such as one for the version of this plugin.
   */
  private Optional<String> meant(String name) {
    List<String> known = types.keySet().stream().map(KnownProperties::parameter).toList();
    return SpellingSuggester.suggest(parameter(name), known).map(PluginParameters::name);
  }

  private static String parameter(String property) {
    return property.substring(PluginParameters.name("").length());
  }

  /** As Maven reads them. */
  private static boolean isTruthValue(String value) {
    String word = value.strip().toLowerCase(Locale.ROOT);
    return word.equals("true") || word.equals("false");
  }
}
