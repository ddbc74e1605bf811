package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import sawstead.brief.OwnDesign;
import sawstead.brief.OwnParts;
import sawstead.brief.OwnUnitException;
import sawstead.brief.Sheet;
import sawstead.formula.Formula;
import sawstead.formula.FormulaException;
import sawstead.formula.Language;
import sawstead.measure.Unit;

/** A unit file as one brief uses it. Two are equal when they draw the same. */
final class OwnFile implements OwnDesign {

  /** The role of all panels of a unit that names none. */
  static final String WOOD = "wood";

  private static final String SHEET = "sheet";

  private final String id;
  private final String file;
  private final Item.Table tree;
  private final Map<String, Double> with;
  private final Map<String, Sheet> roles;

  /**
   * A use of a unit file.
   *
   * @param id of the unit in the brief
   * @param file its name, as messages tell it
   * @param tree its contents, good by the schema
   * @param with what the brief chose, in mm or plain numbers
   * @param roles sheets by role
   */
  OwnFile(
      String id, String file, Item.Table tree, Map<String, Double> with, Map<String, Sheet> roles) {
    this.id = id;
    this.file = file;
    this.tree = tree;
    this.with = Map.copyOf(with);
    this.roles = Map.copyOf(roles);
  }

  String id() {
    return id;
  }

  Item.Table tree() {
    return tree;
  }

  Map<String, Sheet> roles() {
    return roles;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OwnFile o
        && id.equals(o.id)
        && file.equals(o.file)
        && tree.equals(o.tree)
        && with.equals(o.with)
        && names(roles).equals(names(o.roles));
  }

  /** The sheets themselves are compared with the stock that they belong to. */
  private static Map<String, String> names(Map<String, Sheet> roles) {
    Map<String, String> names = new TreeMap<>();
    roles.forEach((role, sheet) -> names.put(role, sheet.name()));
    return names;
  }

  @Override
  public int hashCode() {
    return Objects.hash(id, file, tree, with, names(roles));
  }

  @Override
  public String toString() {
    return id + " by " + file;
  }

  @Override
  public OwnParts drawn(Map<String, Object> names) throws OwnUnitException {
    try {
      OwnAmounts amounts = new OwnAmounts(language());
      Map<String, Object> known = known(amounts, names);
      Problems problems = new Problems();
      Reading reading = new Reading(problems, Unit.MM);
      OwnParts parts = new OwnPartsMapper(this, reading, amounts, known).parts();
      if (!problems.isEmpty()) {
        BriefProblem first = problems.inOrder().get(0);
        throw new OwnUnitException(
            id + " (" + first.place(file) + "): " + first.what(), first.remedy());
      }
      return parts;
    } catch (OwnAmounts.Refused refused) {
      throw new OwnUnitException(
          id + " (" + file + ":" + refused.line() + "): " + refused.getMessage(), refused.remedy());
    }
  }

  /** Reads every formula once, so that a slip is told with the brief and not while drawing. */
  void read(Problems problems) {
    try {
      OwnAmounts amounts = new OwnAmounts(language());
      namesAreWords(problems);
      for (Entry entry : sums()) {
        amounts.amount(entry.item(), MeasureKind.LENGTH, entry.path(), OwnFile::unknownYet);
        onlyAbove(entry);
      }
      for (String list : List.of("panels", "bodies", "motions", "joints", "demands")) {
        JsonNode schema = UnitSchema.items(list);
        int number = 0;
        for (Item item : list(list)) {
          String path = list + "[" + number++ + "]";
          amounts.settled(item, schema, path, OwnFile::unknownYet);
          for (String condition : List.of("when", "that")) {
            Item.Member member = ((Item.Table) item).members().get(condition);
            if (member != null) {
              amounts.read(member.value(), path + "." + condition);
            }
          }
        }
      }
    } catch (OwnAmounts.Refused refused) {
      problems.add(refused.line(), "", refused.getMessage(), refused.remedy());
    }
  }

  private static double unknownYet(Formula formula) {
    return 1;
  }

  private void namesAreWords(Problems problems) {
    for (String section : List.of("parameters", "values", "sheets")) {
      for (Map.Entry<String, Item.Member> member : table(section).entrySet()) {
        String name = member.getKey();
        boolean taken = GROUPS.contains(name) || name.equals(SHEET);
        boolean twice = section.equals("values") && table("parameters").containsKey(name);
        if (taken || twice || !Language.canName(name)) {
          problems.add(
              member.getValue().keyLine(),
              section + "." + name,
              "`" + name + "` " + (twice ? "is a parameter already" : "cannot be a name"),
              "choose another word of letters and digits");
        }
      }
    }
  }

  /** A value or a parameter, with the names that may be used in it. */
  private record Entry(String name, String path, Item item, Set<String> above) {}

  /** Parameters and values in the order in which they are worked out. */
  private List<Entry> sums() {
    List<Entry> entries = new ArrayList<>();
    Set<String> above = new TreeSet<>();
    table("parameters")
        .forEach(
            (name, member) -> {
              Map<String, Item.Member> keys = ((Item.Table) member.value()).members();
              for (String key : List.of("default", "from", "to")) {
                if (keys.containsKey(key)) {
                  String path = "parameters." + name + "." + key;
                  entries.add(new Entry(name, path, keys.get(key).value(), Set.copyOf(above)));
                }
              }
              above.add(name);
            });
    table("values")
        .forEach(
            (name, member) -> {
              entries.add(new Entry(name, "values." + name, member.value(), Set.copyOf(above)));
              above.add(name);
            });
    return entries;
  }

  private void onlyAbove(Entry entry) throws OwnAmounts.Refused {
    if (!(entry.item() instanceof Item.Scalar scalar) || scalar.type() == Item.Kind.NUMBER) {
      return;
    }
    Set<String> later = new TreeSet<>(numbers());
    later.removeAll(entry.above());
    try {
      later.retainAll(language().formula(scalar.text()).uses());
    } catch (FormulaException length) {
      return;
    }
    if (!later.isEmpty()) {
      throw new OwnAmounts.Refused(
          scalar.line(),
          entry.path(),
          "`" + later.iterator().next() + "` is not known yet here",
          "write it further up; each value may use those above it");
    }
  }

  private Map<String, Object> known(OwnAmounts amounts, Map<String, Object> names)
      throws OwnAmounts.Refused {
    Map<String, Object> known = new LinkedHashMap<>();
    GROUPS.forEach(g -> known.put(g, names.getOrDefault(g, Map.of())));
    Map<String, Object> sheets = new LinkedHashMap<>();
    roles.forEach((role, sheet) -> sheets.put(role, dimensions(sheet)));
    known.put(SHEET, sheets);
    OwnAmounts.Sum sum = formula -> formula.number(known);
    for (Map.Entry<String, Item.Member> one : table("parameters").entrySet()) {
      known.put(one.getKey(), parameter(amounts, one.getKey(), one.getValue(), sum));
    }
    for (Map.Entry<String, Item.Member> one : table("values").entrySet()) {
      String path = "values." + one.getKey();
      known.put(
          one.getKey(), amounts.amount(one.getValue().value(), MeasureKind.LENGTH, path, sum));
    }
    return known;
  }

  private double parameter(OwnAmounts amounts, String name, Item.Member member, OwnAmounts.Sum sum)
      throws OwnAmounts.Refused {
    Map<String, Item.Member> keys = ((Item.Table) member.value()).members();
    String path = "parameters." + name;
    double value =
        with.containsKey(name)
            ? with.get(name)
            : amounts.amount(
                keys.get("default").value(), MeasureKind.LENGTH, path + ".default", sum);
    if (keys.containsKey("from")) {
      double from = amounts.amount(keys.get("from").value(), MeasureKind.LENGTH, path, sum);
      demand(value >= from, member, path, value, "at least ", from);
    }
    if (keys.containsKey("to")) {
      double to = amounts.amount(keys.get("to").value(), MeasureKind.LENGTH, path, sum);
      demand(value <= to, member, path, value, "at most ", to);
    }
    return value;
  }

  private static void demand(
      boolean good, Item.Member member, String path, double value, String side, double limit)
      throws OwnAmounts.Refused {
    if (!good) {
      Reading plain = new Reading(new Problems(), Unit.MM);
      throw new OwnAmounts.Refused(
          member.keyLine(),
          path,
          "it is " + plain.inWords(value) + ", but must be " + side + plain.inWords(limit),
          "change it under `with` in the brief");
    }
  }

  private static Map<String, Object> dimensions(Sheet sheet) {
    return Map.of(
        "thickness", sheet.thickness().nominal(),
        "length", sheet.length().nominal(),
        "width", sheet.width().nominal());
  }

  /** The role of panels that name none. */
  String firstRole() {
    return table("sheets").keySet().stream().findFirst().orElse(WOOD);
  }

  /** Names that stand for numbers. */
  private Set<String> numbers() {
    Set<String> numbers = new TreeSet<>(table("parameters").keySet());
    numbers.addAll(table("values").keySet());
    numbers.removeIf(n -> !Language.canName(n) || GROUPS.contains(n) || n.equals(SHEET));
    return numbers;
  }

  private Language language() {
    Set<String> groups = new TreeSet<>(GROUPS);
    groups.add(SHEET);
    return Language.of(numbers(), groups);
  }

  private Map<String, Item.Member> table(String section) {
    Item.Member member = tree.members().get(section);
    return member != null && member.value() instanceof Item.Table t ? t.members() : Map.of();
  }

  /** The entries of a list of the file. */
  List<Item> list(String section) {
    Item.Member member = tree.members().get(section);
    return member != null && member.value() instanceof Item.Listing l ? l.items() : List.of();
  }
}
