package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.change.Difference;
import org.headhouse.linter.change.ReprovingCheck;
import org.junit.jupiter.api.Test;

/** The words on what makes a proof invalid are those of the check of a changed file. */
class VoidingChangesTest {
  @Test
  void everyKindOfDifferenceIsInOneOfThem() {
    Set<Class<?>> said =
        VoidingChanges.all().stream()
            .flatMap(kind -> kind.samples().stream())
            .map(Object::getClass)
            .collect(Collectors.toSet());
    assertThat(said)
        .containsExactlyInAnyOrderElementsOf(
            Stream.of(Difference.class.getPermittedSubclasses()).toList());
  }

  @Test
  void whatIsPutTogetherCountsAlike() {
    for (VoidingChanges.Kind kind : VoidingChanges.all()) {
      assertThat(kind.samples().stream().map(ReprovingCheck::concerns).distinct())
          .as(kind.words())
          .containsExactly(kind.voids());
    }
    assertThat(VoidingChanges.words(false)).hasSize(3);
  }
}
