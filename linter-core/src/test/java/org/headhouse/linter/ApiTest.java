package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
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
import org.headhouse.linter.stability.Internal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What an embedding program can see, and what it may count on. */
class ApiTest {
  private static final String ROOT = "org.headhouse.linter";
  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final Pattern WORD = Pattern.compile("<p>(Stable|Internal): ");

  private static final List<JavaClass> PUBLIC =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages(ROOT).stream()
              .filter(ApiTest::isPublic)
              .filter(type -> !type.getSimpleName().startsWith("Jte"))
              .toList();

  private static boolean isPublic(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(ApiTest::isPublic).orElse(true);
  }

  private static String packageInfo(Path folder) {
    try {
      return Files.readString(folder.resolve("package-info.java"));
    } catch (IOException unreadable) {
      throw new AssertionError(folder + " says nothing of itself", unreadable);
    }
  }

  static List<Path> packages() throws IOException {
    return ArchitectureTest.packages();
  }

  @ParameterizedTest
  @MethodSource("packages")
  void everyPackageSaysWhetherItIsStable(Path folder) {
    assertThat(WORD.matcher(packageInfo(folder)).results()).hasSize(1);
  }

  private static Set<String> stablePackages() throws IOException {
    Set<String> stable = new TreeSet<>();
    for (Path folder : packages()) {
      if (packageInfo(folder).contains("<p>Stable: ")) {
        stable.add(SOURCES.relativize(folder).toString().replaceAll("[/\\\\]", "."));
      }
    }
    assertThat(stable).contains(ROOT, ROOT + ".rule", ROOT + ".result");
    return stable;
  }

  private static boolean isMarked(JavaClass type) {
    return type.isAnnotatedWith(Internal.class)
        || type.getEnclosingClass().map(ApiTest::isMarked).orElse(false);
  }

  /** Whoever uses a stable type needs no other to compile. */
  @Test
  void stableTypesSpeakOfStableTypesOnly() throws IOException {
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

  /** A mark where nothing is promised would promise something elsewhere. */
  @Test
  void onlyStablePackagesHaveMarks() throws IOException {
    Set<String> stable = stablePackages();
    assertThat(PUBLIC.stream().filter(ApiTest::isMarked))
        .isNotEmpty()
        .allSatisfy(type -> assertThat(stable).contains(type.getPackageName()));
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
