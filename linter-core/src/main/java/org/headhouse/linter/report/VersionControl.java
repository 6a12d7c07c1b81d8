package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where the files of a work tree come from, as git's own files say. Git's library would take longer
 * to load than most checks take. Whatever is kept in another form than usual is not known.
 *
 * @param repository the address of the remote origin, without user, password, query and fragment
 * @param revision the commit that is checked out, or null where it is not known
 * @param branch in ASCII, or null where it is not known or has another name, or none is checked out
 */
record VersionControl(String repository, @Nullable String revision, @Nullable String branch) {
  private static final int LARGEST = 1 << 20;
  private static final Set<String> REMOTE = Set.of("https", "http", "ssh", "git");
  private static final Pattern SECTION =
      Pattern.compile("\\s*\\[(.*)]\\s*(?:[#;].*)?", Pattern.DOTALL);
  private static final String ORIGIN = "remote \"origin\"";
  private static final Pattern URL =
      Pattern.compile(
          "\\s*url\\s*=\\s*([^\\s\"\\\\#;]+)\\s*(?:[#;].*)?",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  /** {@code [user@]host:path}, which git takes for {@code ssh://[user@]host/path}. */
  private static final Pattern SHORT = Pattern.compile("(?:[^@/:]+@)?([\\w.-]{2,}):([^/\\\\:%].*)");

  /**
   * In a path: what parts a user, a query or a fragment from it if it is in its place, or may be
   * that escaped a second time.
   */
  private static final Pattern MISPLACED = Pattern.compile("[@?#&=%]");

  /** In front of the name of another machine, which Windows would ask over the network. */
  private static final Pattern SHARE = Pattern.compile("[/\\\\]{2}");

  private static final Pattern COMMIT = Pattern.compile("[0-9a-f]{40}|[0-9a-f]{64}");
  private static final String SYMBOLIC = "ref: ";

  /** Whoever sends in a change names its branch, and may hide characters in the name. */
  private static final Pattern BRANCH = Pattern.compile("refs/heads/([!-~]+)");

  /**
   * Reads what git keeps of a work tree.
   *
   * @param root the folder that holds .git
   * @return empty where no remote has an address that others can use
   */
  static Optional<VersionControl> of(Path root) {
    try {
      Path git = folder(root.resolve(".git"), "gitdir: ");
      Path common = folder(git.resolve("commondir"), "");
      Path shared = Files.isDirectory(common) ? common : git;
      String head = text(git.resolve("HEAD")).strip();
      String ref = head.startsWith(SYMBOLIC) ? head.substring(SYMBOLIC.length()) : null;
      String commit = ref == null ? head : commit(ref, git, shared);
      String revision = COMMIT.matcher(commit).matches() ? commit : null;
      Matcher named = BRANCH.matcher(ref == null || revision == null ? "" : ref);
      String branch = named.matches() ? named.group(1) : null;
      return origin(text(shared.resolve("config")).lines().toList())
          .flatMap(VersionControl::address)
          .map(address -> new VersionControl(address, revision, branch));
    } catch (IOException | InvalidPathException unreadable) {
      return Optional.empty();
    }
  }

  /** A folder, or the one that a file in its place names. */
  private static Path folder(Path place, String before) throws IOException {
    String text = text(place).strip();
    if (text.isEmpty() || !text.startsWith(before)) {
      return place;
    }
    String name = text.substring(before.length());
    return SHARE.matcher(name).lookingAt() ? place : place.resolveSibling(name).normalize();
  }

  /** Empty where there is no such file, or more in it than git usually keeps. */
  private static String text(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return "";
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      return bytes.length <= LARGEST ? new String(bytes, UTF_8) : "";
    }
  }

  private static String commit(String ref, Path git, Path shared) throws IOException {
    for (Path folder : List.of(git, shared)) {
      Path file = folder.resolve(ref).normalize();
      if (file.startsWith(folder) && Files.isRegularFile(file)) {
        return text(file).strip();
      }
    }
    return text(shared.resolve("packed-refs"))
        .lines()
        .filter(line -> line.endsWith(" " + ref))
        .map(line -> line.substring(0, line.length() - ref.length() - 1))
        .findFirst()
        .orElse("");
  }

  private static Optional<String> origin(List<String> config) {
    boolean inside = false;
    for (String line : config) {
      Matcher section = SECTION.matcher(line);
      Matcher url = URL.matcher(line);
      if (line.stripLeading().startsWith("[")) {
        inside = section.matches() && section.group(1).equals(ORIGIN);
      } else if (inside && url.matches()) {
        return Optional.of(url.group(1));
      }
    }
    return Optional.empty();
  }

  /** An absolute URI without what is nobody's business, or empty where it leads to this machine. */
  private static Optional<String> address(String url) {
    Matcher shortened = SHORT.matcher(url);
    String full =
        shortened.matches() && !url.contains("://")
            ? "ssh://" + shortened.group(1) + "/" + shortened.group(2)
            : url;
    try {
      URI uri = new URI(full);
      String scheme = uri.getScheme() == null ? "" : uri.getScheme().toLowerCase(Locale.ROOT);
      return REMOTE.contains(scheme)
              && uri.getHost() != null
              && !MISPLACED.matcher(uri.getPath()).find()
          // Escaped as it is: a slash with an escape is another address than one without.
          ? Optional.of(new URI(place(scheme, uri) + uri.getRawPath()).toASCIIString())
          : Optional.empty();
    } catch (URISyntaxException noAddress) {
      return Optional.empty();
    }
  }

  private static String place(String scheme, URI uri) {
    return scheme + "://" + uri.getHost() + (uri.getPort() < 0 ? "" : ":" + uri.getPort());
  }
}
