package org.headhouse.linter.change;

import java.util.Comparator;
import java.util.List;

/**
 * The chain in both states.
 *
 * @param all the items of both, in the order of the work
 */
record Chains(Chain all, Chain before, Chain after) {

  static Chains of(List<Member> all) {
    return new Chains(
        new Chain(all),
        new Chain(
            all.stream()
                .filter(member -> member.before() != null)
                .sorted(Comparator.comparing(Chains::placeBefore))
                .toList()),
        new Chain(all.stream().filter(member -> member.after() != null).toList()));
  }

  private static int placeBefore(Member member) {
    return member.before() == null ? -1 : member.before().index();
  }
}
