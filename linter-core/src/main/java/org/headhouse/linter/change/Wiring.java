package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/**
 * Divides the wiring into pieces, each as small as can be, after each of which the line is whole:
 * one chain, with two terminators on each segment.
 *
 * <p>Two items belong to one piece where a cable between them comes or goes. What a piece lacks is
 * taken from the next ones along the chain.
 */
final class Wiring {

  /** Two neighbours on a chain. */
  private record Joint(Member one, Member other) {}

  private final Site before;
  private final Site after;
  private final Chains chains;
  private final Map<Member, Member> group = new LinkedHashMap<>();

  private Wiring(Site before, Site after, Chains chains) {
    this.before = before;
    this.after = after;
    this.chains = chains;
  }

  /** The pieces of work in their order, each as the items at which something is done. */
  static List<List<Member>> pieces(Site before, Site after, Chains chains) {
    Wiring wiring = new Wiring(before, after, chains);
    wiring.cables();
    wiring.itemsByThemselves();
    wiring.terminators();
    wiring.bias();
    wiring.station();
    return wiring.ordered();
  }

  private void cables() {
    Set<Joint> was = joints(chains.before());
    Set<Joint> will = joints(chains.after());
    for (Joint joint : was) {
      if (!will.contains(joint)) {
        unite(List.of(joint.one(), joint.other()));
      }
    }
    for (Joint joint : will) {
      if (!was.contains(joint)) {
        unite(List.of(joint.one(), joint.other()));
      }
    }
  }

  private static Set<Joint> joints(Chain chain) {
    Set<Joint> joints = new LinkedHashSet<>();
    for (Member member : chain.members()) {
      Member next = chain.next(member);
      if (next != null) {
        joints.add(new Joint(member, next));
      }
    }
    return joints;
  }

  private void itemsByThemselves() {
    for (Member member : chains.all().members()) {
      if (!member.stays()
          || !ItemChanges.terminals(member).isEmpty()
          || !ItemChanges.cable(member).isEmpty()
          || !ItemChanges.termination(member).isEmpty()
          || !ItemChanges.bias(before, after, member).isEmpty()) {
        unite(List.of(member));
      }
    }
  }

  /** A terminator that goes and one that comes on the same segment belong together. */
  private void terminators() {
    for (List<Member> segment : LineState.segments(chains.after().members())) {
      unite(
          segment.stream()
              .filter(Member::stays)
              .filter(
                  member ->
                      LineState.terminators(member, false) != LineState.terminators(member, true))
              .toList());
    }
  }

  /** Bias that goes and bias that comes belong together: an idle line needs it at one place. */
  private void bias() {
    unite(
        chains.all().members().stream()
            .filter(
                member ->
                    ItemChanges.bias(before, after, member).stream()
                        .anyMatch(change -> change.from() == null || change.to() == null))
            .toList());
  }

  private void station() {
    Member from = station(before, chains.before(), false);
    Member to = station(after, chains.after(), true);
    if (from != null && to != null && from != to) {
      unite(List.of(from, to));
    }
  }

  private static @Nullable Member station(Site site, Chain chain, boolean later) {
    WeatherStation station = site.weatherStation().orNull();
    String at = station == null ? null : station.at().orNull();
    for (Member member : chain.members()) {
      var item = later ? member.after() : member.before();
      if (at != null && item != null && item.name().is(at)) {
        return member;
      }
    }
    return null;
  }

  private void unite(Collection<Member> members) {
    Member root = null;
    for (Member member : members) {
      group.putIfAbsent(member, member);
      if (root == null) {
        root = root(member);
      } else {
        group.put(root(member), root);
      }
    }
  }

  private Member root(Member member) {
    Member at = member;
    for (Member up = group.get(at); up != null && up != at; up = group.get(at)) {
      at = up;
    }
    return at;
  }

  private List<List<Member>> ordered() {
    Map<Member, List<Member>> groups = new LinkedHashMap<>();
    for (Member member : chains.all().members()) {
      if (group.containsKey(member)) {
        groups.computeIfAbsent(root(member), root -> new ArrayList<>()).add(member);
      }
    }
    List<List<Member>> pieces = new ArrayList<>();
    Set<Member> done = new HashSet<>();
    Set<Member> open = new LinkedHashSet<>();
    for (List<Member> next : groups.values()) {
      open.addAll(next);
      done.addAll(next);
      if (LineState.of(chains, done).isWhole()) {
        pieces.add(chains.all().members().stream().filter(open::contains).toList());
        open.clear();
      }
    }
    if (!open.isEmpty()) {
      pieces.add(chains.all().members().stream().filter(open::contains).toList());
    }
    return pieces;
  }
}
