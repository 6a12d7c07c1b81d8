package org.headhouse.linter.maven;

import java.nio.file.Path;
import java.util.List;

/**
 * What a goal over sites works on.
 *
 * @param sites the folder, or one file
 * @param names which files of a folder are sites
 * @param files the sites
 * @param settings the files that hold for all sites
 */
record FoundSites(Path sites, SiteNames names, List<Path> files, SettingsFiles settings) {}
