package org.headhouse.linter.goal;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.sheet.PageNames;

/**
 * Knows the files that the goal report wrote into a folder, by how they begin: it may write them
 * again, and none of somebody else. Lists to fill in on a visit are never replaced once touched,
 * and are not looked at here.
 *
 * @param base what paths are shown from
 */
record OwnReports(Path folder, BaseFolder base) {
  /**
   * How text begins that the goal wrote, without returns. Where that changes, the new beginning is
   * added and the old one stays: files of an earlier version are its own too.
   */
  private static final List<String> STARTS =
      List.of(
          """
          <!DOCTYPE html>
          <html lang="en">
          <head>
          <meta charset="utf-8">
          <meta name="viewport" content="width=device-width, initial-scale=1">
          <meta name="color-scheme" content="light dark">
          <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">
          """,
          "customer,site,unit,role,address,device-type,firmware,serial-number,vents,ip,stage,"
              + "proved-on,proved-by,next-proof,open-exceptions\n",
          "customer,site,stage,material,type,amount,unit,to-order,complete,not-counted\n",
          "zone,address,role,device-type,ip\n",
          "BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//headhouse.org//Greenhouse line linter//EN\n");

  /** The figures of a first site, or of none. */
  private static final Pattern FIGURES =
      Pattern.compile(
          "\\{\\s*\"sites\"\\s*:\\s*\\[\\s*(?:]|\\{\\s*\"site\"\\s*:\\s*\"[^\\n]*\",\\s*\"segments\").*",
          Pattern.DOTALL);

  /** An entry that is stored and has the one time of all bundles (APPNOTE.TXT, 4.3.7). */
  private static final Pattern ENTRY =
      Pattern.compile("PK\\x03\\x04.{4}\\x00\\x00\\x00\\x00A\\x00.{16}(.*)", Pattern.DOTALL);

  private static final String BUNDLE = ".zip";

  /** What the names of its files end with. */
  private static final Pattern NAME =
      Pattern.compile(".+\\.(?:html|csv|ics|zip)|figures\\.json", Pattern.CASE_INSENSITIVE);

  /** Whether the folder has files of others that may have the name of a report. */
  boolean hasOthers() {
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        if (NAME.matcher(name(file)).matches() && !isOwn(file)) {
          return true;
        }
      }
      return false;
    } catch (IOException | DirectoryIteratorException unreadable) {
      return true;
    }
  }

  /**
   * Refuses to replace a file of somebody else.
   *
   * @throws UserError where there is one of that name
   */
  void require(String name) throws UserError {
    Path file = folder.resolve(name);
    if (!isLookedAtElsewhere(file)) {
      OwnFile.require(file, base.shown(file), "a report", start -> isOwn(start, name));
    }
  }

  private static boolean isOwn(Path file) throws IOException {
    return isLookedAtElsewhere(file) || OwnFile.isOwn(file, start -> isOwn(start, name(file)));
  }

  /** A folder is never replaced, but a link to one would be. */
  private static boolean isLookedAtElsewhere(Path file) {
    return PageNames.isVisit(name(file)) || Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS);
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }

  private static boolean isOwn(String start, String name) {
    if (name.endsWith(BUNDLE)) {
      return isBundle(start, name.substring(0, name.length() - BUNDLE.length()));
    }
    String text = start.replace("\r", "");
    return STARTS.stream().anyMatch(text::startsWith) || FIGURES.matcher(text).matches();
  }

  /** Its files are in a folder of its name. */
  private static boolean isBundle(String start, String name) {
    Matcher entry = ENTRY.matcher(start);
    return entry.matches()
        && entry.group(1).startsWith(new String((name + "/").getBytes(UTF_8), ISO_8859_1));
  }
}
