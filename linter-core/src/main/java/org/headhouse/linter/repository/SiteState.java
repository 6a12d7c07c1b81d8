package org.headhouse.linter.repository;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.headhouse.linter.batch.FileTask;
import org.headhouse.linter.check.RuleCatalogue;
import org.headhouse.linter.check.SettingsCheck;
import org.headhouse.linter.check.SiteReader;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.rules.BuiltInRules;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The sites of one state of a repository, such as an earlier revision. Only their ids are kept, and
 * these are read once somebody needs more than the file that is still in its place; a site is read
 * again when it is asked for.
 */
public final class SiteState {

  /**
   * A file of the state.
   *
   * @param id of its site, or null where none can be read
   */
  record Entry(InputFile input, @Nullable String id) {}

  private final SiteReader reader;
  private final Limits limits;
  private final String name;
  private final Map<String, InputFile> inputs = new LinkedHashMap<>();
  private SitePast past = SitePast.UNKNOWN;
  private @Nullable Known known;

  /** What is known once all files are read. */
  private static final class Known {
    private final List<Entry> entries = new ArrayList<>();
    private final Map<String, Entry> byId = new HashMap<>();
    private final Map<String, Entry> byPath = new HashMap<>();
    private final List<Notification> notifications = new ArrayList<>();
  }

  private SiteState(SiteReader reader, Limits limits, String name) {
    this.name = name;
    this.reader = reader;
    this.limits = limits;
  }

  /**
   * The files of a state that has no name; they are read when they are asked for.
   *
   * @param deviceTypes those of that state, or null
   * @throws IOException where the device types cannot be read
   */
  public static SiteState of(Stream<? extends InputFile> sites, @Nullable InputFile deviceTypes)
      throws IOException {
    return named("the earlier state", sites, deviceTypes);
  }

  /**
   * The files of a state; they are read when they are asked for.
   *
   * @param name what the user calls the state, such as a revision: results name it
   * @param deviceTypes those of that state, or null
   * @throws IOException where the device types cannot be read
   */
  public static SiteState named(
      String name, Stream<? extends InputFile> sites, @Nullable InputFile deviceTypes)
      throws IOException {
    Limits limits = Limits.DEFAULT;
    SiteReader reader =
        deviceTypes == null
            ? new SiteReader(DeviceTypes.NONE, limits)
            : reader(deviceTypes.path(), deviceTypes.bytes(limits));
    SiteState state = new SiteState(reader, limits, name);
    sites.forEachOrdered(input -> state.inputs.putIfAbsent(input.path(), input));
    return state;
  }

  /**
   * The same state, with what its files were before.
   *
   * @param before gives that, with files read as those of the state are
   */
  @Internal
  public SiteState after(Function<SiteReader, SitePast> before) {
    SiteState state = new SiteState(reader, limits, name);
    state.inputs.putAll(inputs);
    state.past = before.apply(reader);
    return state;
  }

  /** The last commissioned state of the file of one of these sites, or null where none is known. */
  @Nullable Site proved(Site earlier) {
    return past.proved(earlier.source().path());
  }

  /** Whether any state of the file of a site, of these or of today, may have been in operation. */
  boolean mayHaveBeenLive(Site site) {
    return past.mayHaveBeenLive(site.source().path());
  }

  /**
   * Reads sites with the device types of their own state.
   *
   * @param path as results would show it
   * @param deviceTypes the content of the file
   */
  @Internal
  public static SiteReader reader(String path, byte[] deviceTypes) {
    Limits limits = Limits.DEFAULT;
    return new SiteReader(
        new SettingsCheck(new RuleCatalogue(BuiltInRules.all()), limits)
            .deviceTypes(path, deviceTypes),
        limits);
  }

  private synchronized Known known() {
    Known found = known;
    if (found == null) {
      found = new Known();
      for (InputFile input : inputs.values()) {
        add(input, found);
      }
      known = found;
    }
    return found;
  }

  private void add(InputFile input, Known found) {
    FileTask.Outcome<Site> outcome = FileTask.run(input, limits, reader::read);
    if (outcome.notification() != null) {
      found.notifications.add(outcome.notification());
    }
    Site site = outcome.value();
    Entry entry = new Entry(input, site == null ? null : site.id().orNull());
    found.entries.add(entry);
    found.byPath.put(input.path(), entry);
    if (entry.id() != null) {
      found.byId.putIfAbsent(entry.id(), entry);
    }
  }

  /** What the user calls the state. */
  public String name() {
    return name;
  }

  /** What kept files from being read. */
  public List<Notification> notifications() {
    return List.copyOf(known().notifications);
  }

  List<Entry> entries() {
    return known().entries;
  }

  @Nullable Entry withId(@Nullable String id) {
    return id == null ? null : known().byId.get(id);
  }

  @Nullable Entry at(String path) {
    return known().byPath.get(path);
  }

  /** The site of a file, or null where it cannot be read. */
  @Nullable Site read(Entry entry) {
    return FileTask.run(entry.input(), limits, reader::read).value();
  }

  /** The bytes of a file; none where it cannot be read. */
  byte[] bytes(Entry entry) {
    byte[] bytes = FileTask.run(entry.input(), limits, (path, read) -> read).value();
    return bytes == null ? new byte[0] : bytes;
  }

  /** What one of the files is known by. */
  SiteLikeness likeness(Entry entry) {
    return likeness(entry.input());
  }

  /** What a file of any state is known by. */
  SiteLikeness likeness(InputFile input) {
    byte[] bytes = FileTask.run(input, limits, (path, read) -> read).value();
    return new SiteLikeness(
        bytes == null ? new byte[0] : bytes, FileTask.run(input, limits, reader::read).value());
  }

  /**
   * What a site of a later state was here: the one at its path where that has its id, else the one
   * with its id, else the one at its path.
   */
  public @Nullable Site earlier(Site later) {
    InputFile unmoved = inputs.get(later.source().path());
    Site site = unmoved == null ? null : FileTask.run(unmoved, limits, reader::read).value();
    String id = later.id().orNull();
    if (site != null && id != null && site.id().is(id)) {
      return site;
    }
    Entry entry = withId(id);
    if (entry == null) {
      entry = at(later.source().path());
    }
    return entry == null ? null : read(entry);
  }

  /**
   * Why it may have a site that {@link #earlier} does not find: its own file, or else another one
   * that it may have been in, cannot be read. If it was no YAML, people must be able to correct it,
   * so that is a warning.
   *
   * @return null where the site is new
   */
  @Nullable Notification trouble(Site later) {
    String path = later.source().path();
    InputFile unmoved = inputs.get(path);
    if (unmoved != null) {
      FileTask.Outcome<Site> outcome = FileTask.run(unmoved, limits, reader::read);
      Notification lost = outcome.notification();
      return lost == null
          ? trouble(Level.WARNING, path, "the file cannot be read as YAML", null)
          : trouble(Level.ERROR, path, lost.text(), lost.cause());
    }
    return known().notifications.stream()
        .findFirst()
        .map(lost -> trouble(Level.ERROR, path, lost.file() + ": " + lost.text(), lost.cause()))
        .orElse(null);
  }

  /**
   * That a file cannot be read, and so nobody can say what became of its site; null where it can.
   */
  @Nullable Notification trouble(Entry entry) {
    Notification lost = FileTask.run(entry.input(), limits, reader::read).notification();
    return lost == null
        ? null
        : trouble(Level.ERROR, entry.input().path(), lost.text(), lost.cause());
  }

  private Notification trouble(Level level, String path, String text, @Nullable Throwable cause) {
    return new Notification(
        level,
        "what has changed cannot be checked, since in " + name + " " + text,
        path,
        null,
        cause);
  }
}
