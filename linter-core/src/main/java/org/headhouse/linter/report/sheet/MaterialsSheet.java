package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.materials.BillOfMaterials;
import org.headhouse.linter.materials.MaterialCount;
import org.headhouse.linter.report.MaterialWords;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;

/**
 * The content of the page with the materials and labels of one site.
 *
 * @param link to the page of the site
 * @param site what people call the site
 * @param use what the list is for, which depends on the stage
 * @param slack the share of cable that is added
 * @param notCounted what the amounts lack, by material
 */
record MaterialsSheet(
    PageFrame frame,
    String link,
    SheetHead head,
    String site,
    String use,
    String slack,
    List<MaterialRow> rows,
    List<String> notCounted,
    List<CableLabel> cables,
    List<ItemLabel> items) {
  private static final int MANY = 2;

  static MaterialsSheet of(SiteFacts facts, String name, SheetSettings settings) {
    BillOfMaterials bill = facts.materials();
    List<MaterialRow> rows = new ArrayList<>();
    List<String> notCounted = new ArrayList<>();
    for (MaterialCount count : bill.counts()) {
      rows.add(MaterialRow.of(count, bill.measure(), settings.slack()));
      for (String place : count.notCounted()) {
        notCounted.add(
            PlainText.sentence(MaterialWords.name(count.material(), MANY) + ": " + place));
      }
    }
    return new MaterialsSheet(
        PageFrame.ofSite(name, facts, settings.paper()),
        PageNames.link(PageNames.page(name)),
        SheetHead.of(facts, settings),
        SheetHead.wholeTitle(facts.site()),
        use(facts.site()),
        Shown.tolerance(settings.slack().share()),
        rows,
        notCounted,
        CableLabel.of(facts.site(), bill.measure()),
        ItemLabel.of(facts.site()));
  }

  private static String use(Site site) {
    if (site.stage().is(Stage.COMMISSIONED)) {
      return "The line is commissioned: this is what it is made of, and no order.";
    }
    return site.isPlanned()
        ? "The line is planned. Where part of it is there already, order only the rest: the goal"
            + " changes lists what a change needs."
        : "The file does not say whether the line is planned or commissioned: find out before you"
            + " order.";
  }
}
