package sawstead.drawing.dxf;

import java.nio.charset.CharsetEncoder;

/** Words as a DXF file may hold them in one line (REF-FIL-08). */
final class DxfText {
  private static final int LONGEST = 200;

  private DxfText() {}

  /**
   * Words for a text entity.
   *
   * <p>Control characters become spaces. A caret is followed by a space and doubled percent signs
   * are parted, for both begin codes. What the version's character set lacks becomes {@code
   * \U+nnnn}, and so does a backslash that would seem to begin such a code; characters beyond four
   * digits become U+FFFD. More than {@value #LONGEST} characters are cut.
   */
  static String of(String words, DxfVersion version) {
    CharsetEncoder encoder = version.charset().newEncoder();
    StringBuilder text = new StringBuilder();
    int[] points = words.codePoints().limit(LONGEST).toArray();
    for (int i = 0; i < points.length; i++) {
      int point = points[i];
      boolean before = i > 0 && points[i - 1] == point;
      if (Character.isISOControl(point)) {
        text.append(' ');
      } else if (point == '^') {
        text.append("^ ");
      } else if (point == '%' && before) {
        text.append(" %");
      } else if (point == '\\' && i + 1 < points.length && points[i + 1] == 'U') {
        text.append(code(point));
      } else if (encoder.canEncode(Character.toString(point))) {
        text.appendCodePoint(point);
      } else {
        text.append(code(point));
      }
    }
    return text.toString();
  }

  private static String code(int point) {
    return "\\U+%04X".formatted(Character.isBmpCodePoint(point) ? point : 0xFFFD);
  }
}
