package org.headhouse.linter.fix;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Result;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the next fixes: all at once, else those that are good one by one, else one together
 * with the fixes of what shows only after it.
 */
final class Round {
  /** A misspelt role may hide wrong sources, and these hide nothing more. */
  private static final int MOST_TO_FOLLOW = 8;

  /** What is written by a wrong name, such as a suppression, has no effect until it is right. */
  private static final String NAMES = "reference.unknown";

  private final State base;
  private final FixKind asked;
  private final CheckBudget checks;

  Round(State base, FixKind asked, CheckBudget checks) {
    this.base = base;
    this.asked = asked;
    this.checks = checks;
  }

  /**
   * Fixes that are applied at once.
   *
   * @param fixed results, each with its fix
   */
  record Step(List<Result> fixed, State after) {}

  /** What to do, step by step; empty where nothing more can be fixed. */
  List<Step> steps() {
    List<Result> fixable = fixable(base);
    List<Result> names = fixable.stream().filter(result -> NAMES.equals(result.rule())).toList();
    List<Step> first = names.isEmpty() ? List.of() : steps(names);
    return first.isEmpty() ? steps(fixable) : first;
  }

  private List<Step> steps(List<Result> fixable) {
    List<Result> together = apart(fixable);
    if (together.isEmpty()) {
      return List.of();
    }
    Step all = step(base, together);
    if (isGood(together, all.after())) {
      return List.of(all);
    }
    List<Result> kept = oneByOne(fixable);
    if (!kept.isEmpty()) {
      return List.of(step(base, kept));
    }
    for (Result result : fixable) {
      List<Step> steps = withWhatFollows(result);
      if (!steps.isEmpty()) {
        return steps;
      }
    }
    return List.of();
  }

  private Step step(State before, List<Result> results) {
    return new Step(results, before.fixed(results, checks));
  }

  private List<Result> fixable(State state) {
    return state.checked().results().stream()
        .filter(result -> !result.suppressed() && isAsked(result.fix()))
        .toList();
  }

  private boolean isAsked(@Nullable Fix fix) {
    return fix != null && fix.kind().isWithin(asked);
  }

  /** Those whose fixes overlap none of the ones before them. */
  private static List<Result> apart(List<Result> results) {
    TakenRegions taken = new TakenRegions();
    return results.stream().filter(result -> taken.take(result.fix())).toList();
  }

  /**
   * Those that are good beside the ones before them: halves are tried, and halves of what is not
   * good, so that few bad ones among many are found soon. Neighbours, which often belong together,
   * are tried together.
   */
  private List<Result> oneByOne(List<Result> results) {
    List<Result> kept = new ArrayList<>();
    keepGood(results, kept);
    return List.copyOf(kept);
  }

  private void keepGood(List<Result> results, List<Result> kept) {
    TakenRegions taken = new TakenRegions();
    kept.forEach(result -> taken.take(result.fix()));
    List<Result> tried = results.stream().filter(result -> taken.areFree(result.fix())).toList();
    if (tried.isEmpty() || !checks.areLeft()) {
      return;
    }
    List<Result> together = new ArrayList<>(kept);
    together.addAll(tried);
    if (tried.stream().allMatch(result -> taken.take(result.fix()))
        && isGood(together, base.fixed(together, checks))) {
      kept.clear();
      kept.addAll(together);
    } else if (tried.size() > 1) {
      int half = tried.size() / 2;
      keepGood(tried.subList(0, half), kept);
      keepGood(tried.subList(half, tried.size()), kept);
    }
  }

  /** One fix, and the fixes of what it brings, until that is gone; empty where it stays. */
  private List<Step> withWhatFollows(Result result) {
    List<Step> steps = new ArrayList<>();
    List<Result> next = List.of(result);
    State state = base;
    while (!next.isEmpty() && steps.size() < MOST_TO_FOLLOW && checks.areLeft()) {
      Step step = step(state, next);
      steps.add(step);
      state = step.after();
      if (isGood(List.of(result), state)) {
        return steps;
      }
      Map<String, Integer> allowed = allowed(List.of(result));
      Map<String, Integer> now = state.counts();
      next =
          apart(
              fixable(state).stream()
                  .filter(
                      one ->
                          now.getOrDefault(State.key(one), 0)
                              > allowed.getOrDefault(State.key(one), 0))
                  .toList());
    }
    return List.of();
  }

  /** Whether each fixed result is gone, and no new one has come. */
  private boolean isGood(List<Result> fixed, State after) {
    Map<String, Integer> allowed = allowed(fixed);
    return after.checked().notifications() <= base.checked().notifications()
        && after.counts().entrySet().stream()
            .allMatch(one -> one.getValue() <= allowed.getOrDefault(one.getKey(), 0));
  }

  private Map<String, Integer> allowed(List<Result> fixed) {
    Map<String, Integer> allowed = new HashMap<>(base.counts());
    fixed.forEach(one -> allowed.merge(State.key(one), -1, Integer::sum));
    return allowed;
  }
}
