package org.headhouse.linter.rules.supervision;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.PollLoad;
import org.headhouse.linter.line.TimeoutNeed;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Polling;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;

/** {@code supervision.timeout-short}: the times of MODBUS over Serial Line V1.02, added up. */
public final class SupervisionTimeoutShort implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "supervision.timeout-short",
          "The timeout of supervision is at least as long as an answer can take.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Supervision software = site.supervision().orNull();
    Polling polling = software == null ? null : software.polling().orNull();
    if (polling == null || polling.timeout().isFaulty()) {
      return;
    }
    TimeoutNeed need = context.figures().timeoutNeed();
    Interval timeout = polling.timeout().orNull();
    double seconds = timeout == null ? PollLoad.USUAL_TIMEOUT_SECONDS : timeout.seconds();
    if (need == null || seconds >= need.totalSeconds()) {
      return;
    }
    String enough = Shown.atLeastSeconds(need.totalSeconds());
    Message message =
        new Message(
            (timeout == null ? "the usual timeout of 1 s" : "the timeout of " + timeout.written())
                + " is shorter than the "
                + Shown.secondsBeside(seconds, need.totalSeconds())
                + " that an answer can take",
            "units that answer late are taken for silent ("
                + parts(need)
                + "), and their answers disturb the next request",
            "set the software and the file to timeout: " + enough + " or longer");
    Finding finding =
        timeout == null
            ? context.finding(polling.place(), message)
            : context
                .finding(polling.timeout().place(), message)
                .fixedBy(
                    FixDraft.proposed(
                        "Set timeout: " + enough, Edit.write(polling.timeout().place(), enough)));
    context.report(finding);
  }

  private static String parts(TimeoutNeed need) {
    List<String> parts = new ArrayList<>();
    parts.add("request and answer " + Shown.seconds(need.charactersSeconds()));
    parts.add("two silences " + Shown.seconds(need.silenceSeconds()));
    parts.add("processing " + Shown.seconds(need.processingSeconds()));
    if (need.latencySeconds() > 0) {
      parts.add("converter " + Shown.seconds(need.latencySeconds()));
    }
    if (need.otherSeconds() > 0) {
      parts.add("another transaction of the head unit " + Shown.seconds(need.otherSeconds()));
    }
    return String.join(", ", parts);
  }
}
