package sawstead.intake;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sawstead.brief.OwnUnit;
import sawstead.brief.Sheet;
import sawstead.measure.AmountFormatException;

/**
 * Reads the {@code own} section: which unit files are used, with which choices. A unit file lies in
 * the folder of the brief or below it, so that a brief and its units can be handed on together.
 */
final class OwnMapper {

  private static final Set<String> UNITS = Set.of("stand", "saw", "vac", "outfeed", "casters");

  private final Section brief;
  private final SheetNames sheets;

  OwnMapper(Section brief, SheetNames sheets) {
    this.brief = brief;
    this.sheets = sheets;
  }

  List<OwnUnit> units() {
    Duplicates ids = new Duplicates();
    List<OwnUnit> units = new ArrayList<>();
    for (Section use : brief.sections("own")) {
      String id = ids.fresh(use, "id");
      if (UNITS.contains(id)) {
        use.problem("id", "`" + id + "` is a unit of the station", "choose another id");
      }
      String file = use.text("file").orElse("");
      tree(use, file).flatMap(t -> unit(use, id, file, t)).ifPresent(units::add);
    }
    return units;
  }

  private Optional<Item.Table> tree(Section use, String file) {
    Optional<Path> path = path(use, file);
    if (path.isEmpty()) {
      return Optional.empty();
    }
    try {
      Item item = YamlTree.read(BriefReader.text(file, BriefReader.bytes(file, path.get())));
      if (item instanceof Item.Table table) {
        Problems problems = new Problems();
        new SchemaCheck(UnitSchema.FILE, problems).check(table);
        return passOn(use, file, problems) ? Optional.of(table) : Optional.empty();
      }
      use.problem(
          "file", file + " is " + item.kind() + ", not a unit", "see `sawstead schema --unit`");
    } catch (YamlException broken) {
      use.problem("file", words(file, broken.problem()), broken.problem().remedy());
    } catch (BriefException broken) {
      BriefProblem first = broken.problems().get(0);
      use.problem("file", words(file, first), first.remedy());
    }
    return Optional.empty();
  }

  private Optional<Path> path(Section use, String file) {
    if (file.isEmpty()) {
      return Optional.empty();
    }
    try {
      Path relative = Path.of(file).normalize();
      if (relative.isAbsolute() || relative.startsWith("..")) {
        use.problem(
            "file",
            "`" + file + "` is not in the folder of the brief",
            "copy the unit file beside the brief, or into a folder there");
        return Optional.empty();
      }
      Path path = brief.reading().folder().resolve(relative);
      if (Files.isRegularFile(path)) {
        return Optional.of(path);
      }
      use.problem(
          "file",
          "there is no unit file " + path,
          "check the name; it is looked for from the brief");
    } catch (InvalidPathException odd) {
      use.problem("file", "`" + file + "` is no file name", "write one such as units/rack.yaml");
    }
    return Optional.empty();
  }

  private Optional<OwnUnit> unit(Section use, String id, String file, Item.Table tree) {
    Map<String, Sheet> roles = roles(use, tree);
    OwnFile design = new OwnFile(id, file, tree, with(use, tree), roles);
    Problems problems = new Problems();
    design.read(problems);
    boolean good = passOn(use, file, problems) && !roles.isEmpty();
    return good ? Optional.of(new OwnUnit(id, file, design)) : Optional.empty();
  }

  private static boolean passOn(Section use, String file, Problems problems) {
    if (problems.isEmpty()) {
      return true;
    }
    BriefProblem first = problems.inOrder().get(0);
    use.problem("file", words(file, first), first.remedy());
    return false;
  }

  private static String words(String file, BriefProblem problem) {
    return problem.place(file) + ": " + problem.what();
  }

  private Map<String, Sheet> roles(Section use, Item.Table tree) {
    Map<String, Sheet> roles = new LinkedHashMap<>();
    Map<String, Item.Member> chosen = members(use.item("sheets"));
    Optional<Item> named = Optional.ofNullable(tree.members().get("sheets")).map(m -> m.value());
    List<String> known =
        named.isPresent() ? List.copyOf(members(named).keySet()) : List.of(OwnFile.WOOD);
    for (String role : known) {
      String sheet = chosen.containsKey(role) ? text(chosen.get(role)) : sheets.standard();
      Optional<Sheet> found = sheets.find(sheet);
      if (found.isEmpty() && !use.reading().problems().hasBelow("stock")) {
        List<String> names = sheets.sheets().stream().map(Sheet::name).toList();
        use.problem(
            "sheets",
            "no sheet in stock is called `" + sheet + "`",
            "write " + Nearest.to(sheet, names).orElse(String.join(" or ", names)));
      }
      found.ifPresent(s -> roles.put(role, s));
    }
    unknown(use, "sheets", chosen, known, "sheet role");
    return roles;
  }

  private static Map<String, Double> with(Section use, Item.Table tree) {
    Map<String, Double> with = new LinkedHashMap<>();
    Map<String, Item.Member> chosen = members(use.item("with"));
    Map<String, Item.Member> known =
        members(Optional.ofNullable(tree.members().get("parameters")).map(m -> m.value()));
    unknown(use, "with", chosen, List.copyOf(known.keySet()), "parameter");
    chosen.forEach(
        (name, member) -> {
          if (known.get(name) != null) {
            boolean length =
                !text(((Item.Table) known.get(name).value()).members().get("kind"))
                    .equals("number");
            try {
              with.put(name, OwnAmounts.given(text(member), length, use.reading().units()));
            } catch (AmountFormatException refused) {
              use.problem("with", name + ": " + refused.what(), refused.remedy());
            } catch (NumberFormatException refused) {
              use.problem("with", name + " is no number", "write a number without a unit");
            }
          }
        });
    return with;
  }

  private static void unknown(
      Section use, String key, Map<String, Item.Member> chosen, List<String> known, String what) {
    for (String name : chosen.keySet()) {
      if (!known.contains(name)) {
        use.problem(
            key,
            "the unit has no " + what + " `" + name + "`",
            known.isEmpty()
                ? "remove it; there is nothing to choose"
                : "write " + Nearest.to(name, known).orElse("one of " + String.join(", ", known)));
      }
    }
  }

  private static Map<String, Item.Member> members(Optional<Item> item) {
    return item.filter(i -> i instanceof Item.Table)
        .map(i -> ((Item.Table) i).members())
        .orElse(Map.of());
  }

  private static String text(Item.Member member) {
    return member != null && member.value() instanceof Item.Scalar scalar ? scalar.text() : "";
  }
}
