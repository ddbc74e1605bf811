package sawstead.drawing.dxf;

/**
 * A layer of a drawing.
 *
 * @param name in capitals where the version knows no others
 * @param colour index of the format's palette, 1 to 255
 * @param lineWeight hundredths of a millimetre
 */
public record Layer(String name, int colour, int lineWeight) {}
