package sawstead.preview.text;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BriefFileTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a: 1 # one\nb: 2\n",
        "a: 1\r\nb: 2\nc: 3\r\n",
        "a: 1\nb: 2\r\n",
        "a: 1\r\nb: \u00bd\r\n",
        "\ufeffa: 1\n",
        "no end",
        ""
      })
  void write_unchanged_givesTheSameBytes(String raw) throws IOException {
    Path path = folder.resolve("x.yaml");
    byte[] bytes = raw.getBytes(StandardCharsets.UTF_8);
    Files.write(path, bytes);
    BriefFile.read(path).write();
    assertArrayEquals(bytes, Files.readAllBytes(path));
    assertEquals(1, Files.list(folder).count(), "nothing is left beside it");
  }

  @ParameterizedTest
  @CsvSource({
    "a: 1\\r\\nb: 2\\nc: 3\\r\\n, b: 2, b: 22, a: 1\\r\\nb: 22\\nc: 3\\r\\n",
    "a: 1\\r\\nb: 2\\nc: 3\\n, b: 2, b: 2\\nx: 4, a: 1\\r\\nb: 2\\nx: 4\\r\\nc: 3\\n",
    "a: 1\\nb: 2\\nc: 3\\r\\n, a: 1\\n, '', b: 2\\nc: 3\\r\\n",
    "a: 1\\r\\na: 1\\r\\n, a: 1\\na: 1\\n, a: 1\\n, a: 1\\r\\n",
  })
  void write_changed_keepsEveryOtherLineEnd(String was, String what, String with, String is)
      throws IOException {
    Path path = folder.resolve("x.yaml");
    Files.writeString(path, was.translateEscapes());
    BriefFile file = BriefFile.read(path);
    String changed = file.text().replace(what.translateEscapes(), with.translateEscapes());
    file.with(changed).write();
    assertEquals(is.translateEscapes(), Files.readString(path));
  }

  @Test
  void read_ofLatin1_isRefused() throws IOException {
    Path path = folder.resolve("x.yaml");
    Files.write(path, new byte[] {'a', (byte) 0xbd});
    assertThrows(IOException.class, () -> BriefFile.read(path));
  }

  @Test
  void write_leavesWhoMayReadIt_asItWas() throws IOException {
    Path path = folder.resolve("x.yaml");
    Files.writeString(path, "a: 1\n");
    Assumptions.assumeTrue(Files.getFileStore(path).supportsFileAttributeView("posix"));
    for (String rights : List.of("rw-r--r--", "rw-rw----", "rw-------")) {
      Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(rights));
      BriefFile.read(path).with("a: 2\n").write();
      assertEquals(rights, PosixFilePermissions.toString(Files.getPosixFilePermissions(path)));
    }
  }

  @Test
  void write_ofANewFile_mayBeReadAsOthersThatAreMadeHere() throws IOException {
    Path path = folder.resolve("x.yaml");
    Path other = Files.writeString(folder.resolve("other.yaml"), "");
    Assumptions.assumeTrue(Files.getFileStore(other).supportsFileAttributeView("posix"));
    BriefFile.empty(path).with("a: 2\n").write();
    assertEquals(Files.getPosixFilePermissions(other), Files.getPosixFilePermissions(path));
  }

  @Test
  void write_throughALink_changesWhatItPointsTo() throws IOException {
    Path shelf = Files.createDirectory(folder.resolve("shelf"));
    Path real = Files.writeString(shelf.resolve("real.yaml"), "a: 1\n");
    Path link = Files.createSymbolicLink(folder.resolve("x.yaml"), Path.of("shelf", "real.yaml"));
    BriefFile.read(link).with("a: 2\n").write();
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("a: 2\n", Files.readString(real));
    BriefFile file = BriefFile.read(link);
    Files.delete(real);
    file.with("a: 3\n").write();
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("a: 3\n", Files.readString(real));
  }

  @Test
  void write_whereAFolderIsNow_orWhatMayNotBeWritten_leavesItAlone() throws IOException {
    Path path = folder.resolve("x.yaml");
    Files.writeString(path, "a: 1\n");
    BriefFile file = BriefFile.read(path);
    if (path.toFile().setWritable(false) && !Files.isWritable(path)) {
      assertThrows(IOException.class, () -> file.with("a: 2\n").write());
      assertEquals("a: 1\n", Files.readString(path));
    }
    Files.delete(path);
    Files.createDirectory(path);
    assertThrows(IOException.class, file::write);
    assertTrue(Files.isDirectory(path));
    assertEquals(1, Files.list(folder).count(), "nothing is left beside it");
  }
}
