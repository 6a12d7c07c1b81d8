package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.line.PollLoad;
import org.headhouse.linter.stability.Internal;
import org.headhouse.linter.stability.Stable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What an embedding program can see, and what it may count on. */
class ApiTest {
  private static final String ROOT = "org.headhouse.linter";

  private static final int MOST_PROMISED = 4;

  private static final Set<String> FILLED_BY_PROGRAMS =
      Set.of(DraftSettings.class.getName(), PollLoad.class.getName());

  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(location -> !location.contains("/test-classes/"))
          .importPackages(ROOT);

  private static final List<JavaClass> PUBLIC =
      OURS.stream()
          .filter(ApiTest::isPublic)
          .filter(type -> !type.getSimpleName().startsWith("Jte"))
          .toList();

  private static boolean isPublic(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(ApiTest::isPublic).orElse(true);
  }

  static List<JavaPackage> packages() {
    return OURS.stream()
        .filter(type -> !type.getSimpleName().equals("package-info"))
        .map(JavaClass::getPackage)
        .distinct()
        .toList();
  }

  @ParameterizedTest
  @MethodSource("packages")
  void everyPackageSaysWhetherItIsStable(JavaPackage each) {
    assertThat(each.isAnnotatedWith(Stable.class))
        .isNotEqualTo(each.isAnnotatedWith(Internal.class));
  }

  static Set<String> stablePackages() {
    Set<String> stable =
        packages().stream()
            .filter(each -> each.isAnnotatedWith(Stable.class))
            .map(JavaPackage::getName)
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(stable).contains(ROOT, ROOT + ".rule", ROOT + ".result");
    return stable;
  }

  private static boolean isMarked(JavaClass type) {
    return type.isAnnotatedWith(Internal.class)
        || type.getEnclosingClass().map(ApiTest::isMarked).orElse(false);
  }

  /** Whoever uses a stable type needs no other to compile. */
  @Test
  void stableTypesSpeakOfStableTypesOnly() {
    Set<String> stable = stablePackages();
    List<String> leaks = new ArrayList<>();
    int types = 0;
    for (JavaClass type : PUBLIC) {
      if (stable.contains(type.getPackageName()) && !isMarked(type)) {
        types++;
        signature(type)
            .filter(part -> part.getPackageName().startsWith(ROOT))
            .filter(part -> !stable.contains(part.getPackageName()) || isMarked(part))
            .forEach(part -> leaks.add(type.getName() + " speaks of " + part.getName()));
      }
    }
    assertThat(types).isGreaterThan(100);
    assertThat(leaks).isEmpty();
  }

  private static Stream<JavaClass> signature(JavaClass type) {
    Stream<JavaType> above =
        Stream.concat(type.getSuperclass().stream(), type.getInterfaces().stream());
    Stream<JavaType> fields =
        type.getFields().stream().filter(ApiTest::isSeen).map(JavaField::getType);
    Stream<JavaType> calls =
        Stream.concat(type.getMethods().stream(), type.getConstructors().stream())
            .filter(ApiTest::isSeen)
            .flatMap(ApiTest::types);
    return Stream.of(above, fields, calls)
        .flatMap(part -> part)
        .flatMap(part -> part.getAllInvolvedRawTypes().stream())
        .map(JavaClass::getBaseComponentType);
  }

  private static Stream<JavaType> types(JavaCodeUnit call) {
    return Stream.of(
            Stream.of(call.getReturnType()),
            call.getParameterTypes().stream(),
            call.getExceptionTypes().stream().map(JavaType.class::cast))
        .flatMap(part -> part);
  }

  private static boolean isSeen(JavaMember member) {
    Set<JavaModifier> modifiers = member.getModifiers();
    return !member.isAnnotatedWith(Internal.class)
        && !modifiers.contains(JavaModifier.SYNTHETIC)
        && (modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED));
  }

  /**
   * A record that is handed out may get more components, and its constructor would be another one.
   * Those that a program fills itself are promised.
   */
  @Test
  void noLongConstructorIsPromised() {
    Set<String> stable = stablePackages();
    assertThat(
            PUBLIC.stream()
                .filter(type -> stable.contains(type.getPackageName()) && !isMarked(type))
                .filter(type -> !FILLED_BY_PROGRAMS.contains(type.getName()))
                .flatMap(type -> type.getConstructors().stream())
                .filter(ApiTest::isSeen)
                .filter(constructor -> constructor.getParameters().size() > MOST_PROMISED))
        .isEmpty();
  }

  /** A mark where nothing is promised would promise something elsewhere. */
  @Test
  void onlyStablePackagesHaveMarks() {
    Set<String> stable = stablePackages();
    assertThat(PUBLIC.stream().filter(ApiTest::isMarked))
        .isNotEmpty()
        .allSatisfy(type -> assertThat(stable).contains(type.getPackageName()));
  }

  @Test
  void thePageOnEmbeddingListsTheStablePackages() throws IOException {
    String listed =
        Files.readString(Path.of("docs/embedding.md"))
            .split("These are stable:", 2)[1]
            .split("\\.\n", 2)[0];
    assertThat(
            Pattern.compile("`([a-z.]+)`")
                .matcher(listed)
                .results()
                .map(match -> match.group(1))
                .map(name -> name.equals(ROOT) ? ROOT : ROOT + "." + name))
        .containsExactlyInAnyOrderElementsOf(stablePackages());
  }

  /** What a release is compared with is what is promised. */
  @Test
  void theGuardOfTheBuildKnowsTheStablePackages() throws IOException {
    String guard = Files.readString(Path.of("pom.xml")).split("<id>api</id>", 2)[1];
    Set<String> guarded =
        Pattern.compile("<include>(.*?)</include>")
            .matcher(guard)
            .results()
            .map((MatchResult match) -> match.group(1))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(guarded).isEqualTo(stablePackages());
    assertThat(guard).contains("<exclude>@" + Internal.class.getName() + "</exclude>");
  }
}
