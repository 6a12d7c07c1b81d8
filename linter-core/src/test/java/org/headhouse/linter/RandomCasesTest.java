package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RandomCasesTest {

  @Test
  void aFailureIsOneLineWithTheSeed() {
    assertThatThrownBy(
            () ->
                RandomCases.each(
                    1000,
                    random ->
                        assertThat(random.nextInt(10))
                            .as("a\nlong\ntext".repeat(100))
                            .isLessThan(9)))
        .isInstanceOf(AssertionError.class)
        .hasNoCause()
        .message()
        .matches("seed ([0-9]+): \\[a long .{1,300} 9 *\\(to see all of it: -Dseed=\\1\\)");
  }

  @Test
  void anExceptionIsToldLikeAFailure() {
    assertThatThrownBy(
            () ->
                RandomCases.each(
                    1,
                    random -> {
                      throw new IllegalStateException("no\nway");
                    }))
        .hasMessage("seed 1: java.lang.IllegalStateException: no way (to see all of it: -Dseed=1)");
  }

  @Test
  void casesAreAsManyKindsInEveryRunTheSame() {
    List<Integer> first = new ArrayList<>();
    RandomCases.each(1000, random -> first.add(random.nextInt()));
    List<Integer> second = new ArrayList<>();
    RandomCases.each(1000, random -> second.add(random.nextInt()));
    assertThat(first).isEqualTo(second).doesNotHaveDuplicates();
    assertThat(RandomCases.share(4000, random -> random.nextInt(4) == 0))
        .isCloseTo(0.25, within(0.06));
  }
}
