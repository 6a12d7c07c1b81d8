package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * The content of the page of one site.
 *
 * @param name of the page, without its ending
 * @param open results that are to be fixed
 * @param accepted results that were accepted on purpose
 * @param wiring what is still wrong with the wiring of the line as a whole
 */
record Sheet(
    String name,
    PageFrame frame,
    SheetHead head,
    List<RuleResults> open,
    List<RuleResults> accepted,
    Drawings drawings,
    List<OpenPoint> wiring,
    List<LandingRow> landing,
    List<SetUpCard> cards,
    List<FigureTable> figures,
    StormTable storm,
    Proving proving,
    HandOver handOver) {

  static Sheet of(SiteFacts facts, String name, SheetSettings settings) {
    Attention attention = new Attention(facts.site(), facts.results());
    List<FigureTable> figures =
        new ArrayList<>(
            SegmentTable.of(
                facts.site(), facts.figures().segments(), settings.policy(), settings.measure()));
    figures.add(TrafficTable.of(facts.site(), facts.figures(), settings.policy()));
    return new Sheet(
        name,
        PageFrame.ofSite(name, facts, settings.paper()),
        SheetHead.of(facts, settings),
        RuleResults.of(facts.results(), false, settings.requirements()),
        RuleResults.of(facts.results(), true, settings.requirements()),
        facts.drawings(),
        attention.wiringOfWholeLine(),
        new LandingSchedule(facts.site(), facts.figures(), attention, settings.measure()).rows(),
        facts.site().units().stream().map(unit -> SetUpCard.of(unit, facts, attention)).toList(),
        figures,
        StormTable.of(facts.site(), facts.figures()),
        Proving.of(facts, settings),
        HandOver.of(facts.site(), settings.policy().keptFree(), settings.date()));
  }

  /** The pages of their own beside this one. */
  List<Fact> papers() {
    return List.of(
        new Fact("Certificate", PageNames.link(PageNames.certificate(name))),
        new Fact("Night card", PageNames.link(PageNames.nightCard(name))),
        new Fact("Yearly sheet", PageNames.link(PageNames.yearly(name))),
        new Fact("Van sheet", PageNames.link(PageNames.van(name))),
        new Fact("Materials and labels", PageNames.link(PageNames.materials(name))),
        new Fact("When it does not work", PageNames.link(PageNames.faults(name))));
  }

  /** The sources of all figures, which rows refer to by number. */
  List<String> sources() {
    return FigureTable.sources(figures);
  }

  /** The zones as a file beside the page. */
  String zonesLink() {
    return PageNames.link(PageNames.zones(name));
  }
}
