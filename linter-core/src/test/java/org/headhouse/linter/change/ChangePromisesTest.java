package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The list of what a plan promises, and the tests that hold it to that. */
class ChangePromisesTest {
  private static final Path PAGE = Path.of("docs/changes.md");
  private static final Pattern PROMISE = Pattern.compile("(?m)^\\| `([a-z-]+)` \\|");
  private static final List<Class<?>> TESTS =
      List.of(
          AnyChangeTest.class,
          AddressingWaysTest.class,
          ExchangeTest.class,
          PlanOfWorkTest.class,
          StepOrderTest.class,
          WorkPlanTest.class);

  private static Set<String> promised() throws IOException {
    return PROMISE
        .matcher(Files.readString(PAGE))
        .results()
        .map(match -> match.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** No promise without a test, and no test of what is promised nowhere. */
  @Test
  void eachPromiseHasItsTest() throws IOException {
    Map<String, Method> tested = new TreeMap<>();
    for (Class<?> type : TESTS) {
      for (Method method : type.getDeclaredMethods()) {
        Promise promise = method.getAnnotation(Promise.class);
        for (String one : promise == null ? new String[0] : promise.value()) {
          tested.put(one, method);
        }
      }
    }
    assertThat(tested.keySet()).isNotEmpty().isEqualTo(promised());
  }
}
