package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import gg.jte.output.StringOutput;
import java.util.List;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Result;

/** The page over all sites. */
public final class IndexPage {
  private static final int USUAL_SIZE = 1 << 16;

  private IndexPage() {}

  /**
   * The page in UTF-8.
   *
   * @param results in the files that hold for all sites
   */
  @SuppressWarnings("NullAway") // The compiled templates take null for no interceptor.
  public static byte[] html(IndexFacts facts, List<Result> results, SheetSettings settings) {
    SheetIndex index =
        SheetIndex.of(
            facts,
            results.stream().map(TextReport::headline).map(PlainText::sentence).toList(),
            settings);
    StringOutput out = new StringOutput(USUAL_SIZE);
    JteindexGenerated.render(new PageOutput(out), null, index);
    return out.toString().getBytes(UTF_8);
  }
}
