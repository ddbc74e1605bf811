/**
 * The house as a test: which rooms there are, who may see whom, and how classes are named and
 * closed.
 *
 * <p>Enters: compiled classes. Leaves: every place where one breaks a rule. The package {@code
 * flawed} below this one breaks each rule once, on purpose, to show that the rules bite. Knows
 * nothing of what the rooms do.
 */
package sawstead.house;
