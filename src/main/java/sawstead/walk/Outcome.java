package sawstead.walk;

import java.util.List;
import java.util.Objects;

/** What comes of an answer. */
public sealed interface Outcome {

  /**
   * It was taken.
   *
   * @param interview with the answer in it
   * @param remarks what is good to know about it, in sentences; often none
   */
  record Taken(Interview interview, List<String> remarks) implements Outcome {
    /** Copies the list. */
    public Taken {
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * It was not taken, and the question still stands.
   *
   * @param what what is wrong with it
   * @param remedy what to do
   */
  record Refused(String what, String remedy) implements Outcome {
    /** Refuses a refusal without words. */
    public Refused {
      Objects.requireNonNull(what, "what");
      Objects.requireNonNull(remedy, "remedy");
    }
  }
}
