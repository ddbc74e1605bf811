package sawstead.layout.shop;

/**
 * Something to buy or to take from the shelf.
 *
 * @param item what it is, with its size
 * @param needed how many the station takes
 * @param take how many to have at hand, spares included
 * @param note where they go, or what to look for
 */
public record HardwareLine(String item, int needed, int take, String note) {}
