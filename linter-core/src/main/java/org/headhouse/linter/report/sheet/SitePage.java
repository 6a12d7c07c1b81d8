package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import gg.jte.html.HtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.function.Consumer;
import org.headhouse.linter.report.SheetFile;

/** The pages of one site: each one file without a script and without references but for links. */
@SuppressWarnings("NullAway") // The compiled templates take null for no interceptor.
public final class SitePage {
  private static final int USUAL_SIZE = 1 << 16;

  private SitePage() {}

  /**
   * The page in UTF-8.
   *
   * @param name of the page, without its ending
   */
  public static byte[] html(SiteFacts facts, String name, SheetSettings settings) {
    Sheet sheet = Sheet.of(facts, name, settings);
    return page(out -> JtesiteGenerated.render(out, null, sheet));
  }

  /**
   * The pages beside it: what the grower gets, what hangs at the head unit, and what is taken along
   * each year, each of one sheet of paper; for the van; for the store and the workshop; for a line
   * that does not work; and a list to fill in on a visit.
   *
   * @param name of the page of the site, without its ending
   */
  public static List<SheetFile> papers(SiteFacts facts, String name, SheetSettings settings) {
    Certificate certificate = Certificate.of(facts, name, settings);
    NightCard night = NightCard.of(facts, name, settings);
    YearlySheet yearly = YearlySheet.of(facts, name, settings);
    MaterialsSheet materials = MaterialsSheet.of(facts, name, settings);
    FaultsSheet faults = FaultsSheet.of(facts, name, settings);
    VanSheet van = VanSheet.of(facts, name, settings);
    return List.of(
        new SheetFile(
            PageNames.certificate(name),
            page(out -> JtecertificateGenerated.render(out, null, certificate))),
        new SheetFile(
            PageNames.nightCard(name), page(out -> JtenightGenerated.render(out, null, night))),
        new SheetFile(
            PageNames.yearly(name), page(out -> JteyearlyGenerated.render(out, null, yearly))),
        new SheetFile(
            PageNames.materials(name),
            page(out -> JtematerialsGenerated.render(out, null, materials))),
        new SheetFile(
            PageNames.faults(name), page(out -> JtefaultsGenerated.render(out, null, faults))),
        new SheetFile(PageNames.van(name), page(out -> JtevanGenerated.render(out, null, van))),
        new SheetFile(PageNames.visit(name), VisitCsv.of(facts, settings.measure())));
  }

  private static byte[] page(Consumer<HtmlTemplateOutput> template) {
    StringOutput out = new StringOutput(USUAL_SIZE);
    template.accept(new PageOutput(out));
    return out.toString().getBytes(UTF_8);
  }
}
