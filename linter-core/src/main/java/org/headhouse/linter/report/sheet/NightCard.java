package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.headhouse.linter.report.sheet.NightHouse.Closing;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * The content of the card that hangs at the head unit, for whoever comes at night.
 *
 * @param name of the page of the site, without its ending
 * @param head the name of the head unit
 * @param hasVents whether some unit moves vents, or may do so
 * @param headVents the house of the head unit where it moves vents, or may do so; empty where not
 * @param byHand the followers that do not close by themselves, put together by the reason
 * @param neverSeen those that are set to close, and nobody saw it, by the time that they take
 * @param closing those that close by themselves, by the time that they take
 * @param feeding the names of the houses and devices whose supply feeds the bias of others, joined;
 *     empty for none but the head unit
 * @param repeaters their names joined; empty for none
 */
record NightCard(
    String name,
    PageFrame frame,
    String title,
    String head,
    boolean hasVents,
    String headVents,
    List<Group> byHand,
    List<Group> neverSeen,
    List<Group> closing,
    String feeding,
    String repeaters) {

  /**
   * Houses that do the same.
   *
   * @param what why they stay open, or the time after which they are shut
   */
  record Group(String what, String houses) {}

  /** A time is rounded up to a step that a watch shows. */
  private static final int STEP_SECONDS = 5;

  NightCard {
    byHand = List.copyOf(byHand);
    neverSeen = List.copyOf(neverSeen);
    closing = List.copyOf(closing);
  }

  static NightCard of(SiteFacts facts, String name, SheetSettings settings) {
    Site site = facts.site();
    Unit head = site.head();
    List<NightHouse> houses = NightHouse.of(facts);
    return new NightCard(
        name,
        PageFrame.ofSite(name, facts, settings.paper()),
        SheetHead.title(site),
        head == null ? "the head unit" : PlainText.name(head),
        !houses.isEmpty(),
        houses.stream().filter(NightHouse::isHead).map(NightHouse::name).findFirst().orElse(""),
        groups(houses, Closing.BY_HAND),
        groups(houses, Closing.NEVER_SEEN),
        groups(houses, Closing.SEEN),
        feeding(site),
        site.items().stream()
            .filter(item -> item.kind() == ItemKind.REPEATER)
            .map(PlainText::name)
            .collect(Collectors.joining(", ")));
  }

  /** But for the head unit, whose failure is on the card by itself. */
  private static String feeding(Site site) {
    List<String> names =
        BiasFeed.of(site).stream()
            .filter(item -> !item.isSameItemAs(site.head()))
            .map(PlainText::name)
            .toList();
    return String.join(" or ", names);
  }

  private static List<Group> groups(List<NightHouse> houses, Closing closing) {
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (NightHouse house : houses) {
      if (!house.isHead() && house.closing() == closing) {
        String what = closing == Closing.BY_HAND ? house.why() : within(house.seconds());
        names.computeIfAbsent(what, any -> new ArrayList<>()).add(house.name());
      }
    }
    List<Group> groups = new ArrayList<>();
    names.forEach((what, same) -> groups.add(new Group(what, String.join(", ", same))));
    return groups;
  }

  private static String within(double seconds) {
    long steps = (long) Math.ceil(seconds / STEP_SECONDS);
    return "shut within " + steps * STEP_SECONDS + " seconds";
  }

  /** The sheets of the site, beside this page. */
  String sheetsLink() {
    return PageNames.link(PageNames.page(name));
  }
}
