package org.headhouse.linter.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.FoundFile;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.SiteFiles;
import org.headhouse.linter.files.SiteNames;
import org.headhouse.linter.files.Trouble;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.jspecify.annotations.Nullable;

/**
 * What a call asks to be checked: a whole folder, or the files that it names. Of these, a hook may
 * name any that changed; each is checked with the settings beside the folder of sites that it lies
 * in.
 */
final class AskedSites {
  private static final ParameterNames CALLED = "--"::concat;

  private final Arguments arguments;
  private final BaseFolder base;
  private final Console console;
  private final Path sites;
  private final SiteNames names;

  AskedSites(Arguments arguments, BaseFolder base, Console console) throws Trouble {
    this.arguments = arguments;
    this.base = base;
    this.console = console;
    this.sites = base.path().resolve(arguments.get(CommandOption.SITES, "sites")).normalize();
    this.names =
        new SiteNames(
            arguments.list(CommandOption.INCLUDES, SiteNames.USUAL),
            arguments.list(CommandOption.EXCLUDES, List.of()),
            CALLED);
  }

  /** The sites, put together by what holds for them. */
  List<FoundSites> find() throws Trouble {
    if (arguments.files().isEmpty()) {
      return List.of(all());
    }
    List<Path> asked = new ArrayList<>();
    for (String file : arguments.files()) {
      asked.add(file(file));
    }
    return asked.stream().anyMatch(this::holdsForAll) && Files.isDirectory(sites)
        ? withAll(asked)
        : single(asked);
  }

  private Path file(String written) throws Trouble {
    Path file = base.path().resolve(written).normalize();
    if (written.isEmpty()) {
      throw new Trouble("the name of a file is empty: leave it out");
    }
    if (Files.isDirectory(file)) {
      throw new Trouble(
          "\"" + written + "\" is a folder: write --sites=" + written + ", or name files in it");
    }
    return file;
  }

  private FoundSites all() throws Trouble {
    SettingsFiles settings = settings(sites);
    boolean allowEmpty = arguments.has(CommandOption.ALLOW_EMPTY);
    return new FoundSites(
        sites,
        names,
        new SiteFiles(sites, names, allowEmpty, CALLED).find(settings.all()),
        settings);
  }

  private SettingsFiles settings(Path checked) throws Trouble {
    return SettingsFiles.find(
        checked, path(CommandOption.POLICY), path(CommandOption.DEVICE_TYPES), CALLED);
  }

  private @Nullable Path path(CommandOption option) {
    String written = arguments.get(option);
    return written == null ? null : base.path().resolve(written);
  }

  private boolean holdsForAll(Path file) {
    return SettingsFiles.usualPlaces(sites).contains(file)
        || file.equals(path(CommandOption.POLICY))
        || file.equals(path(CommandOption.DEVICE_TYPES));
  }

  /** The whole folder, where what holds for all of it is among the files, and files elsewhere. */
  private List<FoundSites> withAll(List<Path> asked) throws Trouble {
    console.tell(
        Level.NOTE, "All sites are checked, since what holds for all is among the files named");
    List<FoundSites> found = new ArrayList<>(List.of(all()));
    found.addAll(
        single(
            asked.stream().filter(file -> !file.startsWith(sites) && !holdsForAll(file)).toList()));
    return found;
  }

  private List<FoundSites> single(List<Path> asked) throws Trouble {
    Map<SettingsFiles, List<FoundFile>> bySettings = new LinkedHashMap<>();
    List<Path> leftOut = new ArrayList<>(asked);
    boolean folder = Files.isDirectory(sites);
    if (folder) {
      List<Path> inside = asked.stream().filter(file -> file.startsWith(sites)).toList();
      SettingsFiles settings = settings(sites);
      List<FoundFile> files =
          new SiteFiles(sites, names, true, CALLED).among(inside, settings.all());
      if (!files.isEmpty()) {
        bySettings.put(settings, new ArrayList<>(files));
        files.forEach(file -> leftOut.remove(file.path()));
      }
    }
    for (Path file : asked) {
      if (!(folder && file.startsWith(sites)) && names.matches(name(file))) {
        bySettings
            .computeIfAbsent(settings(file), settings -> new ArrayList<>())
            .add(new FoundFile(file, null));
        leftOut.remove(file);
      }
    }
    leftOut.forEach(this::tellLeftOut);
    List<FoundSites> found = new ArrayList<>();
    bySettings.forEach(
        (settings, files) ->
            found.add(new FoundSites(files.get(0).path(), names, files, settings)));
    return found;
  }

  /** From where the command is called; of a file elsewhere, its own name. */
  private String name(Path file) {
    String shown = base.shown(file);
    return shown.startsWith("/") || Path.of(shown).isAbsolute()
        ? String.valueOf(file.getFileName())
        : shown;
  }

  private void tellLeftOut(Path file) {
    console.tell(Level.NOTE, TextReport.printable(base.shown(file)) + " is no site: left out");
  }
}
