package org.headhouse.linter.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.headhouse.linter.Example;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.command.CommandProcess.Ended;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files as they are on real disks, met by the command as it is handed out. */
@EnabledOnOs(OS.LINUX)
class HardFilesIT {
  private static final String CLEAN = "1 site, 3 units: 0 errors, 0 warnings, 0 notes\n";

  @TempDir private Path folder;

  @BeforeEach
  void repository() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/example.yaml"), Example.SITE);
  }

  private List<String> names(String inFolder) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(inFolder))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /** A pipe waits for somebody who writes, and a device may have no end. */
  @Test
  void whatIsNoFileIsReportedAndNotWaitedFor() throws Exception {
    assertThat(CommandProcess.shell(folder, "mkfifo sites/pipe.yaml").code()).isZero();
    Files.createSymbolicLink(folder.resolve("sites/zero.yaml"), Path.of("/dev/zero"));
    Files.createDirectory(folder.resolve("sites/x.yaml"));
    try (ServerSocketChannel socket = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
      socket.bind(UnixDomainSocketAddress.of(folder.resolve("sites/socket.yaml")));
      String noFile =
          ": the file cannot be read: it is no file, but a pipe, a socket or a device\n";
      assertThat(CommandProcess.linter(folder))
          .isEqualTo(
              new Ended(
                  2,
                  "4 sites, 3 units: 0 errors, 0 warnings, 0 notes\n",
                  "No device types; no policy\n"
                      + "error: sites/pipe.yaml"
                      + noFile
                      + "error: sites/socket.yaml"
                      + noFile
                      + "error: sites/zero.yaml: the file cannot be read: it is a link that leads"
                      + " out of the folder of sites, to /dev/zero: put a copy in its place, or"
                      + " exclude it\n"));
      Ended named =
          CommandProcess.linter(folder, "sites/pipe.yaml", "/dev/zero", "sites/zero.yaml");
      assertThat(named.code()).isEqualTo(2);
      assertThat(named.err())
          .contains("sites/pipe.yaml" + noFile)
          .contains("/dev/zero is not a site: left out\n")
          .contains("sites/zero.yaml: the file cannot be read: it is a link that leads out");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"--baseline=pipe", "--policy=pipe", "--deviceTypes=pipe", "--sites=pipe"})
  void settingsThatAreNoFileAreReported(String option) throws Exception {
    assertThat(CommandProcess.shell(folder, "mkfifo pipe").code()).isZero();
    Ended ended = CommandProcess.linter(folder, option);
    assertThat(ended.code()).isEqualTo(2);
    assertThat(ended.err()).containsPattern("error: .*pipe.*(not a file|no file)");
  }

  /** Whatever a file system allows in a name; none is lost, whatever the locale. */
  @ParameterizedTest
  @ValueSource(strings = {"C", "C.UTF-8"})
  void namesAreWhatTheyAre(String locale) throws Exception {
    String made =
        """
        cd sites
        for name in 'a b' $'c\\xff' $'c\\xfe' $'d\\nd' '-e' 'f:?*"<>|' 'g\\g' $'h\\x1b[2J' 'ä' '苗'; do
          cp example.yaml "./$name.yaml"
        done
        mkdir $'k\\xff' && cp example.yaml $'k\\xff/site.yaml'
        rm example.yaml
        """;
    assertThat(CommandProcess.shell(folder, made)).isEqualTo(new Ended(0, "", ""));
    Ended ended =
        CommandProcess.run(
            folder,
            Map.of("LC_ALL", locale),
            CommandProcess.command("--outputDirectory=out", "--failLevel=none"));
    assertThat(ended.err()).isEqualTo("No device types; no policy\nResults are in out\n");
    assertThat(ended.code()).isZero();
    assertThat(ended.out())
        .contains("sites/a b.yaml:", "sites/d d.yaml:", "sites/-e.yaml:", "sites/f:?*\"<>|.yaml:")
        .contains("sites/g\\g.yaml:")
        .containsPattern("sites/h[?\uFFFD]\\[2J\\.yaml:")
        .contains("11 sites, 33 units: ")
        .doesNotContain("\u001b");
    if (locale.equals("C.UTF-8")) {
      assertThat(ended.out()).contains("sites/ä.yaml:", "sites/苗.yaml:");
    }
    valid();
  }

  private void valid() throws Exception {
    assertThat(names("out")).containsExactly("results-junit.xml", "results.sarif");
    assertThat(JsonText.read(Files.readString(folder.resolve("out/results.sarif")))).isNotNull();
    assertThat(
            DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(folder.resolve("out/results-junit.xml").toFile()))
        .isNotNull();
  }

  /** The first name is no UTF-8; made into text, it would be the second. */
  @Test
  void aNameThatIsNoTextLeadsToItsOwnFile() throws Exception {
    String made =
        """
        mv sites/example.yaml $'sites/c\\xff.yaml'
        echo 'stage: of another file' > other.txt
        ln -s ../other.txt $'sites/c\\xef\\xbf\\xbd.yaml'
        """;
    assertThat(CommandProcess.shell(folder, made)).isEqualTo(new Ended(0, "", ""));
    Ended ended =
        CommandProcess.run(
            folder, Map.of("LC_ALL", "C.UTF-8"), CommandProcess.command("--failLevel=none"));
    assertThat(ended.out()).contains("2 sites, 3 units: ").doesNotContain("of another file");
    assertThat(ended.err()).contains("it is a link that leads out of the folder of sites");
  }

  /** A name that the locale has no letters for arrives damaged; it is reported, and no failure. */
  @Test
  void aNameThatArrivesDamagedIsReportedWithTheRemedy() throws Exception {
    Ended ended =
        CommandProcess.run(folder, Map.of("LC_ALL", "C"), CommandProcess.command("sites/苗.yaml"));
    assertThat(ended.code()).isEqualTo(2);
    assertThat(ended.err()).contains("set LC_ALL=C.UTF-8").doesNotContain("Exception");
  }

  /** Runs a script as a user who may not read everything, as the superuser may. */
  private Ended asNobody(String script, String... arguments) throws Exception {
    boolean superuser = "root".equals(System.getProperty("user.name"));
    if (!superuser) {
      return CommandProcess.shell(folder, script, arguments);
    }
    boolean possible =
        CommandProcess.shell(folder, "setpriv --reuid=65534 --regid=65534 --clear-groups true")
                .code()
            == 0;
    assumeThat(possible)
        .as("these tests run as the superuser, and there is no setpriv to be somebody else with")
        .isTrue();
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    // The folder of the build may be closed to others.
    Files.copy(CommandProcess.JAR, folder.resolve("linter.jar"));
    List<String> all =
        new ArrayList<>(
            List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups", "bash", "-c"));
    all.add(script);
    all.add("bash");
    for (String argument : arguments) {
      all.add(argument.equals(CommandProcess.JAR.toString()) ? "linter.jar" : argument);
    }
    return CommandProcess.run(folder, Map.of(), all);
  }

  private static String[] command(String... arguments) {
    return CommandProcess.command(arguments).toArray(String[]::new);
  }

  @Test
  void aFileThatMayNotBeReadIsReported() throws Exception {
    Path closed = Files.writeString(folder.resolve("sites/closed.yaml"), Example.SITE);
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("---------"));
    Ended ended = asNobody("\"$@\"", command());
    assertThat(ended.code()).isEqualTo(2);
    assertThat(ended.err())
        .contains("error: sites/closed.yaml: the file cannot be read: permission denied\n");
    assertThat(ended.out()).isEqualTo("2 sites, 3 units: 0 errors, 0 warnings, 0 notes\n");
  }

  @Test
  void aFolderThatMayNotBeReadIsReported() throws Exception {
    Path closed = Files.createDirectory(folder.resolve("sites/closed"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("---------"));
    Ended ended = asNobody("\"$@\"", command());
    assertThat(ended.code()).isEqualTo(2);
    assertThat(ended.err())
        .contains("error: the folder of sites cannot be read: ")
        .contains("sites/closed: permission denied\n");
  }

  /** Nobody asked to read it. */
  @Test
  void aClosedFolderThatIsLeftOutIsNoTrouble() throws Exception {
    for (String name : List.of(".hidden", "old", "north/old")) {
      Path closed = Files.createDirectories(folder.resolve("sites").resolve(name));
      Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("---------"));
    }
    assertThat(asNobody("\"$@\"", command("--excludes=**/old/**")))
        .isEqualTo(new Ended(0, CLEAN, "No device types; no policy\n"));
  }

  @Test
  void anOutputDirectoryInAReadOnlyFolderIsReported() throws Exception {
    Path closed = Files.createDirectory(folder.resolve("closed"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
    Ended ended = asNobody("\"$@\"", command("--outputDirectory=closed/out"));
    assertThat(ended.code()).isEqualTo(2);
    assertThat(ended.out()).isEqualTo(CLEAN);
    assertThat(ended.err())
        .contains("closed/out/results.sarif cannot be written: ")
        .contains("closed/out: permission denied\n");
  }

  /** A limit on the size of files ends writing in the middle, as a full disk does. */
  @Test
  void theOldReportStaysWholeWhereTheNewOneDoesNotFit() throws Exception {
    assertThat(CommandProcess.linter(folder, "--outputDirectory=out").code()).isZero();
    byte[] before = Files.readAllBytes(folder.resolve("out/results.sarif"));
    Files.writeString(
        folder.resolve("sites/example.yaml"), Example.with("address: 3", "address: 4"));
    Ended ended =
        CommandProcess.shell(folder, "ulimit -f 8; \"$@\"", command("--outputDirectory=out"));
    assertThat(ended.code()).isEqualTo(2);
    assertThat(ended.err()).contains("out/results.sarif cannot be written: File too large\n");
    assertThat(folder.resolve("out/results.sarif")).hasBinaryContent(before);
    valid();
  }

  @Test
  void severalRunsMayWriteOneFolderAtATime() throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(3);
    try {
      List<Future<Ended>> runs = new ArrayList<>();
      for (int run = 0; run < 9; run++) {
        runs.add(pool.submit(() -> CommandProcess.linter(folder, "--outputDirectory=out")));
      }
      for (Future<Ended> run : runs) {
        assertThat(run.get())
            .isEqualTo(new Ended(0, CLEAN, "No device types; no policy\nResults are in out\n"));
      }
    } finally {
      pool.shutdown();
    }
    valid();
  }
}
