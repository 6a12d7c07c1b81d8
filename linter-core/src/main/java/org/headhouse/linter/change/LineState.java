package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Termination;
import org.jspecify.annotations.Nullable;

/**
 * The line after a part of the wiring is done.
 *
 * @param chain from the first item as far as the cables lead
 * @param items how many items are on the line
 * @param done the items at which all is done
 */
record LineState(List<Member> chain, int items, Set<Member> done) {
  private static final int TERMINATORS = 2;

  static LineState of(Chains chains, Set<Member> done) {
    Map<Member, Member> next = new HashMap<>();
    Map<Member, Member> previous = new HashMap<>();
    int items = 0;
    Member first = null;
    for (Member member : chains.all().members()) {
      Chain chain = done.contains(member) ? chains.after() : chains.before();
      if (chain.contains(member)) {
        items++;
        Member following = chain.next(member);
        if (following != null) {
          next.put(member, following);
          previous.put(following, member);
        }
      }
    }
    for (Member member : chains.all().members()) {
      Chain chain = done.contains(member) ? chains.after() : chains.before();
      if (first == null && chain.contains(member) && !previous.containsKey(member)) {
        first = member;
      }
    }
    List<Member> walked = new ArrayList<>();
    for (Member at = first; at != null; at = next.get(at)) {
      walked.add(at);
    }
    return new LineState(walked, items, done);
  }

  /** Whether it is one chain with two terminators on each segment. */
  boolean isWhole() {
    if (chain.size() != items) {
      return false;
    }
    for (List<Member> segment : segments(chain)) {
      int fitted = 0;
      for (int i = 0; i < segment.size(); i++) {
        fitted += fitted(segment.get(i), i == 0 && segment.size() > 1);
      }
      if (fitted != TERMINATORS) {
        return false;
      }
    }
    return true;
  }

  private int fitted(Member member, boolean first) {
    ChainItem item = done.contains(member) ? member.after() : member.before();
    return item instanceof Repeater repeater
        ? fitted(first ? repeater.terminationOut() : repeater.terminationIn())
        : terminators(item);
  }

  private static int fitted(Setting<Termination> setting) {
    Termination termination = setting.orNull();
    return termination != null && termination.isFitted() ? 1 : 0;
  }

  private static int terminators(@Nullable ChainItem item) {
    if (item instanceof Repeater repeater) {
      return fitted(repeater.terminationIn()) + fitted(repeater.terminationOut());
    }
    return item == null ? 0 : fitted(item.connection(Side.IN).termination());
  }

  /** How many terminators an item has in a state. */
  static int terminators(Member member, boolean later) {
    return terminators(later ? member.after() : member.before());
  }

  /** The stretches between repeaters, both included. */
  static List<List<Member>> segments(List<Member> chain) {
    List<List<Member>> segments = new ArrayList<>();
    List<Member> open = new ArrayList<>();
    for (Member member : chain) {
      open.add(member);
      if (member.item() instanceof Repeater && open.size() > 1) {
        segments.add(open);
        open = new ArrayList<>(List.of(member));
      }
    }
    if (open.size() > 1 || (segments.isEmpty() && !open.isEmpty())) {
      segments.add(open);
    }
    return segments;
  }
}
