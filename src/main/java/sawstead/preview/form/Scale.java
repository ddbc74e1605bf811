package sawstead.preview.form;

/** What kind of number a value is, and so how a slider runs over it. */
enum Scale {
  /** No number: a word, a name. */
  NONE,
  /** A length, which can be stepped along a rule. */
  LENGTH,
  /** A mass, an angle, a density: a number with or without a unit. */
  AMOUNT,
  /** How many. */
  COUNT
}
