package sawstead.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.USE_JAVA_UTIL_LOGGING;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static sawstead.house.Room.CLI;
import static sawstead.house.Room.FORMULA;
import static sawstead.house.Room.INTAKE;
import static sawstead.house.Room.PREVIEW;
import static sawstead.house.Room.SOLID;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** The rules of a house whose rooms are packages below a given one, each under a short name. */
final class HouseRules {
  private HouseRules() {}

  /** All rules for the rooms below a package; a room that does not exist yet breaks none. */
  static Map<String, ArchRule> of(String house) {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    for (Room room : Room.values()) {
      if (!room.unseen().isEmpty()) {
        rules.put("sees " + room.name(), sees(house, room));
      }
    }
    rules.put("rooms", everyClassHasARoom(house));
    rules.put("cycles", noCycles(house));
    rules.put("closed", publicClassesAreClosed(house));
    rules.put("names", namesSayASubject(house));
    rules.put("streams", onlyCliPrints(house));
    rules.put("logging", nobodyLogs(house));
    rules.put("javafx", only(house, "javafx..", PREVIEW, "a machine without a display builds too"));
    rules.put("picocli", only(house, "picocli..", CLI, "arguments end at the door"));
    rules.put("yaml", only(house, "org.snakeyaml..", INTAKE, "a file's syntax ends at the door"));
    rules.put("cel", only(house, "dev.cel..", FORMULA, "a language ends at the door"));
    rules.put(
        "jts", only(house, "org.locationtech.jts..", SOLID, "other rooms speak of our outlines"));
    return rules;
  }

  private static ArchRule sees(String house, Room room) {
    String[] unseen =
        room.unseen().stream().map(other -> other.packages(house)).toArray(String[]::new);
    return noClasses()
        .that()
        .resideInAPackage(room.packages(house))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(unseen)
        .allowEmptyShould(true)
        .because(room.reason());
  }

  private static ArchRule everyClassHasARoom(String house) {
    String[] rooms =
        Arrays.stream(Room.values()).map(room -> room.packages(house)).toArray(String[]::new);
    return classes()
        .that()
        .resideInAPackage(house + "..")
        .and()
        .doNotHaveSimpleName("package-info")
        .should()
        .resideInAnyPackage(rooms)
        .allowEmptyShould(true)
        .because("a package that no rule knows would be bound by none");
  }

  private static ArchRule noCycles(String house) {
    return slices()
        .matching(house + ".(*)..")
        .should()
        .beFreeOfCycles()
        .allowEmptyShould(true)
        .because("rooms that need each other cannot be read one at a time");
  }

  private static ArchRule publicClassesAreClosed(String house) {
    return classes()
        .that()
        .resideInAPackage(house + "..")
        .and()
        .arePublic()
        .should(beClosed())
        .allowEmptyShould(true)
        .because("public is a promise, and a class not meant for inheritance says so");
  }

  private static ArchCondition<JavaClass> beClosed() {
    return new ArchCondition<>("be final, sealed, a record, an enum or an interface") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        boolean closed =
            type.isInterface()
                || type.isEnum()
                || type.getModifiers().contains(JavaModifier.FINAL)
                || type.reflect().isSealed();
        String says = closed ? " is closed" : " is open to inheritance";
        events.add(
            new SimpleConditionEvent(
                type, closed, type.getName() + says + " in " + type.getSourceCodeLocation()));
      }
    };
  }

  private static ArchRule namesSayASubject(String house) {
    return noClasses()
        .that()
        .resideInAPackage(house + "..")
        .should()
        .haveNameMatching(".*(Manager|Managers|Util|Utils|Utilities|Helper|Helpers)")
        .allowEmptyShould(true)
        .because("if only such a name fits, the class has no subject yet");
  }

  private static ArchRule onlyCliPrints(String house) {
    return noClasses()
        .that()
        .resideInAPackage(house + "..")
        .and()
        .resideOutsideOfPackage(CLI.packages(house))
        .should(ACCESS_STANDARD_STREAMS)
        .allowEmptyShould(true)
        .because("what a user reads goes through the command line, and JSON must stay clean");
  }

  private static ArchRule nobodyLogs(String house) {
    return noClasses()
        .that()
        .resideInAPackage(house + "..")
        .should(USE_JAVA_UTIL_LOGGING)
        .allowEmptyShould(true)
        .because("what goes wrong is told to the user in three parts, not to a log");
  }

  private static ArchRule only(String house, String library, Room room, String reason) {
    return noClasses()
        .that()
        .resideInAPackage(house + "..")
        .and()
        .resideOutsideOfPackage(room.packages(house))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .allowEmptyShould(true)
        .because(reason);
  }
}
