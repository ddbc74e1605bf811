package sawstead.check;

/**
 * One question that is asked of every station. A check looks at nothing but the solids that will be
 * cut, the space that things take up, and the measurements that they came from; it does not know
 * how a part was designed.
 *
 * <p>To add a check: one class that implements this, one line in {@link Checks}. Each says in its
 * Javadoc which rules it may report and which way it may err.
 */
interface Check {
  /** Judges a station; the same scene gives the same outcome. */
  Outcome judge(Scene scene);
}
