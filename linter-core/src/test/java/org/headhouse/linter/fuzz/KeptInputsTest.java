package org.headhouse.linter.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the fuzzer starts from and what it found worth keeping, tried without it. */
class KeptInputsTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "fuzz");

  @Tag("long")
  @ParameterizedTest
  @EnumSource
  void thePropertyHoldsForEach(Subject subject) throws IOException {
    Property property = subject.property();
    List<byte[]> inputs = new ArrayList<>(Inputs.of(FOLDER, subject));
    inputs.addAll(Seeds.of(subject.food()));
    for (byte[] input : inputs) {
      assertThatCode(() -> property.tryWith(input))
          .as(Inputs.text(input))
          .doesNotThrowAnyException();
    }
  }

  @Test
  void whatIsWrittenIsReadAlike() {
    byte[] all = new byte[256];
    for (int i = 0; i < all.length; i++) {
      all[i] = (byte) i;
    }
    assertThat(Inputs.bytes(Inputs.text(all))).isEqualTo(all);
    assertThat(Inputs.text(all)).matches("[ -~]+");
  }
}
