package org.headhouse.linter.report.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.headhouse.linter.report.UriText;
import org.headhouse.linter.site.Site;

/**
 * Names of pages, distinct also where file names do not differ by case. For one thread, in the
 * order of the sites.
 */
public final class PageNames {
  /** The name of the page over all sites. */
  public static final String INDEX = "index";

  private static final String CERTIFICATE = "-certificate";
  private static final String NIGHT_CARD = "-night-card";
  private static final String YEARLY = "-yearly";
  private static final String MATERIALS = "-materials";
  private static final String FAULTS = "-faults";
  private static final String VAN = "-van";
  private static final String COVER = "-cover";
  private static final String BUNDLE = "-bundle";
  private static final String VISIT = "-visit.csv";

  /** What follows the name of a site in the names of its pages. */
  private static final List<String> ENDS =
      List.of("", CERTIFICATE, NIGHT_CARD, YEARLY, MATERIALS, FAULTS, VAN);

  private static final int LONGEST = 80;
  private static final Pattern UNFIT = Pattern.compile("[^\\p{L}\\p{N}_-]+");

  private final Set<String> taken = new HashSet<>(Set.of(INDEX));

  /** The preferred name for a site: its id, else that of its file. */
  public static String wanted(Site site) {
    return site.id().isGiven() ? site.id().or("") : ofPath(site.source().path());
  }

  private static String ofPath(String path) {
    String name = UNFIT.matcher(path.replaceFirst("\\.[^./]*$", "")).replaceAll("-");
    int tooMany = name.codePointCount(0, name.length()) - LONGEST;
    String end = tooMany > 0 ? name.substring(name.offsetByCodePoints(0, tooMany)) : name;
    String trimmed = end.replaceAll("^-+|-+$", "");
    return trimmed.isEmpty() ? "site" : trimmed;
  }

  /**
   * The name where it is free for all pages of a site, else with the first free number from 2 on.
   */
  public String take(String wanted) {
    return take(wanted, ENDS);
  }

  /** The file of the page over the sites of a customer. Taken once all sites have their names. */
  public String takeCover(String customer) {
    return take(customer, List.of(COVER)) + COVER + ".html";
  }

  /**
   * The name of the bundle of a customer, or of a site that is known by its page. Names of bundles
   * are apart from those of pages.
   */
  public String takeBundle(String owner) {
    return take(owner, List.of(BUNDLE)) + BUNDLE;
  }

  private String take(String wanted, List<String> ends) {
    String name = wanted;
    for (int number = 2; isTaken(name, ends); number++) {
      name = wanted + "-" + number;
    }
    for (String end : ends) {
      taken.add(key(name + end));
    }
    return name;
  }

  private boolean isTaken(String name, List<String> ends) {
    return ends.stream().anyMatch(end -> taken.contains(key(name + end)));
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** The file of a page. */
  public static String page(String name) {
    return name + ".html";
  }

  /** The file of the certificate beside a page. */
  static String certificate(String name) {
    return page(name + CERTIFICATE);
  }

  /** The file of the night card beside a page. */
  static String nightCard(String name) {
    return page(name + NIGHT_CARD);
  }

  /** The file of the yearly sheet beside a page. */
  static String yearly(String name) {
    return page(name + YEARLY);
  }

  /** The file of materials and labels beside a page. */
  static String materials(String name) {
    return page(name + MATERIALS);
  }

  /** The file of what to measure when the line does not work, beside a page. */
  static String faults(String name) {
    return page(name + FAULTS);
  }

  /** The file of the sheet for the van, beside a page. */
  static String van(String name) {
    return page(name + VAN);
  }

  /** The file of the zones beside a page. */
  public static String zones(String name) {
    return name + "-zones.csv";
  }

  /** The file to fill in on a visit, beside a page. */
  static String visit(String name) {
    return name + VISIT;
  }

  /** Whether a file is one to fill in on a visit. */
  public static boolean isVisit(String file) {
    return file.endsWith(VISIT);
  }

  /** A file beside a page as a link. */
  static String link(String file) {
    return UriText.of(file);
  }
}
