package org.headhouse.linter.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What a rule or an earlier stage has found in one file, before the policy gives it a level and the
 * façade makes a {@link Result} of it.
 *
 * @param rule the id of the rule that is broken
 * @param place where
 * @param message what to report
 * @param level a level milder than the rule's own, or null for the rule's own
 * @param unit the unit that is concerned, where the place does not say, else null
 * @param cases what it puts together, or what tells it from others at the same place; none where
 *     the place says it all
 * @param related other places that the reader must see
 * @param fix how it can be mended, or null
 */
public record Finding(
    String rule,
    Place place,
    Message message,
    @Nullable Level level,
    @Nullable String unit,
    List<Case> cases,
    List<Related> related,
    @Nullable FixDraft fix) {

  /**
   * Another place of the same finding.
   *
   * @param source the file, or null for the file of the finding
   */
  public record Related(@Nullable SourceText source, Region region, String text) {
    public Related {
      Objects.requireNonNull(region, "a related place without a region");
      Objects.requireNonNull(text, "a related place without a text");
    }
  }

  /**
   * One of the cases that a finding puts together. Each of them can be known to a baseline, or
   * accepted of its unit, so that one which comes later is not.
   *
   * @param unit the item of the chain, or null where it is none
   * @param detail what is wrong with it, where there are several such things, or null
   */
  public record Case(@Nullable String unit, @Nullable String detail) {}

  @Internal
  public Finding {
    Objects.requireNonNull(rule, "a finding without a rule");
    Objects.requireNonNull(place, "a finding without a place");
    Objects.requireNonNull(message, "a finding without a message");
    cases = List.copyOf(cases);
    related = List.copyOf(related);
  }

  /** A finding at the rule's own level. */
  public static Finding of(String rule, Place place, Message message) {
    return new Finding(rule, place, message, null, null, List.of(), List.of(), null);
  }

  /** A finding about something written out. */
  public static Finding of(String rule, Region region, Message message) {
    return of(rule, Place.at(region), message);
  }

  /** The same finding at another level. */
  public Finding at(Level milder) {
    return new Finding(rule, place, message, milder, unit, cases, related, fix);
  }

  /** The same finding, said of a unit elsewhere in the file. */
  public Finding concerning(String unitName) {
    return new Finding(rule, place, message, level, unitName, cases, related, fix);
  }

  /** The same finding, made of cases. */
  public Finding about(List<Case> all) {
    return new Finding(rule, place, message, level, unit, all, related, fix);
  }

  /** The same finding, made of what is said of each of some items of the chain. */
  public Finding aboutItems(List<@Nullable String> names) {
    return about(names.stream().map(name -> new Case(name, null)).toList());
  }

  /** The same finding, told from others at the same place by the other items that it involves. */
  public Finding aboutOthers(List<@Nullable String> names) {
    return about(names.stream().map(name -> new Case(null, "with " + name)).toList());
  }

  /** The same finding, told from others at the same place by a text. */
  public Finding about(String detail) {
    return about(List.of(new Case(null, detail)));
  }

  /** The same finding with another place of the same file. */
  public Finding related(Region region, String text) {
    return related(new Related(null, region, text));
  }

  /** The same finding with a place of another file. */
  public Finding related(SourceText source, Region region, String text) {
    return related(new Related(source, region, text));
  }

  /** The same finding with a way to mend it; null for none. */
  public Finding fixedBy(@Nullable FixDraft draft) {
    return new Finding(rule, place, message, level, unit, cases, related, draft);
  }

  private Finding related(Related one) {
    List<Related> all = new ArrayList<>(related);
    all.add(one);
    return new Finding(rule, place, message, level, unit, cases, all, fix);
  }
}
