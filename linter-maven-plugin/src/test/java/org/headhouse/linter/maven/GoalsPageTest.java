package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The page on goals and parameters is made from what Maven itself knows of the plugin. */
@Tag("written")
class GoalsPageTest {
  private static final Path PAGE = Path.of("../linter-core/docs/goals.md");
  private static final String COMMAND =
      "./mvnw -q -pl linter-core,linter-maven-plugin test -Dgroups=written -Dwrite";
  private static final String HEAD =
      """
      # Goals and parameters

      A goal is called by `mvn org.headhouse:linter-maven-plugin:1.0.0-SNAPSHOT:<goal>`, in any folder, with a POM or without. `check` runs in
      the phase `validate` if a POM binds it. This page is made from the plugin's descriptor.

      A misspelt property `linter.…` on the command line fails the goal, which suggests the right one. So does any value but `true` or
      `false` for a parameter that takes one of them. Properties of other goals are ignored, because one command line may run several goals.
      So are properties that your POM sets for itself, and those that resemble none of ours. From 3.9 on, Maven warns of a misspelt
      parameter in the POM.
      """;

  @Test
  void thePageHasAllGoalsAndParameters() throws Exception {
    String page = HEAD + goals();
    if (System.getProperty("write") != null) {
      Files.writeString(PAGE, page);
    }
    assertThat(Files.readString(PAGE))
        .as("%s is stale; write it with %s", PAGE, COMMAND)
        .isEqualTo(page);
  }

  private static String goals() throws Exception {
    StringBuilder page = new StringBuilder();
    try (InputStream descriptor =
        GoalsPageTest.class.getResourceAsStream("/META-INF/maven/plugin.xml")) {
      Element plugin =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(Objects.requireNonNull(descriptor))
              .getDocumentElement();
      for (Element goal : children(child(plugin, "mojos"))) {
        if (!text(goal, "goal").equals("help")) {
          add(goal, page);
        }
      }
    }
    return page.toString();
  }

  private static void add(Element goal, StringBuilder page) throws IOException {
    page.append("\n## ").append(text(goal, "goal")).append("\n\n");
    page.append(text(goal, "description")).append("\n\n");
    page.append("| parameter | property | default | what it is |\n|---|---|---|---|\n");
    for (Element parameter : children(child(goal, "parameters"))) {
      if (Boolean.parseBoolean(text(parameter, "editable"))) {
        Element setting = child(child(goal, "configuration"), text(parameter, "name"));
        page.append("| `").append(text(parameter, "name")).append("` | `");
        page.append(setting.getTextContent().replaceAll("[${}]", "")).append("` | ");
        page.append(value(setting.getAttribute("default-value"))).append(" | ");
        page.append(text(parameter, "description")).append(" |\n");
      }
    }
  }

  private static String value(String value) {
    String shown =
        value
            .replace("${basedir}/", "")
            .replace("${project.build.directory}", "target")
            .replace("${project.basedir}/", "");
    assertThat(shown).doesNotContain("${");
    return shown.isEmpty() ? "" : "`" + shown + "`";
  }

  private static List<Element> children(Element parent) {
    List<Element> children = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        children.add(element);
      }
    }
    return children;
  }

  private static Element child(Element parent, String name) {
    return children(parent).stream()
        .filter(one -> one.getTagName().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name + " in " + parent.getTagName()));
  }

  private static String text(Element parent, String name) {
    return child(parent, name).getTextContent().strip().replaceAll("\\s+", " ").replace("|", "\\|");
  }
}
