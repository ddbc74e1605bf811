package sawstead.preview.text;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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
}
