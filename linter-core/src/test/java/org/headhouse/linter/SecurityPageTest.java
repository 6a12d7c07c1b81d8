package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each promise of the page on security names tests that are there. */
class SecurityPageTest {
  private static final Pattern TEST = Pattern.compile("`([A-Z]\\w+)\\.(\\w+)`");

  static List<String> promises() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("docs/security.md"));
    int from = lines.indexOf("## What is promised");
    int to = lines.indexOf("## What is not promised");
    return lines.subList(from, to).stream()
        .filter(line -> line.startsWith("| ") && !line.equals("| promise | held by |"))
        .toList();
  }

  private static Map<String, String> testClasses() throws IOException {
    Path root = Path.of("src/test/java");
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .map(file -> root.relativize(file).toString())
          .filter(file -> file.endsWith(".java"))
          .map(file -> file.replace(".java", "").replaceAll("[/\\\\]", "."))
          .collect(
              Collectors.toMap(
                  name -> name.substring(name.lastIndexOf('.') + 1),
                  Function.identity(),
                  (one, other) -> one));
    }
  }

  @Test
  void thereArePromises() throws IOException {
    assertThat(promises()).hasSizeGreaterThan(15);
  }

  @ParameterizedTest
  @MethodSource("promises")
  void eachHasItsTest(String promise) throws IOException, ClassNotFoundException {
    List<MatchResult> named = TEST.matcher(promise).results().toList();
    assertThat(named).isNotEmpty();
    for (MatchResult test : named) {
      String name = testClasses().get(test.group(1));
      assertThat(name).as(test.group()).isNotNull();
      assertThat(Arrays.stream(Class.forName(name).getDeclaredMethods()))
          .as(test.group())
          .anyMatch(method -> method.getName().equals(test.group(2)) && isTest(method));
    }
  }

  private static boolean isTest(Method method) {
    return method.isAnnotationPresent(Test.class)
        || method.isAnnotationPresent(ParameterizedTest.class);
  }
}
