package org.headhouse.linter.goal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.result.FixKind;
import org.junit.jupiter.api.Test;

/** What the page on fixing shows is what the goal says. */
class FixingPageTest {
  private static final Path FAULTY = Path.of("../sample-sites/faulty");

  /** As the plugin has them: the page shows its goal. */
  private static final class Properties implements ParameterNames {
    @Override
    public String of(String parameter) {
      return "linter." + parameter;
    }

    @Override
    public String typed(String parameter) {
      return "-D" + of(parameter);
    }
  }

  @Test
  void theDifferenceShownIsThatOfTheFaultySite() throws Exception {
    Matcher shown =
        Pattern.compile("<!-- output: fix -->\n```diff\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(Path.of("docs/fixing.md")));
    assertThat(shown.find()).isTrue();
    SiteLinter linter =
        SiteLinter.builder().deviceTypes(FAULTY.resolve("device-types.yaml")).build();
    FixLog log = new FixLog(FixKind.SAFE, new Properties());
    List<String> lines = new ArrayList<>();
    SiteInput site = SiteInput.file(FAULTY.resolve("sites/ferncombe.yaml"), "sites/ferncombe.yaml");
    assertThat(linter.fix(Stream.of(site), FixKind.SAFE, one -> lines.addAll(log.lines(one))))
        .isEmpty();
    lines.addAll(log.summary(false));
    // A page does well without spaces at the ends of lines.
    assertThat(lines.stream().map(String::stripTrailing).toList())
        .isEqualTo(shown.group(1).lines().toList());
  }
}
