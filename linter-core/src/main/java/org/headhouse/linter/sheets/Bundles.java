package org.headhouse.linter.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.headhouse.linter.report.SheetFile;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SiteBundle;
import org.headhouse.linter.report.SiteSheet;
import org.headhouse.linter.report.sheet.PageNames;
import org.headhouse.linter.report.sheet.SheetSettings;
import org.headhouse.linter.report.sheet.SiteFacts;
import org.headhouse.linter.report.sheet.StartPage;
import org.headhouse.linter.report.sheet.StartRow;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.site.ChainItem;
import org.jspecify.annotations.Nullable;

/**
 * Collects what goes into the bundle of each customer; a site without a customer, or with one that
 * is not understood, has a bundle of its own. For one thread, in the order of the sites.
 */
final class Bundles {
  private static final String TYPES = "device-types.yaml";

  private final LinterContext context;
  private final SheetSettings settings;
  private final Map<String, Content> byCustomer = new TreeMap<>();
  private final List<Content> bySite = new ArrayList<>();

  Bundles(LinterContext context, SheetSettings settings) {
    this.context = context;
    this.settings = settings;
  }

  /** What one bundle gets; the sheets of many sites are not kept, but their names. */
  private static final class Content {
    private final String owner;
    private final List<StartRow> rows = new ArrayList<>();
    private final List<String> sheets = new ArrayList<>();
    private final List<SheetFile> sites = new ArrayList<>();
    private final Set<String> types = new TreeSet<>();

    Content(String owner) {
      this.owner = owner;
    }

    void add(SiteFacts facts, String name, SiteSheet sheet, byte[] source) {
      rows.add(StartRow.of(facts, name));
      sheet.files().forEach(file -> sheets.add(file.name()));
      sites.add(new SheetFile("sites/" + name + ".yaml", source));
      for (ChainItem item : facts.site().items()) {
        item.deviceType().optional().ifPresent(types::add);
      }
    }
  }

  /**
   * @param name of the page of the site
   * @param source the bytes of its file
   */
  void add(SiteFacts facts, String name, SiteSheet sheet, byte[] source) {
    String customer = facts.site().customer().orNull();
    Content content = customer == null ? new Content(name) : ofCustomer(customer);
    if (customer == null) {
      bySite.add(content);
    }
    content.add(facts, name, sheet, source);
  }

  private Content ofCustomer(String customer) {
    return byCustomer.computeIfAbsent(customer, Content::new);
  }

  /**
   * The bundles, once all sites have their names.
   *
   * @param covers the file of the cover of each customer who has one
   */
  List<SiteBundle> all(Map<String, String> covers) {
    PageNames names = new PageNames();
    List<SiteBundle> bundles = new ArrayList<>();
    byCustomer.forEach((customer, all) -> bundles.add(bundle(all, covers.get(customer), names)));
    bySite.forEach(one -> bundles.add(bundle(one, null, names)));
    return bundles;
  }

  private SiteBundle bundle(Content content, @Nullable String cover, PageNames names) {
    List<String> sheets = new ArrayList<>(content.sheets);
    if (cover != null) {
      sheets.add(cover);
    }
    List<SheetFile> further = new ArrayList<>(content.sites);
    byte[] types = UsedDeviceTypes.of(context.types(), content.types, context.settings().limits());
    if (types != null) {
      further.add(new SheetFile(TYPES, types));
    }
    // The sheets have a link to the page over all sites: in a bundle, that is over those in it.
    further.add(
        new SheetFile(
            SheetReport.PAGE, StartPage.html(content.owner, content.rows, cover, settings)));
    return new SiteBundle(names.takeBundle(content.owner), sheets, further);
  }
}
