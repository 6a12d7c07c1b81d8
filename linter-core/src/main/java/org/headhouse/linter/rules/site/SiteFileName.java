package org.headhouse.linter.rules.site;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;

/** {@code site.file-name}. */
public final class SiteFileName implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "site.file-name",
          "The file is named after the site, or is called site.yaml in a folder named after it.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    String id = site.id().orNull();
    String path = site.source().path();
    if (id == null || path.startsWith("<")) {
      return;
    }
    String[] steps = path.split("/", -1);
    String file = steps[steps.length - 1];
    int point = file.lastIndexOf('.');
    String stem = point > 0 ? file.substring(0, point) : file;
    boolean namesNothing = stem.equals("site");
    // A file that is named without its folder may lie in the right one.
    String folder = steps.length > 1 ? steps[steps.length - 2] : id;
    if (stem.equals(id) || (namesNothing && folder.equals(id))) {
      return;
    }
    context.report(
        site.id().place(),
        new Message(
            "the site \""
                + id
                + "\" is in the "
                + (namesNothing ? "folder " + folder : "file " + file),
            "nobody finds a site whose file has another name",
            namesNothing
                ? "name the folder " + id + ", or correct the id"
                : "name the file " + id + ".yaml, or correct the id"));
  }
}
