package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.Site;

/** Adds to each step what keeps it from doing harm. */
final class PlanBuilder {
  private final ChainStates chains;
  private final Clients clients;
  private final ReadingsMissed missed;
  private final boolean isOverEthernet;

  private PlanBuilder(Site before, Site after, ChainStates chains) {
    this.chains = chains;
    this.clients = new Clients(before, after, chains);
    this.missed = new ReadingsMissed(before, chains);
    this.isOverEthernet =
        before.supervision().orNull() != null
            && before.supervision().orNull().link().is(Link.ETHERNET);
  }

  static List<PlannedStep> of(
      Site before, Site after, ChainStates chains, List<Phase> work, List<Difference> differences) {
    if (work.isEmpty()) {
      return List.of();
    }
    PlanBuilder builder = new PlanBuilder(before, after, chains);
    DueMeasurements found = new DueMeasurements(after, work, differences);
    List<Phase> phases = new ArrayList<>();
    IdentityHashMap<Phase, List<Proof>> measured = new IdentityHashMap<>();
    for (Phase phase : work) {
      Phase isolated =
          phase.step() instanceof Step.Wire
              ? phase.isolating(found.isolated(phase, chains))
              : phase;
      phases.add(isolated);
      measured.put(isolated, found.in(phase));
    }
    return builder.planned(builder.withSoftwareStopped(phases), measured);
  }

  private List<PlannedStep> planned(
      List<Phase> phases, IdentityHashMap<Phase, List<Proof>> measured) {
    StepChecks checks = new StepChecks(clients.hasSoftware(), missed);
    List<PlannedStep> planned = new ArrayList<>();
    for (Phase phase : phases) {
      Clients.Changes polling = polling(phase);
      planned.add(
          new PlannedStep(
              phase.step(),
              polling.first(),
              names(missed.during(phase)),
              names(missed.ventsStill(phase)),
              polling.last(),
              checks.of(phase, polling, measured.getOrDefault(phase, List.of())),
              wayBack(phase, polling)));
    }
    return planned;
  }

  /** What is left off the line is not asked either: at its old address another may answer. */
  private static WayBack wayBack(Phase phase, Clients.Changes polling) {
    return new WayBack(
        undone(polling.last()),
        phase.back(),
        phase.back() == null ? List.of() : undone(polling.first()));
  }

  private Clients.Changes polling(Phase phase) {
    return phase.step() instanceof Step.StopSoftware
        ? new Clients.Changes(List.of(), clients.unknownZones())
        : clients.around(phase);
  }

  private static List<String> names(List<TrackedItem> items) {
    return items.stream().map(TrackedItem::name).distinct().toList();
  }

  private static List<PollingChange> undone(List<PollingChange> changes) {
    List<PollingChange> undone = new ArrayList<>(changes);
    Collections.reverse(undone);
    return undone.stream().map(PollingChange::undone).toList();
  }

  /** Software is stopped before the first step with which an address may be another device's. */
  private List<Phase> withSoftwareStopped(List<Phase> phases) {
    int first = -1;
    int last = -1;
    for (int i = 0; i < phases.size(); i++) {
      if (clients.hasSoftware() && needsSilence(phases.get(i))) {
        first = first < 0 ? i : first;
        last = i;
      }
    }
    List<Phase> all = new ArrayList<>(phases);
    if (first >= 0) {
      if (clients.keepsSoftware()) {
        all.add(last + 1, pause(new Step.ResumeSoftware(), phases.get(last).after()));
      }
      all.add(first, pause(new Step.StopSoftware(), phases.get(first).before()));
    }
    return all;
  }

  private static Phase pause(Step step, LineMoment now) {
    return new Phase(step, StepInverse.of(step), now, now, List.of());
  }

  private boolean needsSilence(Phase phase) {
    Step step = phase.step();
    if (step instanceof Step.SetLine
        || step instanceof Step.SwitchOff
        || step instanceof Step.Separate
        || step instanceof Step.SetAside
        || step instanceof Step.BringBack) {
      return true;
    }
    if (step instanceof Step.SetUnit set) {
      return isOverEthernet
          && set.settings().stream().anyMatch(one -> one.what().equals("network.ip"));
    }
    return hasOtherOwner(phase) || (step instanceof Step.Wire wire && isOtherwiseRead(wire));
  }

  private boolean hasOtherOwner(Phase phase) {
    for (TrackedItem item : chains.all().items()) {
      Integer from = phase.before().answering().get(item);
      Integer to = phase.after().answering().get(item);
      if (from != null && to != null && !from.equals(to)) {
        return true;
      }
      if (from == null && to != null && phase.before().answering().containsValue(to)) {
        return true;
      }
    }
    return false;
  }

  /** Another type may have other registers, and another head unit asks anew. */
  private static boolean isOtherwiseRead(Step.Wire wire) {
    return wire.places().stream()
        .flatMap(place -> place.actions().stream())
        .anyMatch(
            action ->
                action instanceof FieldAction.Set
                    || (action instanceof FieldAction.Exchange exchange
                        && exchange.device().stream()
                            .anyMatch(one -> Objects.equals(one.what(), "device-type"))));
  }
}
