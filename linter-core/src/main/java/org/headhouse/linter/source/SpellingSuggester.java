package org.headhouse.linter.source;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.headhouse.linter.stability.Internal;

/**
 * Suggests the word that was probably meant, for remedies that say what to write.
 *
 * <p>A suggester that is asked many times stops after a limit: where hundreds of words are wrong,
 * they are not misspelt.
 */
@Internal
public final class SpellingSuggester {
  /**
   * Pairs of letters compared: some hundredths of a second, or about a hundred words looked up
   * among five hundred.
   */
  private static final int MOST_STEPS = 10_000_000;

  private final Collection<String> known;
  private final List<String> candidates = new ArrayList<>();
  private int steps;

  /** A suggester for a list of known words. */
  public SpellingSuggester(Collection<String> known) {
    this.known = known;
  }

  /** A suggestion for a single word. */
  public static Optional<String> suggest(String written, Collection<String> known) {
    return new SpellingSuggester(known).suggest(written);
  }

  /**
   * The known word nearest to a written one, where one is near: at most a third of its letters
   * differ (inserted, left out, replaced, or two neighbours swapped), and none of its digits, since
   * another number is another thing. Of two equally near ones, the first. Empty also after the
   * limit of comparisons.
   */
  public Optional<String> suggest(String written) {
    if (candidates.isEmpty()) {
      known.forEach(word -> candidates.add(normal(word)));
    }
    String wanted = normal(written);
    String best = null;
    int least = Integer.MAX_VALUE;
    int index = 0;
    for (String word : known) {
      String candidate = candidates.get(index++);
      int allowed = Math.max(1, Math.max(wanted.length(), candidate.length()) / 3);
      if (Math.abs(wanted.length() - candidate.length()) > allowed
          || !digits(wanted).equals(digits(candidate))) {
        continue;
      }
      steps += wanted.length() * candidate.length();
      if (steps > MOST_STEPS) {
        steps = MOST_STEPS;
        return Optional.empty();
      }
      int distance = distance(wanted, candidate);
      if (distance <= allowed && distance < least) {
        best = word;
        least = distance;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * Whether a suggestion can be nothing but the word that was meant: one letter is another,
   * missing, too much or swapped with its neighbour, and no other known word is as near.
   */
  public boolean isCertain(String written, String suggestion) {
    String wanted = normal(written);
    for (String word : known) {
      boolean isNear = Math.abs(wanted.length() - word.length()) <= 2;
      if (word.equals(suggestion) || !isNear) {
        continue;
      }
      if (distance(wanted, normal(word)) <= 1) {
        return false;
      }
    }
    return distance(wanted, normal(suggestion)) <= 1;
  }

  private static String digits(String word) {
    StringBuilder digits = new StringBuilder();
    for (int i = 0; i < word.length(); i++) {
      if (Character.isDigit(word.charAt(i))) {
        digits.append(word.charAt(i));
      }
    }
    return digits.toString();
  }

  private static String normal(String word) {
    String cut = word.length() > 80 ? word.substring(0, 80) : word;
    return cut.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
  }

  /** The optimal string alignment distance (Damerau and Levenshtein, neighbours swapped once). */
  private static int distance(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + (same ? 0 : 1));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
      }
      int[] spare = beforeLast;
      beforeLast = last;
      last = row;
      row = spare;
    }
    return last[b.length()];
  }
}
