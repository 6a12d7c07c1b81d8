package org.headhouse.linter.fix;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/**
 * What all findings of a file propose, by what is asked of it: a file may have thousands of
 * findings, and of each it is asked what the others propose.
 */
final class ProposedEdits {
  private static final Place ANYWHERE = Place.at(Region.START_OF_FILE);

  private final Map<Alike, List<Place>> places = new HashMap<>();
  private final Map<Alike, Map<Region, Users>> users = new HashMap<>();
  private final Map<Region, Set<String>> words = new HashMap<>();

  /** An edit of a rule, wherever it is proposed. */
  private record Alike(String rule, Edit edit) {
    static Alike of(String rule, Edit edit) {
      return new Alike(rule, edit.at(ANYWHERE));
    }
  }

  /**
   * Who proposes the same edit of the same node.
   *
   * @param regions the places that use the node
   * @param anchors the names of the anchors that it is reached by
   */
  record Users(Set<Region> regions, Set<String> anchors) {
    static final Users NONE = new Users(Set.of(), Set.of());
  }

  /** Finds what an edit changes. */
  @FunctionalInterface
  interface Targets {
    /** Null where there is nothing of the kind. */
    @Nullable Target of(Edit edit);
  }

  ProposedEdits(Collection<Finding> findings) {
    IdentityHashMap<FixDraft, Set<String>> met = new IdentityHashMap<>();
    for (Finding finding : findings) {
      FixDraft draft = finding.fix();
      if (draft != null && met.computeIfAbsent(draft, one -> new HashSet<>()).add(finding.rule())) {
        draft.edits().forEach(edit -> add(finding.rule(), edit));
      }
    }
  }

  private void add(String rule, Edit edit) {
    places.computeIfAbsent(Alike.of(rule, edit), one -> new ArrayList<>()).add(edit.at());
    if (edit instanceof Edit.Write word) {
      words.computeIfAbsent(edit.at().region(), one -> new HashSet<>()).add(word.value());
    }
  }

  /** Who proposes, by findings of a rule, the same edit of a node. */
  Users users(String rule, Edit edit, Region node, Targets targets) {
    return users
        .computeIfAbsent(Alike.of(rule, edit), alike -> users(alike, edit, targets))
        .getOrDefault(node, Users.NONE);
  }

  private Map<Region, Users> users(Alike alike, Edit edit, Targets targets) {
    Map<Region, Users> byNode = new HashMap<>();
    for (Place place : places.getOrDefault(alike, List.of())) {
      Target target = targets.of(edit.at(place));
      if (target != null) {
        Users known =
            byNode.computeIfAbsent(
                target.region(), node -> new Users(new HashSet<>(), new TreeSet<>()));
        known.regions().add(target.user());
        if (place.anchored() != null) {
          known.anchors().add(place.anchored().name());
        }
      }
    }
    return byNode;
  }

  /** Whether one of some words is proposed for a region. */
  boolean hasOneOf(Collection<String> asked, Region region) {
    return !Collections.disjoint(asked, words.getOrDefault(region, Set.of()));
  }
}
