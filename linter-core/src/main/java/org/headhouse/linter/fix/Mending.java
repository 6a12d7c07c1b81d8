package org.headhouse.linter.fix;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.result.Result;

/**
 * Mends one file in rounds until nothing more can be mended.
 *
 * <p>In each round the fixes that are not over another are tried together, and one by one where
 * that fails. What is kept takes its own result away and brings no other one; a fix that was in the
 * way of another waits for the next round. Each round leaves fewer results, so there is a last one.
 */
public final class Mending {
  private final FixKind asked;
  private final Checker checker;
  private final List<Applied> applied = new ArrayList<>();
  private byte[] bytes;
  private Checked checked;
  private int round;

  /** Checks bytes as the file that is mended. */
  @FunctionalInterface
  public interface Checker {
    /** What is to be told of the bytes. */
    Checked check(byte[] bytes);
  }

  /**
   * What a check tells.
   *
   * @param troubles how many troubles the tool itself had
   */
  public record Checked(List<Result> results, int troubles) {
    public Checked {
      results = List.copyOf(results);
    }
  }

  /**
   * A fix that was applied.
   *
   * @param round counted from 1: its regions are those of the text before that round
   * @param result what it mended
   */
  public record Applied(int round, Result result, Fix fix) {}

  private record Candidate(Result result, Fix fix) {}

  private Mending(byte[] bytes, FixKind asked, Checker checker) {
    this.asked = asked;
    this.checker = checker;
    this.bytes = bytes;
    this.checked = checker.check(bytes);
  }

  /** Mends bytes with the fixes of a kind and those that are safer. */
  public static Mending of(byte[] bytes, FixKind asked, Checker checker) {
    Mending mending = new Mending(bytes.clone(), asked, checker);
    do {
      mending.round++;
    } while (mending.round());
    return mending;
  }

  /** The bytes after the last round. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** What was applied, round by round in the order of the file. */
  public List<Applied> applied() {
    return List.copyOf(applied);
  }

  /** What is to be told of the bytes after the last round. */
  public Checked remaining() {
    return checked;
  }

  private boolean round() {
    List<Candidate> chosen = new ArrayList<>();
    for (Candidate candidate : candidates()) {
      if (chosen.stream().noneMatch(other -> overlap(other.fix(), candidate.fix()))) {
        chosen.add(candidate);
      }
    }
    if (chosen.isEmpty()) {
      return false;
    }
    return attempt(chosen) || attempt(oneByOne());
  }

  private List<Candidate> candidates() {
    List<Candidate> candidates = new ArrayList<>();
    for (Result result : checked.results()) {
      Fix fix = result.fix();
      if (fix != null && !result.suppressed() && fix.kind().isWithin(asked)) {
        candidates.add(new Candidate(result, fix));
      }
    }
    return candidates;
  }

  /** Those that are good beside the ones before them. */
  private List<Candidate> oneByOne() {
    List<Candidate> kept = new ArrayList<>();
    for (Candidate candidate : candidates()) {
      if (kept.stream().noneMatch(other -> overlap(other.fix(), candidate.fix()))) {
        kept.add(candidate);
        if (!isGood(kept, checker.check(applying(kept)))) {
          kept.remove(kept.size() - 1);
        }
      }
    }
    return kept;
  }

  private boolean attempt(List<Candidate> chosen) {
    if (chosen.isEmpty()) {
      return false;
    }
    byte[] after = applying(chosen);
    Checked outcome = checker.check(after);
    if (!isGood(chosen, outcome)) {
      return false;
    }
    chosen.forEach(one -> applied.add(new Applied(round, one.result(), one.fix())));
    bytes = after;
    checked = outcome;
    return true;
  }

  private byte[] applying(List<Candidate> chosen) {
    return Splice.apply(
        bytes, chosen.stream().flatMap(one -> one.fix().replacements().stream()).toList());
  }

  /** Whether each result that is mended is gone, and none came. */
  private boolean isGood(List<Candidate> chosen, Checked outcome) {
    Map<String, Integer> allowed = counted(checked.results());
    chosen.forEach(one -> allowed.merge(key(one.result()), -1, Integer::sum));
    Map<String, Integer> now = counted(outcome.results());
    return outcome.troubles() <= checked.troubles()
        && now.entrySet().stream()
            .allMatch(one -> one.getValue() <= allowed.getOrDefault(one.getKey(), 0));
  }

  private static Map<String, Integer> counted(List<Result> results) {
    Map<String, Integer> counts = new HashMap<>();
    for (Result result : results) {
      if (!result.suppressed()) {
        counts.merge(key(result), 1, Integer::sum);
      }
    }
    return counts;
  }

  /**
   * The rule and the place in the words of the site. A name's spaces and the number of an item in a
   * list are no difference: fixes change them.
   */
  private static String key(Result result) {
    String place = result.logical().replaceAll("\\s", "").replaceAll("(?<=/)[0-9]+(?=/|$)", "#");
    String unit = result.unit() == null ? "" : result.unit().replaceAll("\\s", "");
    return result.rule() + "\n" + place + "\n" + unit;
  }

  private static boolean overlap(Fix one, Fix other) {
    for (Replacement mine : one.replacements()) {
      for (Replacement theirs : other.replacements()) {
        if (Splice.touch(mine.region(), theirs.region())) {
          return true;
        }
      }
    }
    return false;
  }
}
