package org.headhouse.linter.source;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
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
   * among five hundred that are all alike.
   */
  private static final int MOST_STEPS = 10_000_000;

  private static final int LONGEST = 80;

  /**
   * One letter of a shorter word is a third of it or more: {@code on} is as near to in as to no.
   */
  private static final int SHORTEST_CERTAIN = 4;

  private static final Pattern ROMAN = Pattern.compile("[ivx]{2,5}");

  private final Collection<String> known;
  private final List<Candidate> candidates = new ArrayList<>();
  private int steps;
  private int[] beforeLast = new int[LONGEST + 1];
  private int[] last = new int[LONGEST + 1];
  private int[] row = new int[LONGEST + 1];

  /**
   * A known word.
   *
   * @param text in small letters, with hyphens
   * @param letters which letters it has, a bit each; letters may share one
   * @param digits what numbers it among its like, which is never misspelt
   */
  private record Candidate(String word, String text, long letters, String digits) {
    static Candidate of(String word) {
      String text = normal(word);
      return new Candidate(
          word, text, SpellingSuggester.letters(text), SpellingSuggester.digits(text));
    }
  }

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
   * differ (inserted, left out, replaced, or two neighbours swapped), and nothing that numbers it
   * among its like ({@code 2}, {@code 10a}, {@code B}, {@code IV}), since that is another thing. Of
   * two equally near ones, the first. Empty also after the limit of comparisons.
   */
  public Optional<String> suggest(String written) {
    String wanted = normal(written);
    long letters = letters(wanted);
    String digits = digits(wanted);
    String best = null;
    int least = Integer.MAX_VALUE;
    for (Candidate candidate : candidates()) {
      int longer = Math.max(wanted.length(), candidate.text.length());
      int allowed = Math.min(Math.max(1, longer / 3), least - 1);
      if (isFar(wanted.length() - candidate.text.length(), letters, candidate, allowed)
          || !candidate.digits.equals(digits)) {
        continue;
      }
      int distance = distance(wanted, candidate.text, allowed);
      if (steps > MOST_STEPS) {
        steps = MOST_STEPS;
        return Optional.empty();
      }
      if (distance <= allowed) {
        best = candidate.word;
        least = distance;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * Whether a suggestion can be nothing but the word that was meant: one letter is another,
   * missing, too much or swapped with its neighbour, and no other known word is as near. A very
   * short word has to be written as it is.
   */
  public boolean isCertain(String written, String suggestion) {
    String wanted = normal(written);
    String meant = normal(suggestion);
    if (meant.length() < SHORTEST_CERTAIN && !meant.equals(wanted)) {
      return false;
    }
    boolean isNear = false;
    for (Candidate candidate : candidates()) {
      if (Math.abs(wanted.length() - candidate.text.length()) <= 1
          && distance(wanted, candidate.text, 1) <= 1) {
        if (!candidate.word.equals(suggestion)) {
          return false;
        }
        isNear = true;
      }
    }
    return isNear;
  }

  private List<Candidate> candidates() {
    if (candidates.isEmpty()) {
      known.forEach(word -> candidates.add(Candidate.of(word)));
    }
    return candidates;
  }

  /** Digits with a letter after them, and words that are one letter or a Roman numeral. */
  private static String digits(String text) {
    StringBuilder digits = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean first = i == 0 || text.charAt(i - 1) == '-';
      if (Character.isDigit(c)) {
        digits.append(c);
      } else if (isLastLetter(text, i)
          && (first ? text.length() > 1 : Character.isDigit(text.charAt(i - 1)))) {
        digits.append(c);
      } else if (first && i > 0) {
        int end = text.indexOf('-', i);
        String word = text.substring(i, end < 0 ? text.length() : end);
        digits.append(ROMAN.matcher(word).matches() ? word : "");
      }
    }
    return digits.toString();
  }

  private static boolean isLastLetter(String text, int i) {
    return Character.isLetter(text.charAt(i))
        && (i + 1 == text.length() || text.charAt(i + 1) == '-');
  }

  /** Each difference makes up for one letter of length, and for one letter that a word lacks. */
  private static boolean isFar(int lengths, long letters, Candidate candidate, int allowed) {
    return Math.abs(lengths) > allowed
        || Long.bitCount(letters & ~candidate.letters) > allowed
        || Long.bitCount(candidate.letters & ~letters) > allowed;
  }

  private static long letters(String text) {
    long letters = 0;
    for (int i = 0; i < text.length(); i++) {
      letters |= 1L << (text.charAt(i) & 63);
    }
    return letters;
  }

  private static String normal(String word) {
    String cut = word.length() > LONGEST ? word.substring(0, LONGEST) : word;
    return cut.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
  }

  /**
   * The optimal string alignment distance (Damerau and Levenshtein, neighbours swapped once); where
   * it is certain to be above a limit, some number above that.
   */
  private int distance(String whole, String other, int most) {
    int start = 0;
    int common = Math.min(whole.length(), other.length());
    while (start < common && whole.charAt(start) == other.charAt(start)) {
      start++;
    }
    String a = whole.substring(start);
    String b = other.substring(start);
    makeRoom(b.length() + 1);
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    steps += start + 1;
    int leastOfLast = 0;
    for (int i = 1; i <= a.length(); i++) {
      int least = nextRow(a, i, b);
      // What comes is reached from this row, or by a swap from the last.
      if (Math.min(least, leastOfLast + 1) > most) {
        return most + 1;
      }
      leastOfLast = least;
      int[] spare = beforeLast;
      beforeLast = last;
      last = row;
      row = spare;
    }
    return last[b.length()];
  }

  /** Small letters can be more than the letters they come from. */
  private void makeRoom(int length) {
    if (last.length < length) {
      beforeLast = new int[length];
      last = new int[length];
      row = new int[length];
    }
  }

  /** The row of a letter; returns the least number of it. */
  private int nextRow(String a, int i, String b) {
    char letter = a.charAt(i - 1);
    char letterBefore = i > 1 ? a.charAt(i - 2) : 0;
    row[0] = i;
    int least = i;
    for (int j = 1; j <= b.length(); j++) {
      char other = b.charAt(j - 1);
      int distance =
          Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + (letter == other ? 0 : 1));
      if (i > 1 && j > 1 && letter == b.charAt(j - 2) && letterBefore == other) {
        distance = Math.min(distance, beforeLast[j - 2] + 1);
      }
      row[j] = distance;
      least = Math.min(least, distance);
    }
    steps += b.length();
    return least;
  }
}
