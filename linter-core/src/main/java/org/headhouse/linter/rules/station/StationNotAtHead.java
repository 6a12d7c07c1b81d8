package org.headhouse.linter.rules.station;

import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;

/** {@code station.not-at-head}: common practice, no source. */
public final class StationNotAtHead implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "station.not-at-head", "The weather station is wired to the head unit.", Level.ERROR)
          .yieldingTo("head.missing", "head.duplicate");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    WeatherStation station = site.weatherStation().orNull();
    Unit head = site.head();
    Unit at = station == null ? null : site.unit(station.at().orNull());
    if (station != null && head != null && at != null && !at.isSameItemAs(head)) {
      context.report(
          context
              .finding(
                  station.at().place(),
                  new Message(
                      "the weather station is wired to " + at.called() + ", not to the head unit",
                      "only the head unit shares readings with the followers",
                      "isolate the supply, wire it to "
                          + head.called()
                          + ", and set at to "
                          + head.called()))
              .related(head.role().place().region(), head.called() + " is the head unit")
              .fixedBy(
                  FixDraft.proposed(
                      "Wire the weather station to " + head.called(),
                      Edit.write(station.at().place(), head.name().or("")))));
    }
  }
}
