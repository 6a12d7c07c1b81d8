package org.headhouse.linter.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.files.FoundFile;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.RealPath;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.SiteNames;

/**
 * Sites grouped by what holds for them. A file is in one group and there once, also where several
 * names lead to it; a policy or device types are in none.
 */
final class SiteGroups {
  private final SiteNames names;
  private final Map<SettingsFiles, Path> whereFrom = new LinkedHashMap<>();
  private final Map<SettingsFiles, List<FoundFile>> files = new LinkedHashMap<>();
  private final Set<Path> taken = new HashSet<>();
  private final Set<Path> leftOut = new HashSet<>();

  SiteGroups(SiteNames names) {
    this.names = names;
  }

  /** Leaves out files that hold for sites; called before sites are added. */
  void leaveOut(SettingsFiles settings) {
    settings.all().forEach(file -> leftOut.add(RealPath.of(file)));
  }

  boolean leavesOut(Path file) {
    return leftOut.contains(RealPath.of(file));
  }

  /**
   * Begins a group, which is there even if no site comes into it.
   *
   * @param from where the sites are looked for: a folder, or one file
   */
  void begin(Path from, SettingsFiles settings) {
    leaveOut(settings);
    whereFrom.putIfAbsent(settings, from);
  }

  /** Adds sites to the group of what holds for them, which begins with the first. */
  void add(Path from, List<FoundFile> sites, SettingsFiles settings) {
    List<FoundFile> added = sites.stream().filter(this::isNew).toList();
    if (!added.isEmpty()) {
      begin(from, settings);
      files.computeIfAbsent(settings, any -> new ArrayList<>()).addAll(added);
    }
  }

  /** Each link that is refused is reported, also where several lead to one file. */
  private boolean isNew(FoundFile site) {
    return site.refused() != null
        || (!leavesOut(site.path()) && taken.add(RealPath.of(site.path())));
  }

  List<FoundSites> all() {
    List<FoundSites> all = new ArrayList<>();
    whereFrom.forEach(
        (settings, from) ->
            all.add(
                new FoundSites(from, names, files.getOrDefault(settings, List.of()), settings)));
    return all;
  }
}
