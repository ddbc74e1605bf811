/**
 * Programs from outside the project that judge what Sawstead computes and writes.
 *
 * <p>Enters: a file or a mesh that Sawstead made. Leaves: what an independent program read in it.
 * Guaranteed: a tool that is missing never makes a test pass silently. The test is shown as skipped
 * and says which package to install; with {@code -Dsawstead.toolsRequired=true}, as {@code .ci/run}
 * sets it, the test fails instead. Knows nothing of stations.
 *
 * <ul>
 *   <li>{@code admesh} (Debian package of the same name): defects and volume of an STL file.
 *   <li>Python's {@code ezdxf} (Debian {@code python3-ezdxf}), scripts in {@code src/test/python}.
 *   <li>Node packages pinned in {@code src/test/node/package.json}: {@code manifold-3d}, an
 *       independent solid kernel; {@code dxf-parser}, a second DXF reader; {@code occt-import-js}.
 * </ul>
 */
package sawstead.outside;
