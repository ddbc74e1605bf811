package sawstead.layout;

/**
 * Something in a request that cannot be.
 *
 * @param code short stable name of the rule
 * @param what what is wrong
 * @param where where it is written
 * @param remedy what to do
 */
public record Complaint(String code, String what, String where, String remedy) {}
