package org.headhouse.linter;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;

/** A site's text together with the two files of settings that its figures depend on. */
public record LineCheck(String site, String deviceTypes, String policy) {

  private static final String TYPES = "format: 1\ndevice-types:\n";
  private static final String NO_TYPES = "format: 1\ndevice-types: []\n";

  /** A record that lacks measurements has a test of its own. */
  private static final String POLICY =
      "format: 1\nrule-set: 1\nrules:\n  commissioning.unmeasured: {level: none}\n";

  public static LineCheck of(Object site) {
    return new LineCheck(site.toString(), NO_TYPES, POLICY);
  }

  /**
   * With types of device, each the inside of a flow mapping; they need no bias and wait for other
   * clients unless they say so.
   */
  public LineCheck types(String... types) {
    List<String> all = new ArrayList<>();
    for (String type : types) {
      String need = type.contains("idle-bias") ? "" : ", idle-bias: not-needed";
      all.add(type + need + ", other-clients: waits");
    }
    return typesAsWritten(all.toArray(String[]::new));
  }

  /** With types of device of which no more is known than is written. */
  public LineCheck typesAsWritten(String... types) {
    StringBuilder text = new StringBuilder(TYPES);
    for (String type : types) {
      text.append("  - {title: Controller, ").append(type).append("}\n");
    }
    return new LineCheck(site, text.toString(), policy);
  }

  /** With a parameter of a rule. */
  public LineCheck parameter(String rule, String name, String value) {
    return new LineCheck(
        site,
        deviceTypes,
        POLICY + "  " + rule + ": {parameters: {" + name + ": " + value + "}}\n");
  }

  /** With one text of the site replaced, which has to be there. */
  public LineCheck with(String text, String other) {
    if (!site.contains(text)) {
      throw new IllegalArgumentException("the site has no " + text);
    }
    return new LineCheck(site.replace(text, other), deviceTypes, policy);
  }

  /** With the type of the units that say no other. */
  private String allTypes() {
    return site.contains(SiteText.OF_PLAIN_TYPE)
        ? (deviceTypes.equals(NO_TYPES) ? TYPES : deviceTypes) + SiteText.PLAIN
        : deviceTypes;
  }

  private SiteLinter linter() {
    try {
      return SiteLinter.builder()
          .deviceTypes(SiteInput.text("device-types.yaml", allTypes()))
          .policy(SiteInput.text("linter.yaml", policy))
          .build();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** All results, in the order of the file; a failure of a rule is one of the test. */
  public List<Result> results() {
    CheckReport report = linter().checkText("example.yaml", site);
    for (Notification notification : report.notifications()) {
      throw new AssertionError(notification.text());
    }
    return report.results();
  }

  /** {@code level rule} of each result. */
  public List<String> reported() {
    return results().stream().map(result -> result.level().word() + " " + result.rule()).toList();
  }

  /** The ids of the rules that are broken. */
  public List<String> rules() {
    return results().stream().map(Result::rule).toList();
  }

  /** What is reported by one rule, in full. */
  public List<String> reportedBy(String rule) {
    return results().stream()
        .filter(result -> result.rule().equals(rule))
        .map(TextReport::inOneLine)
        .toList();
  }

  /** The text that the only result of a rule marks. */
  public String marked(String rule) {
    List<Result> found = results().stream().filter(one -> one.rule().equals(rule)).toList();
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " results of " + rule + ": " + reported());
    }
    var region = found.get(0).location().region();
    String line = site.lines().toList().get(region.startLine() - 1);
    return line.substring(region.startColumn() - 1, region.endColumn() - 1);
  }

  /** The figures; a trouble is a failure of the test. */
  public SiteFigures figures() {
    List<SiteFigures> taken = new ArrayList<>();
    List<Notification> troubles =
        linter().figures(Stream.of(SiteInput.text("example.yaml", site)), taken::add);
    if (!troubles.isEmpty()) {
      throw new AssertionError(troubles.get(0).text());
    }
    return taken.get(0);
  }
}
