package sawstead.layout.packing;

import java.util.Optional;

/**
 * Packings that trade waste for labour.
 *
 * @param leftoverFirst fewest sheets, lowest price, then a large leftover in one piece, then little
 *     labour
 * @param labourFirst as few sheets at as low a price, then little labour, whatever the leftovers
 * @param oneMore one sheet more than that, then little labour; empty when it was no less, or when
 *     there is no further sheet
 */
public record Choices(Packing leftoverFirst, Packing labourFirst, Optional<Packing> oneMore) {}
