package sawstead.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sawstead.outside.OutsideTool;

/** The house keeps its rules, and a house that breaks them is told every one. */
class HouseTest {
  private static final int MOST_LINES = 500;

  @TestFactory
  Stream<DynamicTest> ourHouse_keeps() {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("sawstead");
    return HouseRules.of("sawstead").entrySet().stream()
        .map(rule -> dynamicTest(rule.getKey(), () -> rule.getValue().check(classes)));
  }

  /** Rule by rule, which classes of the flawed house break it: no fewer and no more. */
  @Test
  void flawedHouse_isToldEveryFault() {
    Map<String, List<String>> expected = new TreeMap<>();
    expected.put("sees SOLID", List.of("solid.WoodManager"));
    expected.put("sees EXPORT", List.of("export.Ledger"));
    expected.put("sees BOOK", List.of("book.Page"));
    expected.put("rooms", List.of("cellar.Box"));
    expected.put("cycles", List.of("book.Page", "export.Ledger"));
    expected.put("closed", List.of("station.Plan"));
    expected.put("names", List.of("solid.WoodManager"));
    expected.put("streams", List.of("solid.WoodManager"));
    expected.put("logging", List.of("book.Page"));
    for (String library : List.of("javafx", "picocli", "yaml", "jts")) {
      expected.put(library, List.of("cellar.Box"));
    }

    String flawed = "sawstead.house.flawed";
    JavaClasses classes = new ClassFileImporter().importPackages(flawed);
    Map<String, List<String>> found = new TreeMap<>();
    HouseRules.of(flawed)
        .forEach(
            (name, rule) -> {
              List<String> culprits = culprits(rule, classes);
              if (!culprits.isEmpty()) {
                found.put(name, culprits);
              }
            });
    assertEquals(expected, found);
  }

  private static List<String> culprits(ArchRule rule, JavaClasses classes) {
    String details = String.join("\n", rule.evaluate(classes).getFailureReport().getDetails());
    // A detail begins with the culprit; one of a cycle holds a line for each edge.
    return classes.stream()
        .filter(
            type ->
                Arrays.stream(details.split("\n"))
                    .map(
                        line ->
                            line.replaceFirst(
                                "^[\\s\\d.-]*(Class|Field|Method|Constructor)? ?", ""))
                    .anyMatch(
                        line ->
                            line.startsWith("<" + type.getName())
                                || line.startsWith(type.getName())))
        .map(type -> type.getName().substring("sawstead.house.flawed.".length()))
        .sorted()
        .toList();
  }

  @Test
  void everyRule_saysWhy() {
    HouseRules.of("sawstead")
        .forEach((name, rule) -> assertTrue(rule.getDescription().contains("because"), name));
  }

  @Test
  void noSourceFile_isLongerThan500Lines() throws IOException {
    List<String> tooLong = new ArrayList<>();
    for (String tree : List.of("src/main/java", "src/test/java")) {
      try (Stream<Path> paths = Files.walk(OutsideTool.project().resolve(tree))) {
        for (Path path : paths.filter(file -> file.toString().endsWith(".java")).toList()) {
          long lines = Files.readAllLines(path).size();
          if (lines > MOST_LINES) {
            tooLong.add(path.getFileName() + " has " + lines + " lines");
          }
        }
      }
    }
    assertEquals(List.of(), tooLong);
  }
}
