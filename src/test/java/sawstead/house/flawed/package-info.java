/** A house that breaks each rule once, on purpose. Nothing in it does anything. */
package sawstead.house.flawed;
