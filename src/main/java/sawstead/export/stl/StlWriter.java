package sawstead.export.stl;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import sawstead.solid.Body;
import sawstead.solid.Mesh;

/**
 * Writes solids as STL, in mm.
 *
 * <p>What happens in odd cases: corners closer than single precision can tell become one; a facet
 * that then has two equal corners is left out; a facet whose corners lie on a line is kept, with a
 * normal of zeros; minus zero is written as zero; a coordinate beyond single precision is refused
 * with an {@link sawstead.export.ExportException}; a name's characters outside printable ASCII
 * become {@code _}, and it is cut at {@value #NAME_LENGTH} characters. No list of bodies, or one
 * whose facets all vanish, gives a valid file without facets.
 *
 * <p>Streams are flushed, not closed.
 */
public final class StlWriter {
  private static final int HEADER_BYTES = 80;
  private static final int FACET_BYTES = 50;
  private static final int NAME_LENGTH = 50;

  // A binary file must not begin with "solid", the first word of the text form.
  private static final String MAKER = "Sawstead, mm: ";

  private final StlForm form;

  private StlWriter(StlForm form) {
    this.form = form;
  }

  /** A writer of one form. */
  public static StlWriter of(StlForm form) {
    return new StlWriter(form);
  }

  /** Writes one mesh in the frame it has. */
  public void write(String name, Mesh mesh, OutputStream out) throws IOException {
    write(name, List.of(StlFacets.of(mesh)), out);
  }

  /**
   * Writes bodies at their places in the station's frame, as separate shells one after the other.
   * Where two bodies touch, the file as a whole is not one closed surface; each shell is.
   */
  public void writeAssembled(String name, List<Body> bodies, OutputStream out) throws IOException {
    write(name, bodies.stream().map(body -> StlFacets.of(body.mesh())).toList(), out);
  }

  private void write(String name, List<StlFacets> shells, OutputStream out) throws IOException {
    if (form == StlForm.BINARY) {
      writeBinary(plain(name), shells, out);
    } else {
      writeText(plain(name), shells, out);
    }
    out.flush();
  }

  private static void writeBinary(String name, List<StlFacets> shells, OutputStream out)
      throws IOException {
    byte[] header = (MAKER + name).getBytes(StandardCharsets.US_ASCII);
    int count = shells.stream().mapToInt(StlFacets::count).reduce(0, Math::addExact);
    out.write(
        ByteBuffer.allocate(HEADER_BYTES + Integer.BYTES)
            .order(ByteOrder.LITTLE_ENDIAN)
            .put(header)
            .putInt(HEADER_BYTES, count)
            .array());
    ByteBuffer facet = ByteBuffer.allocate(FACET_BYTES).order(ByteOrder.LITTLE_ENDIAN);
    for (StlFacets shell : shells) {
      for (int i = 0; i < shell.count(); i++) {
        facet.clear();
        for (int which = 0; which < StlFacets.PER_FACET; which++) {
          facet.putFloat(shell.number(i, which));
        }
        // The last two bytes, an attribute count, stay zero.
        out.write(facet.array());
      }
    }
  }

  private static void writeText(String name, List<StlFacets> shells, OutputStream out)
      throws IOException {
    out.write(("solid " + name + "\n").getBytes(StandardCharsets.US_ASCII));
    for (StlFacets shell : shells) {
      for (int i = 0; i < shell.count(); i++) {
        String facet =
            "  facet normal "
                + triple(shell, i, 0)
                + "\n    outer loop\n      vertex "
                + triple(shell, i, 3)
                + "\n      vertex "
                + triple(shell, i, 6)
                + "\n      vertex "
                + triple(shell, i, 9)
                + "\n    endloop\n  endfacet\n";
        out.write(facet.getBytes(StandardCharsets.US_ASCII));
      }
    }
    out.write(("endsolid " + name + "\n").getBytes(StandardCharsets.US_ASCII));
  }

  /** Three numbers with as many digits as single precision needs to be read back the same. */
  private static String triple(StlFacets shell, int facet, int from) {
    return shell.number(facet, from)
        + " "
        + shell.number(facet, from + 1)
        + " "
        + shell.number(facet, from + 2);
  }

  private static String plain(String name) {
    String ascii = name.replaceAll("[^\\x21-\\x7e]", "_");
    return ascii.substring(0, Math.min(ascii.length(), NAME_LENGTH));
  }
}
