package sawstead.formula;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.CelFunctionDecl;
import dev.cel.common.CelMutableAst;
import dev.cel.common.CelOptions;
import dev.cel.common.CelOverloadDecl;
import dev.cel.common.CelValidationException;
import dev.cel.common.ast.CelConstant;
import dev.cel.common.ast.CelExpr.ExprKind.Kind;
import dev.cel.common.ast.CelMutableExpr;
import dev.cel.common.navigation.CelNavigableMutableAst;
import dev.cel.common.types.CelType;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerBuilder;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelFunctionBinding;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * The names that formulas may use, and a reader for such formulas. CEL without its macros, so
 * nothing repeats: the cost of a formula grows with its length only. Besides CEL's own operators
 * there are {@code min}, {@code max}, {@code floor}, {@code ceil}, {@code round}, {@code abs},
 * {@code sqrt} and, in degrees, {@code sin}, {@code cos}, {@code tan}, {@code atan}; {@code inch}
 * is 25.4.
 */
public final class Language {

  /** Longest formula, characters. */
  public static final int LONGEST = 500;

  /** Words that cannot be names: those that CEL reserves, and functions. */
  private static final Set<String> TAKEN =
      Set.of(
          "as",
          "break",
          "const",
          "continue",
          "else",
          "false",
          "for",
          "function",
          "if",
          "import",
          "in",
          "let",
          "loop",
          "package",
          "namespace",
          "null",
          "return",
          "true",
          "var",
          "void",
          "while",
          "inch",
          "min",
          "max",
          "floor",
          "ceil",
          "round",
          "abs",
          "sqrt",
          "sin",
          "cos",
          "tan",
          "atan",
          "size",
          "int",
          "double",
          "string",
          "bool",
          "bytes",
          "list",
          "map",
          "type",
          "dyn",
          "uint",
          "duration",
          "timestamp");

  private static final double INCH = 25.4;

  private static final CelOptions OPTIONS =
      CelOptions.current()
          .maxExpressionCodePointSize(LONGEST)
          .maxParseRecursionDepth(50)
          .maxParseErrorRecoveryLimit(1)
          .build();

  private static final CelRuntime RUNTIME = runtime();

  /** Languages and formulas are kept, since a brief is read again while a slider is dragged. */
  private static final int MOST_KEPT = 2000;

  private static final Map<List<Set<String>>, Language> KEPT = new ConcurrentHashMap<>();

  private final Set<String> names;
  private final CelCompiler compiler;
  private final Map<String, Formula> formulas = new ConcurrentHashMap<>();

  /**
   * The language with these names.
   *
   * @param numbers names that stand for numbers
   * @param groups names that stand for maps from names to numbers, words or further maps
   * @throws IllegalArgumentException if a name is a word of the language itself
   */
  public static Language of(Set<String> numbers, Set<String> groups) {
    if (KEPT.size() > MOST_KEPT) {
      KEPT.clear();
    }
    return KEPT.computeIfAbsent(
        List.of(Set.copyOf(numbers), Set.copyOf(groups)), k -> new Language(numbers, groups));
  }

  private Language(Set<String> numbers, Set<String> groups) {
    names = new TreeSet<>(numbers);
    names.addAll(groups);
    if (!Collections.disjoint(names, TAKEN)) {
      throw new IllegalArgumentException("a word of the language is no name: " + names);
    }
    CelCompilerBuilder builder =
        CelCompilerFactory.standardCelCompilerBuilder().setOptions(OPTIONS).setStandardMacros();
    numbers.forEach(n -> builder.addVar(n, SimpleType.DOUBLE));
    groups.forEach(n -> builder.addVar(n, SimpleType.DYN));
    functions().forEach(f -> builder.addFunctionDeclarations(f.declaration()));
    compiler = builder.build();
  }

  /** Whether this word may be the name of a number. */
  public static boolean canName(String word) {
    return word.matches("[a-z][A-Za-z0-9]*") && !TAKEN.contains(word);
  }

  /**
   * Reads a formula.
   *
   * @throws FormulaException if it is none, or uses a name that this language does not have
   */
  public Formula formula(String text) throws FormulaException {
    Formula known = formulas.get(text);
    if (known != null) {
      return known;
    }
    if (formulas.size() > MOST_KEPT) {
      formulas.clear();
    }
    Formula read = read(text);
    formulas.put(text, read);
    return read;
  }

  private Formula read(String text) throws FormulaException {
    if (text.length() > LONGEST) {
      throw new FormulaException(
          "a formula of " + text.length() + " characters is too long",
          "split it: write parts of it under `values`");
    }
    try {
      CelMutableAst tree = CelMutableAst.fromCelAst(compiler.parse(text).getAst());
      Set<String> uses = new TreeSet<>();
      CelNavigableMutableAst.fromAst(tree)
          .getRoot()
          .allNodes()
          .forEach(node -> settle(node.expr(), uses));
      CelAbstractSyntaxTree checked = compiler.check(tree.toParsedAst()).getAst();
      return new Formula(text, uses, RUNTIME.createProgram(checked));
    } catch (CelValidationException broken) {
      throw FormulaWords.of(text, broken, names);
    } catch (CelEvaluationException broken) {
      throw FormulaWords.of(text, broken);
    }
  }

  /** Makes whole numbers decimals, since CEL never mixes the two, and notes names. */
  private static void settle(CelMutableExpr node, Set<String> uses) {
    if (node.getKind() == Kind.CONSTANT
        && node.constant().getKind() == CelConstant.Kind.INT64_VALUE) {
      node.setConstant(CelConstant.ofValue((double) node.constant().int64Value()));
    } else if (node.getKind() == Kind.IDENT && node.ident().name().equals("inch")) {
      node.setConstant(CelConstant.ofValue(INCH));
    } else if (node.getKind() == Kind.IDENT) {
      uses.add(node.ident().name());
    }
  }

  /** A function, declared and bound. */
  private record Bound(CelFunctionDecl declaration, CelFunctionBinding binding) {

    static Bound of(String name, DoubleUnaryOperator does) {
      String id = name + "_of_1";
      return new Bound(
          declared(name, id, 1),
          CelFunctionBinding.from(id, Double.class, x -> does.applyAsDouble(x)));
    }

    static Bound of(String name, DoubleBinaryOperator does, int count) {
      String id = name + "_of_" + count;
      return new Bound(
          declared(name, id, count),
          CelFunctionBinding.from(
              id,
              Collections.nCopies(count, Double.class).stream().<Class<?>>map(c -> c).toList(),
              all -> {
                double value = (Double) all[0];
                for (int i = 1; i < all.length; i++) {
                  value = does.applyAsDouble(value, (Double) all[i]);
                }
                return value;
              }));
    }

    private static CelFunctionDecl declared(String name, String id, int count) {
      List<CelType> takes = Collections.nCopies(count, SimpleType.DOUBLE);
      return CelFunctionDecl.newFunctionDeclaration(
          name, CelOverloadDecl.newGlobalOverload(id, SimpleType.DOUBLE, takes));
    }
  }

  private static List<Bound> functions() {
    List<Bound> all = new ArrayList<>();
    for (int count = 2; count <= 4; count++) {
      all.add(Bound.of("min", Math::min, count));
      all.add(Bound.of("max", Math::max, count));
    }
    all.add(Bound.of("floor", Math::floor));
    all.add(Bound.of("ceil", Math::ceil));
    all.add(Bound.of("round", Math::rint));
    all.add(Bound.of("abs", Math::abs));
    all.add(Bound.of("sqrt", Math::sqrt));
    all.add(Bound.of("sin", x -> Math.sin(Math.toRadians(x))));
    all.add(Bound.of("cos", x -> Math.cos(Math.toRadians(x))));
    all.add(Bound.of("tan", x -> Math.tan(Math.toRadians(x))));
    all.add(Bound.of("atan", x -> Math.toDegrees(Math.atan(x))));
    return all;
  }

  private static CelRuntime runtime() {
    var builder = CelRuntimeFactory.standardCelRuntimeBuilder().setOptions(OPTIONS);
    functions().forEach(f -> builder.addFunctionBindings(f.binding()));
    return builder.build();
  }
}
