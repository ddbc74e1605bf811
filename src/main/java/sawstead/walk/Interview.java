package sawstead.walk;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import sawstead.intake.BriefProblem;
import sawstead.intake.BriefSchema;
import sawstead.walk.Question.Kind;

/**
 * An interview as it stands: a value. The same answers lead to the same next question and the same
 * brief.
 */
public final class Interview {
  private static final String TYPICAL = ", which is typical";
  private static final String POSSIBLE = ", which goes with what you said before";

  /** In so many steps the range of a length is tried where nothing typical fits. */
  private static final int RANGE_STEPS = 16;

  private static final double HALF = 0.5;

  private final Answers answers;
  private final Route route;

  private Interview(Answers answers) {
    this.answers = answers;
    this.route = Route.of(answers);
  }

  /** Nothing is answered yet. */
  public static Interview begin() {
    return new Interview(new Answers(List.of()));
  }

  /**
   * Goes on with answers that were given before. What no longer belongs to a question, as when the
   * program has changed since, is left out.
   */
  public static Interview resume(Collection<Answer> before) {
    Answers all = new Answers(before);
    Route route = Route.of(all);
    boolean fits =
        before.stream()
            .allMatch(a -> route.nodes().stream().anyMatch(n -> n.path().equals(a.path())));
    return fits && FaultReader.fault(all).isEmpty() ? new Interview(all) : sifted(before);
  }

  private static Interview sifted(Collection<Answer> before) {
    Interview interview = begin();
    for (Answer answer : before) {
      boolean known = interview.open().anyMatch(n -> n.path().equals(answer.path()));
      Answers more = interview.answers.with(answer);
      if (known && FaultReader.fault(more).isEmpty()) {
        interview = new Interview(more);
      }
    }
    return interview;
  }

  /** The answers so far, in the order in which they were given. */
  public List<Answer> answers() {
    return answers.all();
  }

  /** What is to be asked now; empty when everything is answered. */
  public Optional<Question> next() {
    return open().findFirst().map(route::question);
  }

  /** How many questions are still open, as things stand. */
  public int left() {
    return (int) open().count();
  }

  private Stream<Node> open() {
    return route.nodes().stream().filter(n -> !answers.has(n.path()));
  }

  /** Without the last answer. */
  public Interview back() {
    return new Interview(answers.shorter());
  }

  /** The brief; complete and readable once there is no next question. */
  public String brief() {
    return BriefText.of(answers);
  }

  /**
   * Answers the next question.
   *
   * @param text as a person gives it; nothing agrees with what is offered
   * @throws IllegalStateException if there is no next question
   */
  public Outcome answer(String text) {
    Node node = open().findFirst().orElseThrow(() -> new IllegalStateException("all is answered"));
    Question question = route.question(node);
    String said = text.strip();
    if (said.isEmpty()) {
      return question.hasOffer()
          ? agreed(node, question)
          : new Outcome.Refused(
              question.title() + " cannot be guessed from anything else",
              "measure it, for example " + question.example() + ", or answer unknown");
    }
    if (said.equalsIgnoreCase(Answer.UNKNOWN)) {
      return unknown(node, question);
    }
    return given(node, question, said);
  }

  private Outcome agreed(Node node, Question question) {
    boolean written = question.kind() == Kind.CHOICE || question.kind() == Kind.TEXT;
    if (question.kind() == Kind.GATE) {
      return gate(node, Answer.TYPICAL);
    }
    if (question.kind() == Kind.COUNT) {
      String count = new StandIn(answers).written(node, 1).orElse("");
      return taken(new Answer(node.path(), Answer.TYPICAL, count), List.of())
          .or(() -> taken(new Answer(node.path(), Answer.TYPICAL, ""), List.of()))
          .orElseGet(() -> without(node, question));
    }
    if (written && node.mustBeWritten()) {
      return standIn(node, question, Answer.TYPICAL);
    }
    return settled(new Answer(node.path(), Answer.TYPICAL, ""), List.of());
  }

  private Outcome unknown(Node node, Question question) {
    if (node.required() && node.isMeasure() && isPartOfWhatIsBetterLeftOut(node)) {
      return without(node, question);
    }
    return switch (question.kind()) {
      case GATE -> gate(node, Answer.UNKNOWN);
      case COUNT -> agreed(node, question);
      case ROW -> withoutRows(node);
      default ->
          node.mustBeWritten()
              ? standIn(node, question, Answer.UNKNOWN)
              : taken(unknown(node, Answer.UNKNOWN), wide(node))
                  .or(
                      () ->
                          taken(
                              unknown(node, ""),
                              List.of("then it is taken as: " + question.offer())))
                  .orElseGet(() -> without(node, question));
    };
  }

  private boolean isPartOfWhatIsBetterLeftOut(Node node) {
    String around = Node.around(node.path());
    return BriefSchema.at(around).path("x-walk-unknown").asText().equals("without");
  }

  /**
   * Where nothing can stand in for a value, what it is part of is left out: the nearest thing
   * around it that the brief can do without. Where that does not help, it is what the fault lies in
   * instead, and the value is asked again.
   */
  private Outcome without(Node node, Question question) {
    StandIn standIn = new StandIn(answers);
    Stream<String> faults =
        Stream.of(standIn.written(node, 1), standIn.between(node, HALF))
            .flatMap(Optional::stream)
            .map(written -> answers.with(new Answer(node.path(), Answer.UNKNOWN, written)))
            .flatMap(tried -> FaultReader.fault(tried).stream())
            .map(BriefProblem::path);
    return without(node.path(), "nothing can stand in for " + question.title())
        .or(
            () ->
                faults
                    .flatMap(at -> without(at, "it does not go with what you said since").stream())
                    .findFirst())
        .or(() -> againAround(node))
        .orElseGet(() -> nothingStandsIn(question));
  }

  /** Asks all of a section again, if what was measured in it leaves no room for a value. */
  private Optional<Outcome> againAround(Node node) {
    String section = Node.around(node.path());
    boolean measured =
        answers.all().stream()
            .anyMatch(a -> Node.around(a.path()).equals(section) && !a.isStandIn());
    if (section.isEmpty() || answers.has(section) || !measured) {
      return Optional.empty();
    }
    String title = BriefSchema.at(section).path("title").asText(section);
    return Optional.of(
        new Outcome.Taken(
            new Interview(answers.without(section)),
            List.of("what was said of the " + title + " does not go together; again, please")));
  }

  /** Without the nearest thing around a place that can be left out; empty if there is none. */
  private Optional<Outcome> without(String place, String why) {
    for (String path = Node.around(place); !path.isEmpty(); path = Node.around(path)) {
      String at = path;
      Optional<Node> around =
          route.nodes().stream()
              .filter(n -> n.path().equals(at) && !n.required() && answers.has(at))
              .findFirst();
      if (around.isPresent()) {
        boolean word = around.get().words().contains(Answer.UNKNOWN);
        Answer none = unknown(around.get(), word ? Answer.UNKNOWN : "");
        Answers fewer = answers.without(at).with(none);
        boolean less = !answers.written(at).equals(none.written());
        if (less && FaultReader.fault(fewer).isEmpty()) {
          return Optional.of(
              new Outcome.Taken(
                  new Interview(fewer),
                  List.of("then " + around.get().title() + " is left out: " + why)));
        }
      }
    }
    return Optional.empty();
  }

  private static Answer unknown(Node node, String written) {
    return new Answer(node.path(), Answer.UNKNOWN, written);
  }

  private static List<String> wide(Node node) {
    return List.of(
        "then it is taken as usual, with a wide band; what depends on "
            + node.title()
            + " is less certain by that");
  }

  /** Whether a thing is there: yes, the word that the brief has for it, or nothing. */
  private Outcome gate(Node node, String said) {
    String typical = new StandIn(answers).written(node, 1).orElse("");
    boolean word = node.words().contains(Answer.UNKNOWN);
    String written = word ? Answer.UNKNOWN : typical;
    List<String> remarks =
        written.equals(Route.YES)
            ? List.of("then one is reckoned with; each of its sizes may be unknown, too")
            : List.of();
    return settled(new Answer(node.path(), said, written), remarks);
  }

  /** A place that nobody knows makes the whole list unknown. */
  private Outcome withoutRows(Node node) {
    String list = node.path().substring(0, node.path().lastIndexOf('['));
    Answers fewer = answers.without(list);
    return new Outcome.Taken(
        new Interview(fewer.with(new Answer(list, Answer.UNKNOWN, ""))),
        List.of("then all of them are taken as usual, with a wide band"));
  }

  private Outcome standIn(Node node, Question question, String said) {
    StandIn standIn = new StandIn(answers);
    for (double scale : StandIn.SCALES) {
      Optional<Outcome> taken =
          standIn.written(node, scale).flatMap(w -> standIn(node, question, said, w, TYPICAL));
      if (taken.isPresent()) {
        return taken.get();
      }
    }
    for (int k = 1; k < RANGE_STEPS; k++) {
      Optional<Outcome> taken =
          standIn
              .between(node, (double) k / RANGE_STEPS)
              .flatMap(w -> standIn(node, question, said, w, POSSIBLE));
      if (taken.isPresent()) {
        return taken.get();
      }
    }
    return without(node, question);
  }

  private Optional<Outcome> standIn(
      Node node, Question question, String said, String written, String why) {
    List<String> remarks =
        question.kind() == Kind.MEASURE
            ? List.of("then it is taken as " + written + why + "; measure it before you cut")
            : List.of();
    return taken(new Answer(node.path(), said, written), remarks);
  }

  private static Outcome nothingStandsIn(Question question) {
    return new Outcome.Refused(
        "nothing that is typical goes with what was answered before",
        "measure it, for example " + question.example() + ", or go back");
  }

  private Outcome given(Node node, Question question, String said) {
    String word = said.toLowerCase(Locale.ROOT);
    switch (question.kind()) {
      case GATE, CHOICE -> {
        List<String> near = question.choices().stream().filter(c -> c.startsWith(word)).toList();
        String chosen =
            question.choices().contains(word) ? word : near.size() == 1 ? near.get(0) : "";
        if (chosen.isEmpty()) {
          return new Outcome.Refused(
              "`" + said + "` is none of the choices",
              "answer " + String.join(", ", question.choices()) + " or unknown");
        }
        boolean absent = question.kind() == Kind.GATE && chosen.equals(Route.NO);
        return settled(new Answer(node.path(), chosen, absent ? "" : chosen), List.of());
      }
      case COUNT -> {
        int most = node.schema().path("maxItems").asInt(20);
        int least = node.schema().path("minItems").asInt();
        String number =
            word.equals(Route.NONE) || word.equals(Route.NO)
                ? "0"
                : word.equals(Route.YES) ? "1" : word;
        if (!number.matches("[0-9]{1,2}")
            || Integer.parseInt(number) > most
            || Integer.parseInt(number) < least) {
          return new Outcome.Refused(
              "`" + said + "` is no number from " + least + " to " + most,
              "say how many there are, or answer unknown");
        }
        return settled(new Answer(node.path(), number, number), List.of());
      }
      case ROW -> {
        int size = node.schema().path("minItems").asInt();
        if (said.split(",").length != size) {
          return new Outcome.Refused(
              "these are not " + size + " lengths parted by commas",
              "write them like " + question.example());
        }
        return settled(new Answer(node.path(), said, said), List.of());
      }
      default -> {
        return settled(new Answer(node.path(), said, said), Usual.remarks(node, said, answers));
      }
    }
  }

  private Outcome settled(Answer answer, List<String> remarks) {
    Answers more = answers.with(answer);
    Optional<BriefProblem> fault = FaultReader.fault(more);
    return fault
        .<Outcome>map(p -> new Outcome.Refused(p.what(), p.remedy()))
        .orElseGet(() -> new Outcome.Taken(new Interview(more), remarks));
  }

  private Optional<Outcome> taken(Answer answer, List<String> remarks) {
    return settled(answer, remarks) instanceof Outcome.Taken taken
        ? Optional.of(taken)
        : Optional.empty();
  }
}
