package sawstead.export.stl;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Scanner;

/** Reads what {@link StlWriter} wrote, strictly: any departure from the format is an error. */
final class StlReader {
  /**
   * One facet, twelve numbers.
   *
   * @param numbers normal, then three corners
   */
  record Facet(List<Float> numbers) {
    Facet {
      numbers = List.copyOf(numbers);
    }

    double[] corner(int which) {
      int at = 3 + 3 * which;
      return new double[] {numbers.get(at), numbers.get(at + 1), numbers.get(at + 2)};
    }
  }

  private StlReader() {}

  static List<Facet> binary(byte[] file) {
    ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    int count = bytes.getInt(80);
    if (file.length != 84 + 50L * count) {
      throw new AssertionError(count + " facets in " + file.length + " bytes");
    }
    bytes.position(84);
    List<Facet> facets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Float> numbers = new ArrayList<>();
      for (int n = 0; n < 12; n++) {
        numbers.add(bytes.getFloat());
      }
      if (bytes.getShort() != 0) {
        throw new AssertionError("facet " + i + " has attributes");
      }
      facets.add(new Facet(numbers));
    }
    return facets;
  }

  static List<Facet> text(byte[] file) {
    Scanner words = new Scanner(new String(file, StandardCharsets.US_ASCII));
    expect(words, "solid");
    String name = words.next();
    List<Facet> facets = new ArrayList<>();
    while (words.hasNext("facet")) {
      List<Float> numbers = new ArrayList<>();
      expect(words, "facet", "normal");
      numbers(words, numbers);
      expect(words, "outer", "loop");
      for (int corner = 0; corner < 3; corner++) {
        expect(words, "vertex");
        numbers(words, numbers);
      }
      expect(words, "endloop", "endfacet");
      facets.add(new Facet(numbers));
    }
    expect(words, "endsolid", name);
    if (words.hasNext()) {
      throw new AssertionError("text after the end: " + words.next());
    }
    return facets;
  }

  /** Sum of a . (b x c) / 6 over the facets, mm3. */
  static double volume(List<Facet> facets) {
    double sum = 0;
    for (Facet facet : facets) {
      double[] a = facet.corner(0);
      double[] b = facet.corner(1);
      double[] c = facet.corner(2);
      sum +=
          a[0] * (b[1] * c[2] - b[2] * c[1])
              + a[1] * (b[2] * c[0] - b[0] * c[2])
              + a[2] * (b[0] * c[1] - b[1] * c[0]);
    }
    return sum / 6;
  }

  private static void numbers(Scanner words, List<Float> numbers) {
    for (int i = 0; i < 3; i++) {
      numbers.add(Float.parseFloat(words.next()));
    }
  }

  private static void expect(Scanner words, String... expected) {
    for (String word : expected) {
      String found = words.next();
      if (!found.equals(word)) {
        throw new AssertionError("expected " + word + ", found " + found);
      }
    }
  }
}
