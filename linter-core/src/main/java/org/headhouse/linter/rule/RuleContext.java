package org.headhouse.linter.rule;

import java.time.LocalDate;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Place;
import org.jspecify.annotations.Nullable;

/** What a rule may know besides the site, and where its findings go. */
public interface RuleContext {

  /** The value of a parameter: what the policy says, else the default. */
  <T> T value(Parameter<T> parameter);

  /** What the policy says of every site. */
  SitePolicy sitePolicy();

  /** The types of device that the repository knows. */
  DeviceTypes deviceTypes();

  /** What the physics says of the site at hand, computed when it is first asked for. */
  LineFigures figures();

  /** The state of the site that it is compared with, or null where there is none. */
  @Nullable EarlierState earlier();

  /**
   * Whether the line is or may be in operation: it is unless the file says that it is planned, and
   * neither it nor the earlier state shows that somebody was at the line. What is changed at a unit
   * then takes a visit, and can go wrong there.
   */
  boolean isLive();

  /** The day of the check. */
  LocalDate today();

  /** A finding of the rule at hand, to be completed and reported. */
  Finding finding(Place place, Message message);

  /** Takes a finding. */
  void report(Finding finding);

  /** Takes a finding that needs nothing but a place and a message. */
  default void report(Place place, Message message) {
    report(finding(place, message));
  }
}
