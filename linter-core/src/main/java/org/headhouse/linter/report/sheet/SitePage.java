package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;

/** The page of one site: one file without references and without a script. */
public final class SitePage {
  private static final int USUAL_SIZE = 1 << 16;

  private SitePage() {}

  /**
   * The page in UTF-8.
   *
   * @param name of the page, without its ending
   */
  @SuppressWarnings("NullAway") // The compiled templates take null for no interceptor.
  public static byte[] html(SiteFacts facts, String name, SheetSettings settings) {
    StringOutput out = new StringOutput(USUAL_SIZE);
    JtesiteGenerated.render(
        new OwaspHtmlTemplateOutput(out), null, Sheet.of(facts, name, settings));
    return out.toString().getBytes(UTF_8);
  }
}
