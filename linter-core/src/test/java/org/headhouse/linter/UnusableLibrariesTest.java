package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Programs with other libraries than those that the linter asks for, each in a class loader. */
class UnusableLibrariesTest {
  @TempDir private Path folder;

  /** One class of each library that a check loads. */
  private static final List<String> LIBRARIES =
      List.of(
          "org.headhouse.linter.SiteLinter",
          "org.yaml.snakeyaml.Yaml",
          "com.networknt.schema.Schema",
          "com.fasterxml.jackson.annotation.JsonView",
          "com.fasterxml.jackson.core.JsonFactory",
          "com.fasterxml.jackson.databind.ObjectMapper",
          "com.google.re2j.Pattern",
          "org.slf4j.Logger",
          "org.slf4j.nop.NOPServiceProvider");

  /** A program with something first on its class path, and without one of the libraries. */
  private static URLClassLoader program(Path first, String without) throws Exception {
    List<URL> classPath = new ArrayList<>();
    classPath.add(first.toUri().toURL());
    for (String type : LIBRARIES) {
      if (!type.equals(without)) {
        classPath.add(Class.forName(type).getProtectionDomain().getCodeSource().getLocation());
      }
    }
    return new URLClassLoader(classPath.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
  }

  private static Object build(ClassLoader program, boolean trying) throws Throwable {
    Class<?> linter = program.loadClass(SiteLinter.class.getName());
    Object builder = linter.getMethod("builder").invoke(null);
    if (!trying) {
      builder.getClass().getMethod("withoutTrial").invoke(builder);
    }
    Method build = builder.getClass().getMethod("build");
    try {
      return build.invoke(builder);
    } catch (InvocationTargetException failed) {
      throw failed.getCause();
    }
  }

  @Test
  void theLibrariesOfThisBuildWork() throws Exception {
    try (URLClassLoader program = program(folder, "")) {
      assertThatCode(() -> build(program, true)).doesNotThrowAnyException();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "org.yaml.snakeyaml.Yaml",
        "com.networknt.schema.Schema",
        "com.fasterxml.jackson.databind.ObjectMapper",
        "com.fasterxml.jackson.core.JsonFactory",
        "com.fasterxml.jackson.annotation.JsonView",
        "org.slf4j.Logger"
      })
  void oneThatIsMissingIsReported(String library) throws Exception {
    try (URLClassLoader program = program(folder, library)) {
      for (int time = 0; time < 2; time++) {
        assertThatThrownBy(() -> build(program, true))
            .isInstanceOf(IllegalStateException.class)
            .hasMessageStartingWith("the linter does not work with the libraries of this program (")
            .hasMessageContaining("NoClassDefFoundError")
            .message()
            .doesNotContain("\n");
      }
    }
  }

  @Test
  void theTrialCanBeLeftOut() throws Exception {
    try (URLClassLoader program = program(folder, "com.networknt.schema.Schema")) {
      assertThatCode(() -> build(program, false)).doesNotThrowAnyException();
    }
  }

  /** As where a BOM holds a library at a version in which a method had another form. */
  @Test
  void oneThatLacksAMethodIsReported() throws Exception {
    Path source = folder.resolve("SchemaRegistryConfig.java");
    Files.writeString(
        source, "package com.networknt.schema;\npublic class SchemaRegistryConfig {}\n", UTF_8);
    assertThat(
            ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-proc:none", "-d", folder.toString(), source.toString()))
        .isZero();
    try (URLClassLoader program = program(folder, "")) {
      assertThatThrownBy(() -> build(program, true))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("SchemaRegistryConfig")
          .hasCauseInstanceOf(LinkageError.class);
    }
  }
}
