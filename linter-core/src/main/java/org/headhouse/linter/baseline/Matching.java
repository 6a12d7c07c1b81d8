package org.headhouse.linter.baseline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.headhouse.linter.result.AbsentResult;
import org.headhouse.linter.result.BaselineState;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Result;

/**
 * Finds the entry of each result: first in the same file, whatever the site's id has become, then
 * under the same id in a file that is gone, since that one was renamed.
 */
final class Matching {
  private final TreeMap<Entry, Integer> left;
  private final SitePaths paths;
  private final Map<Entry, List<Entry>> byFile = new HashMap<>();
  private final Map<Entry, List<Entry>> bySite = new HashMap<>();

  Matching(SortedMap<Entry, Integer> entries, SitePaths paths) {
    this.left = new TreeMap<>(entries);
    this.paths = paths;
  }

  ComparedResults compare(List<Result> results, Set<String> files, Set<String> unsure) {
    Set<String> checked = new HashSet<>();
    files.forEach(file -> checked.add(paths.kept(file)));
    Set<String> gone = new HashSet<>();
    left.keySet().forEach(entry -> gone.add(entry.file()));
    gone.removeIf(file -> checked.contains(file) || paths.exists(file));
    index(gone);
    List<List<Identity>> open = new ArrayList<>();
    results.forEach(result -> open.add(unknown(result, identities(result), byFile, false)));
    List<Result> compared = new ArrayList<>();
    for (int i = 0; i < results.size(); i++) {
      Result result = results.get(i);
      boolean known =
          !identities(result).isEmpty() && unknown(result, open.get(i), bySite, true).isEmpty();
      compared.add(result.compared(known ? BaselineState.UNCHANGED : BaselineState.NEW));
    }
    Set<String> unread = new HashSet<>();
    unsure.forEach(file -> unread.add(paths.kept(file)));
    return new ComparedResults(compared, absent(checked, gone, unread));
  }

  private void index(Set<String> gone) {
    for (Entry entry : left.keySet()) {
      byFile.computeIfAbsent(inFile(entry), key -> new ArrayList<>()).add(entry);
      if (gone.contains(entry.file()) && entry.identity().site() != null) {
        bySite.computeIfAbsent(inSite(entry), key -> new ArrayList<>()).add(entry);
      }
    }
  }

  private static List<Identity> identities(Result result) {
    return result.suppressed() ? List.of() : result.identities();
  }

  /** Those of some identities of a result that have no entry; an entry that is found is used up. */
  private List<Identity> unknown(
      Result result, List<Identity> identities, Map<Entry, List<Entry>> index, boolean renamed) {
    List<Identity> unknown = new ArrayList<>(0);
    for (Identity identity : identities) {
      Entry entry = new Entry(paths.kept(result.location().file()), identity, result.rule());
      boolean known =
          (!renamed || identity.site() != null)
              && take(index, renamed ? inSite(entry) : inFile(entry));
      if (!known) {
        unknown.add(identity);
      }
    }
    return unknown;
  }

  private boolean take(Map<Entry, List<Entry>> index, Entry key) {
    for (Entry entry : index.getOrDefault(key, List.of())) {
      if (left.containsKey(entry)) {
        left.computeIfPresent(entry, (same, times) -> times > 1 ? times - 1 : null);
        return true;
      }
    }
    return false;
  }

  private static Entry inFile(Entry entry) {
    Identity one = entry.identity();
    return new Entry(
        entry.file(),
        new Identity(null, one.at(), one.unit(), one.value(), one.graded(), one.detail()),
        entry.rule());
  }

  private static Entry inSite(Entry entry) {
    return new Entry("", entry.identity(), entry.rule());
  }

  private List<AbsentResult> absent(Set<String> checked, Set<String> gone, Set<String> unread) {
    List<AbsentResult> absent = new ArrayList<>();
    left.forEach(
        (entry, times) -> {
          boolean looked = checked.contains(entry.file()) && !unread.contains(entry.file());
          if (looked || gone.contains(entry.file())) {
            absent.add(
                new AbsentResult(entry.rule(), paths.shown(entry.file()), entry.identity(), times));
          }
        });
    return absent;
  }
}
