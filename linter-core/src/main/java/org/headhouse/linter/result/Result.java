package org.headhouse.linter.result;

import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * One result of a check.
 *
 * @param rule the id of the broken rule
 * @param level as the policy has it
 * @param message what to report
 * @param location where
 * @param logical the place in the words of the site, such as {@code chain/Propagation/address};
 *     empty where the file could not be read that far
 * @param unit the name of the unit concerned, or null
 * @param related other places that the reader must see
 * @param suppression that it was accepted, or null
 * @param identities what makes it the same result later, one for each case that it puts together;
 *     none where no baseline may take it
 * @param state how it stands to the baseline, or null where none is in use
 * @param fix how it can be mended, or null
 */
public record Result(
    String rule,
    Level level,
    Message message,
    Location location,
    String logical,
    @Nullable String unit,
    List<RelatedLocation> related,
    @Nullable Suppression suppression,
    List<Identity> identities,
    @Nullable BaselineState state,
    @Nullable Fix fix)
    implements Serializable {

  /** The order in which results are reported: by file, by place, by rule. */
  public static final Comparator<Result> ORDER =
      Comparator.comparing((Result result) -> result.location().file())
          .thenComparing(result -> result.location().region())
          .thenComparing(Result::rule)
          .thenComparing(result -> result.message().text());

  @Internal
  public Result {
    related = List.copyOf(related);
    identities = List.copyOf(identities);
  }

  /** A result that nothing is known to mend. */
  @Internal
  public Result(
      String rule,
      Level level,
      Message message,
      Location location,
      String logical,
      @Nullable String unit,
      List<RelatedLocation> related,
      @Nullable Suppression suppression) {
    this(
        rule, level, message, location, logical, unit, related, suppression, List.of(), null, null);
  }

  /** Whether it was accepted on purpose. */
  public boolean suppressed() {
    return suppression != null;
  }

  /** Whether it was there before. */
  public boolean known() {
    return state == BaselineState.UNCHANGED;
  }

  /** The same result, accepted. */
  public Result suppressedBy(Suppression accepted) {
    return new Result(
        rule, level, message, location, logical, unit, related, accepted, identities, state, fix);
  }

  /** The same result without the lines of some files, as they are called in results. */
  @Internal
  public Result withoutLines(Predicate<String> files) {
    boolean noneHere =
        !files.test(location.file())
            && related.stream().noneMatch(one -> files.test(one.location().file()));
    return noneHere ? this : withLinesCut(files);
  }

  private Result withLinesCut(Predicate<String> files) {
    return new Result(
        rule,
        level,
        message,
        location.withoutLine(files),
        logical,
        unit,
        related.stream()
            .map(one -> new RelatedLocation(one.location().withoutLine(files), one.text()))
            .toList(),
        suppression,
        identities,
        state,
        fix);
  }

  /** The same result, compared with a baseline. */
  public Result compared(BaselineState found) {
    return new Result(
        rule,
        level,
        message,
        location,
        logical,
        unit,
        related,
        suppression,
        identities,
        found,
        fix);
  }
}
