package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.diagnosis.Candidate;
import org.headhouse.linter.diagnosis.SegmentDiagnosis;
import org.headhouse.linter.diagnosis.SiteDiagnosis;

/** A diagnosis as lines of text. */
public final class DiagnosisText {
  /** More faults than anybody reads; all are in the JSON form. */
  private static final int MOST_CANDIDATES = 20;

  private DiagnosisText() {}

  /** How not to be hurt on the way; these lines come first. */
  public static List<String> cautions() {
    return List.of(
        "Before you measure resistance or open the chain: isolate the supply of every unit on the"
            + " pair, lock it off, and prove it dead.",
        "Idle voltages need the supply on: measure at the line terminals only, well apart from line"
            + " voltage. Licensed people do this work, under the local electrical code.",
        "Units that lose the line may move vents and screens: keep everyone clear of them.",
        "This is computed from the file. An instrument on the real line has the last word.");
  }

  /** What there is to say of one site. */
  public static List<String> of(SiteDiagnosis site) {
    List<String> lines = new ArrayList<>();
    for (int at = 0; at < site.segments().size(); at++) {
      SegmentDiagnosis segment = site.segments().get(at);
      List<String> items = segment.items();
      lines.add(
          site.site() + ": \"" + items.get(0) + "\" to \"" + items.get(items.size() - 1) + "\"");
      segment(segment).forEach(line -> lines.add("  " + line));
    }
    site.notUsed().forEach(reason -> lines.add("  Not used: " + reason + "."));
    return lines;
  }

  private static List<String> segment(SegmentDiagnosis segment) {
    List<String> lines = new ArrayList<>();
    if (!segment.notJudged().isEmpty()) {
      segment.notJudged().forEach(reason -> lines.add("This cannot be judged: " + reason + "."));
      return lines;
    }
    lines.add(verdict(segment));
    List<Candidate> candidates = segment.candidates();
    int left = candidates.stream().mapToInt(one -> one.faults().size()).sum();
    if (left > 0 && segment.agrees() != null) {
      lines.add(
          (left == 1 ? "1 fault is" : left + " faults are")
              + " left, "
              + segment.excluded()
              + " are excluded:");
      for (int at = 0; at < Math.min(candidates.size(), MOST_CANDIDATES); at++) {
        lines.addAll(candidate(candidates.get(at), at + 1));
      }
      if (candidates.size() > MOST_CANDIDATES) {
        lines.add("  and " + (candidates.size() - MOST_CANDIDATES) + " more groups");
      }
    }
    if (segment.next() != null) {
      lines.add("Next: measure " + FaultWords.of(segment.next()) + ".");
    } else if (left > 1) {
      lines.add(
          "No other measurement is sure to tell these apart: look at each place, or exchange one part"
              + " at a time.");
    }
    return lines;
  }

  private static String verdict(SegmentDiagnosis segment) {
    if (segment.agrees() == null) {
      return "There is no reading of this segment.";
    }
    if (segment.isUnexplained()) {
      return "No single fault explains the readings: measure again, compare the file with the line,"
          + " and think of two faults at once.";
    }
    return segment.agrees()
        ? "The readings fit the line as written. This is no proof of a sound line."
        : "The readings do not fit the line as written.";
  }

  private static List<String> candidate(Candidate candidate, int number) {
    List<String> lines = new ArrayList<>();
    String lead = "  " + number + ". ";
    for (String words : FaultWords.merged(candidate.faults())) {
      lines.add((lines.isEmpty() ? lead : " ".repeat(lead.length()) + "or ") + words);
    }
    return lines;
  }
}
