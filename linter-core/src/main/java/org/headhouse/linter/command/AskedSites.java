package org.headhouse.linter.command;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.FoundFile;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.SiteFiles;
import org.headhouse.linter.files.SiteNames;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.SitesRequest;

/**
 * What a call asks to be checked: a whole folder, or the files that it names. A hook names every
 * file that changed; each is checked with the settings of the folder of sites that it lies in.
 */
final class AskedSites {
  private final SitesRequest request;
  private final List<String> files;
  private final BaseFolder base;
  private final Console console;
  private final Path sites;
  private final SiteNames names;
  private final SiteFiles folder;
  private boolean whole;

  /**
   * @param files that are named; none for the whole folder
   */
  AskedSites(SitesRequest request, List<String> files, Console console) throws UserError {
    this.request = request;
    this.files = files;
    this.base = request.settings().base();
    this.console = console;
    this.sites = request.settings().sites();
    this.names = request.names();
    this.folder = request.files(names);
  }

  /** The sites, put together by what holds for them. */
  List<FoundSites> find() throws UserError {
    SettingsFiles settings = settings(sites);
    if (files.isEmpty()) {
      whole = true;
      return List.of(folder.find(settings));
    }
    List<Path> asked = asked();
    List<Path> forAll = asked.stream().filter(file -> holdsForAll(file, settings)).toList();
    boolean all = !forAll.isEmpty() && Files.exists(sites);
    whole = all;
    if (all) {
      console.report(
          Level.NOTE, "All sites are checked, because a file that applies to all of them is named");
    }
    Map<Path, SettingsFiles> outside = outside(asked, settings);
    SiteGroups groups = new SiteGroups(names);
    groups.leaveOut(settings);
    outside.values().forEach(groups::leaveOut);
    List<Path> inside = asked.stream().filter(this::isInside).toList();
    if (all) {
      groups.begin(sites, settings);
      groups.add(sites, folder.find(inside, settings.all()), settings);
    } else if (!inside.isEmpty()) {
      groups.add(sites, folder.among(inside, settings.all()), settings);
    }
    outside.forEach(
        (file, own) -> {
          if (names.matches(name(file))) {
            groups.add(file, List.of(new FoundFile(file, null)), own);
          }
        });
    for (Path file : asked) {
      if (!(all && forAll.contains(file))) {
        reportLeftOut(file, groups);
      }
    }
    return groups.all();
  }

  /** Whether these are all sites of their folder, so that one that is not among them is gone. */
  boolean areAll(FoundSites found) {
    return whole && found.sites().equals(sites);
  }

  /** The files that are named; links come last, so that a file is found by its own name. */
  private List<Path> asked() throws UserError {
    Set<Path> asked = new LinkedHashSet<>();
    for (String file : files) {
      asked.add(file(file));
    }
    return asked.stream().sorted(Comparator.comparing(Files::isSymbolicLink)).toList();
  }

  private Path file(String written) throws UserError {
    Path file = base.path().resolve(written).normalize();
    if (written.isEmpty()) {
      throw new UserError("the name of a file is empty: leave it out");
    }
    if (Files.isDirectory(file)) {
      throw new UserError(
          "\"" + written + "\" is a folder: use --sites=" + written + ", or name files in it");
    }
    if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS) && !names.matches(name(file))) {
      throw new UserError(
          "\"" + written + "\" does not exist, and is not the name of a site: correct the path");
    }
    return file;
  }

  private SettingsFiles settings(Path checked) throws UserError {
    return request.settings().in(checked).find().files();
  }

  /** Also a file in a usual place that another takes precedence over. */
  private boolean holdsForAll(Path file, SettingsFiles settings) {
    return settings.contains(file) || SettingsFiles.usualPlaces(sites).contains(file);
  }

  private boolean isInside(Path file) {
    return file.startsWith(sites) && Files.isDirectory(sites);
  }

  /** The files elsewhere, each with what holds for it; any will do for one that is not there. */
  private Map<Path, SettingsFiles> outside(List<Path> asked, SettingsFiles otherwise)
      throws UserError {
    Map<Path, SettingsFiles> outside = new LinkedHashMap<>();
    for (Path file : asked) {
      if (!isInside(file)) {
        outside.put(file, Files.exists(file) ? settings(file) : otherwise);
      }
    }
    return outside;
  }

  /** From the folder of sites, else from where the command is called, else its own name. */
  private String name(Path file) {
    if (isInside(file)) {
      return new BaseFolder(sites).shown(file);
    }
    String shown = base.shown(file);
    return shown.startsWith("/") || Path.of(shown).isAbsolute()
        ? String.valueOf(file.getFileName())
        : shown;
  }

  private void reportLeftOut(Path file, SiteGroups groups) {
    if (!names.matches(name(file))) {
      console.report(Level.NOTE, base.shown(file) + " is not a site: left out");
    } else if (groups.leavesOut(file)) {
      console.report(Level.NOTE, base.shown(file) + " applies to sites and is not one: left out");
    }
  }
}
