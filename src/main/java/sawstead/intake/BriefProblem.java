package sawstead.intake;

import java.util.Objects;

/**
 * One thing that is wrong in a brief.
 *
 * @param line line of the file, counted from 1; 0 if the problem is with the file as a whole
 * @param path where in the brief, for example {@code station.legs.length}; empty for the whole
 * @param what what is wrong, a sentence without a full stop
 * @param remedy what to do about it
 */
public record BriefProblem(int line, String path, String what, String remedy) {

  /** Refuses a problem without words. */
  public BriefProblem {
    Objects.requireNonNull(path, "path");
    if (what.isBlank() || remedy.isBlank() || line < 0) {
      throw new IllegalArgumentException("a problem says what is wrong and what to do");
    }
  }

  /** The place as a compiler writes it: {@code models/x.yaml:14, station.legs.length}. */
  public String place(String file) {
    return file + (line > 0 ? ":" + line : "") + (path.isEmpty() ? "" : ", " + path);
  }
}
