package org.headhouse.linter;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.FileDescriptor;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.rule.EngineRule;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rules.BuiltInRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Which package may know which, and what no class may do. */
class ArchitectureTest {
  private static final String ROOT = "org.headhouse.linter";

  /** Without what is compiled from templates, which has a style of its own. */
  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .withImportOption(location -> !location.contains("Generated."))
          .importPackages(ROOT);

  /** Packages with a line of their own, though they lie in another. */
  private static final String INNER = ROOT + ".report.sheet";

  /** The packages follow the way of the data; each may know those that are listed. */
  @ParameterizedTest
  @CsvSource({
    "stability, ''",
    "source, ''",
    "line, ''",
    "fault, line",
    "result, source",
    "yaml, source result",
    "site, source",
    "figures, source site line",
    "diagnosis, source site line figures fault",
    "bind, source result yaml site",
    "schema, source result yaml site",
    "proof, source result site figures",
    "materials, source site figures line",
    "change, source site proof materials",
    "rule, source result site figures line",
    "rules, source result site rule change proof figures line",
    "policy, source result yaml rule",
    "fix, source result yaml",
    "check, source result yaml site bind schema rule policy figures line fix diagnosis",
    "draft, source result yaml site bind line figures change fix",
    "visit, source result yaml site bind proof fix draft",
    "baseline, source result",
    "markup, ''",
    "diagram, source result site figures line markup",
    "report, source result site rule change figures line markup materials diagnosis",
    "report.sheet, source result yaml site proof change figures line materials report diagnosis",
    "settings, source result site figures rule rules policy check draft visit baseline",
    "batch, source result site figures check fix baseline settings diagnosis",
    "sheets, source result yaml site proof change figures line rule rules policy check diagram report settings batch materials",
    "repository, source result site change rules check batch materials",
    "files, source"
  })
  void packagesKnowOnlyThoseBeforeThem(String name, String known) {
    String[] allowed =
        Stream.concat(
                Stream.of(name), Arrays.stream(known.split(" ")).filter(one -> !one.isEmpty()))
            .map(one -> ROOT + "." + one + "..")
            .toArray(String[]::new);
    // Its marks say something of types, and nothing to the program.
    DescribedPredicate<JavaClass> others =
        resideInAnyPackage(ROOT + "..")
            .and(not(resideInAnyPackage(allowed)))
            .and(not(resideInAPackage(ROOT + ".stability")));
    noClasses()
        .that()
        .resideInAPackage(ROOT + "." + name + "..")
        .and(not(resideInAnyPackage(INNER)).or(resideInAPackage(ROOT + "." + name)))
        .should()
        .dependOnClassesThat(others)
        .check(OURS);
  }

  /** The façade is made of the packages, and no package is made of the façade. */
  @Test
  void nothingButRunsKnowsTheFacade() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            ROOT,
            ROOT + ".run",
            ROOT + ".revision",
            ROOT + ".goal",
            ROOT + ".editor",
            ROOT + ".command")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(ROOT)
        .check(OURS);
  }

  /** What a program needs to start, and what it gets back; all else has a room of its own. */
  @Test
  void theFacadeIsAllThatIsInTheRoot() {
    assertThat(
            OURS.stream()
                .filter(type -> type.getPackageName().equals(ROOT))
                .filter(JavaClass::isTopLevelClass)
                .map(JavaClass::getSimpleName)
                .filter(name -> !name.equals("package-info")))
        .containsExactlyInAnyOrder("SiteLinter", "SiteInput", "CheckReport", "ReportPart");
  }

  /** Programs that embed the library need nothing of what runs it on folders. */
  @Test
  void runsComeAfterTheFacade() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            ROOT + ".run", ROOT + ".revision", ROOT + ".goal", ROOT + ".editor", ROOT + ".command")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            ROOT + ".run", ROOT + ".revision", ROOT + ".goal", ROOT + ".editor", ROOT + ".command")
        .check(OURS);
    noClasses()
        .that()
        .resideInAPackage(ROOT + ".run")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(ROOT + ".revision", ROOT + ".goal", ROOT + ".editor", ROOT + ".command")
        .check(OURS);
    noClasses()
        .that()
        .resideInAPackage(ROOT + ".editor")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(ROOT + ".revision", ROOT + ".goal", ROOT + ".command")
        .check(OURS);
    noClasses()
        .that()
        .resideInAPackage(ROOT + ".revision")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(ROOT + ".run", ROOT + ".goal", ROOT + ".editor", ROOT + ".command")
        .check(OURS);
    noClasses()
        .that()
        .resideInAPackage(ROOT + ".goal")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(ROOT + ".editor", ROOT + ".command")
        .check(OURS);
  }

  /** Libraries stay behind the packages that are made for them. */
  @ParameterizedTest
  @CsvSource({
    "org.yaml.snakeyaml.., yaml",
    "com.networknt.., schema",
    "com.fasterxml.jackson.., schema report baseline",
    "gg.jte.., report.sheet",
    "com.google.re2j.., rule",
    "javax.xml.., report",
    "org.codehaus.plexus.util.., files",
    "org.eclipse.jgit.., revision",
    "com.github.difflib.., goal",
    "org.eclipse.lsp4j.., editor",
    "com.google.gson.., editor"
  })
  void librariesAreKnownInOnePlace(String library, String places) {
    String[] allowed =
        Arrays.stream(places.split(" ")).map(one -> ROOT + "." + one + "..").toArray(String[]::new);
    noClasses()
        .that()
        .resideOutsideOfPackages(allowed)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(OURS);
  }

  @Test
  void nothingKnowsMavenOrANetwork() {
    noClasses()
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("org.apache.maven..", "java.net..", "javax.net..", "java.rmi..")
                // These tell where a jar lies; to open one is another thing.
                .and(not(belongToAnyOf(URL.class, URI.class, URISyntaxException.class))))
        .orShould()
        .callMethodWhere(
            target(owner(assignableTo(URL.class))).and(not(target(nameMatching("toURI")))))
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching("java\\.nio\\.channels\\..*Socket.*")
        .check(OURS);
  }

  /** But for the command, which is a program. */
  @Test
  void nothingPrintsOrEndsTheProgram() {
    NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(OURS);
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + ".command")
        .should()
        .callMethod(System.class, "exit", int.class)
        .orShould()
        .accessField(FileDescriptor.class, "out")
        .orShould()
        .accessField(FileDescriptor.class, "err")
        .check(OURS);
    noClasses()
        .should()
        .callMethodWhere(
            target(owner(assignableTo(Runtime.class)))
                .and(not(target(nameMatching("getRuntime|availableProcessors|maxMemory|version")))))
        .orShould()
        .callMethod(
            Thread.class,
            "setDefaultUncaughtExceptionHandler",
            Thread.UncaughtExceptionHandler.class)
        .check(OURS);
  }

  /** Final is not enough where the value itself can change. */
  @Test
  void nothingStaticCanChange() {
    fields().that().areStatic().should().beFinal().check(OURS);
    noFields()
        .that()
        .areStatic()
        .and()
        .doNotHaveModifier(JavaModifier.SYNTHETIC)
        .should()
        .haveRawType(MUTABLE)
        .check(OURS);
  }

  private static final DescribedPredicate<JavaClass> MUTABLE =
      DescribedPredicate.describe(
          "an array, a builder or a collection of the kind that changes",
          type ->
              type.isArray()
                  || type.getName()
                      .matches("java\\.util\\.(Array|Hash|Tree|Linked|Enum|concurrent).*")
                  || type.getName().matches("java\\.lang\\.(ThreadLocal|String(Builder|Buffer))"));

  @Test
  void rulesAreFinalAndKeepNothing() {
    DescribedPredicate<JavaClass> rules =
        assignableTo(Rule.class).and(resideInAPackage(ROOT + ".rules.."));
    classes().that(rules).should().haveModifier(JavaModifier.FINAL).check(OURS);
    noFields()
        .that()
        .areDeclaredInClassesThat(rules.and(not(assignableTo(EngineRule.class))))
        .should()
        .notBeStatic()
        .check(OURS);
    assertThat(OURS.stream().filter(rules).map(JavaClass::getName))
        .containsExactlyInAnyOrderElementsOf(
            BuiltInRules.all().stream().map(rule -> rule.getClass().getName()).distinct().toList());
  }

  static List<Path> packages() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .map(Path::getParent)
          .distinct()
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("packages")
  void everyPackageSaysWhatItIsFor(Path folder) throws IOException {
    assertThat(Files.readString(folder.resolve("package-info.java")))
        .matches(
            "(?s)/\\*\\*(\\n \\*)? [A-Z].+?\\. ?.*\\*/\\n@NullMarked\\n@(Stable|Internal)\\npackage .*");
  }
}
