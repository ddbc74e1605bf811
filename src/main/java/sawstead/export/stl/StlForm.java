package sawstead.export.stl;

/** The two ways to write STL. */
public enum StlForm {
  /** 84 bytes and 50 a facet; what everybody reads. */
  BINARY,
  /** Text, about five times as long; for eyes and line-by-line tools. */
  TEXT
}
