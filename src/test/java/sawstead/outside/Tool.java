package sawstead.outside;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One outside program and how to tell whether it is there.
 *
 * @param name what a message calls it
 * @param programs names or paths to try, in this order
 * @param trial arguments with which a program that serves us ends with code 0
 * @param remedy a sentence that says how to install it
 */
record Tool(String name, List<String> programs, List<String> trial, String remedy) {
  private static final Duration TRIAL_LIMIT = Duration.ofSeconds(60);

  Tool {
    programs = List.copyOf(programs);
    trial = List.copyOf(trial);
  }

  /** The first program that passes the trial; empty when none does. */
  Optional<String> program() {
    return programs.stream().filter(this::serves).findFirst();
  }

  private boolean serves(String program) {
    List<String> command = new ArrayList<>();
    command.add(program);
    command.addAll(trial);
    try {
      return OutsideTool.end(command, TRIAL_LIMIT).code() == 0;
    } catch (java.io.UncheckedIOException e) {
      // The system found no such program.
      return false;
    }
  }
}
