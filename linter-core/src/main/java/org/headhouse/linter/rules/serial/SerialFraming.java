package org.headhouse.linter.rules.serial;

import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Site;

/** {@code serial.framing}: MODBUS over Serial Line V1.02 §2.5.1. */
public final class SerialFraming implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "serial.framing",
          "A character has eleven bits: one stop bit with parity, two without.",
          Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    LineSettings line = site.line().orNull();
    Parity parity = line == null ? null : line.parity().orNull();
    Integer stopBits = line == null ? null : line.stopBits().orNull();
    if (line == null || parity == null || stopBits == null) {
      return;
    }
    int wanted = parity == Parity.NONE ? 2 : 1;
    if (stopBits != wanted) {
      context.report(
          context
              .finding(
                  line.stopBits().place(),
                  new Message(
                      (parity == Parity.NONE ? "no" : parity.word())
                          + " parity with "
                          + stopBits
                          + (stopBits == 1 ? " stop bit" : " stop bits")
                          + " makes "
                          + (parity == Parity.NONE ? 10 : 12)
                          + "-bit characters; Modbus uses 11",
                      "units that keep to the standard lose characters",
                      "set all units and the file to stop-bits: " + wanted))
              .fixedBy(
                  FixDraft.onSite(
                      "Set the line and all units to stop-bits " + wanted,
                      Edit.plain(line.stopBits().place(), wanted))));
    }
  }
}
