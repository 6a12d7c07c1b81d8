package org.headhouse.linter.change;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Members in the order of a chain. */
final class Chain {
  private final List<Member> members;
  private final Map<Member, Integer> places = new HashMap<>();

  Chain(List<Member> members) {
    this.members = List.copyOf(members);
    for (int i = 0; i < this.members.size(); i++) {
      places.put(this.members.get(i), i);
    }
  }

  List<Member> members() {
    return members;
  }

  boolean contains(Member member) {
    return places.containsKey(member);
  }

  /** From 0; -1 for what is not on the chain. */
  int place(Member member) {
    return places.getOrDefault(member, -1);
  }

  @Nullable Member previous(Member member) {
    int at = place(member);
    return at <= 0 ? null : members.get(at - 1);
  }

  @Nullable Member next(Member member) {
    int at = place(member);
    return at < 0 || at + 1 == members.size() ? null : members.get(at + 1);
  }
}
