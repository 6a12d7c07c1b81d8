package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;

/** The page with the materials and labels of one site: for the store and the workshop. */
public final class MaterialsPage {
  private static final int USUAL_SIZE = 1 << 15;

  private MaterialsPage() {}

  /**
   * The page in UTF-8.
   *
   * @param name of the page of the site, without its ending
   */
  @SuppressWarnings("NullAway") // The compiled templates take null for no interceptor.
  public static byte[] html(SiteFacts facts, String name, SheetSettings settings) {
    StringOutput out = new StringOutput(USUAL_SIZE);
    JtematerialsGenerated.render(
        new OwaspHtmlTemplateOutput(out), null, MaterialsSheet.of(facts, name, settings));
    return out.toString().getBytes(UTF_8);
  }
}
