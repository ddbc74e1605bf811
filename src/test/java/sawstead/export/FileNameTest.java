package sawstead.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FileNameTest {
  @Test
  void of_anId_keepsUnitAndPart() {
    FileName name = FileName.of("stl", "stand/leg-3-face", "stl");
    assertEquals("stl/stand/leg-3-face.stl", name.toString());
    assertEquals(Path.of("out", "stl", "stand", "leg-3-face.stl"), name.below(Path.of("out")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "top",
        "stand/top",
        "a b",
        "R\u00fcckwand",
        "com",
        "com10",
        "console",
        "null",
        "x.y"
      })
  void of_anHonestId_isTaken(String id) {
    assertEquals("dxf/" + id + ".dxf", FileName.of("dxf", id, "dxf").toString());
  }

  /** Device names: Windows' documented rule for naming files; the rest is path syntax. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "../x|leads through '..'",
        "a/../../x|leads through '..'",
        "a/./x|leads through '.'",
        "/etc/x|empty step",
        "a//x|empty step",
        "''|begins or ends with a dot",
        "a/|begins or ends with a dot",
        ".hidden|begins or ends with a dot",
        "stand./x|begins or ends with a dot",
        "a /x|begins or ends with a space",
        "a\\x|holds the character \\",
        "C:x|holds the character :",
        "a*|holds the character *",
        "CON|keep for a device",
        "con|keep for a device",
        "nul/x|keep for a device",
        "stand/Lpt1|keep for a device",
        "com\u00b9|keep for a device",
        "aux.old/x|keep for a device",
        "a/b/c/d/e/f/g/h|more than 8 steps",
      })
  void of_aPathTrick_isRefused(String id, String fault) {
    ExportException refusal =
        assertThrows(ExportException.class, () -> FileName.of("stl", id, "stl"));
    assertTrue(refusal.what().contains(fault), refusal.what());
    assertFalse(refusal.remedy().isBlank());
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\0b", "a\nb", "a\u001bb", "a\u202eb", "a\u200bb", "a\ud800b", "\u007f"})
  void of_anUnseenCharacter_isRefusedAndNotPrinted(String id) {
    ExportException refusal =
        assertThrows(ExportException.class, () -> FileName.of("stl", id, "stl"));
    assertTrue(refusal.what().contains("unseen character U+"), refusal.what());
    assertTrue(refusal.where().contains("\\u"), refusal.where());
    assertTrue(refusal.where().chars().allMatch(c -> c >= ' ' && c < 0x7f), refusal.where());
  }

  @Test
  void of_aDecomposedAccent_isRefused() {
    ExportException refusal =
        assertThrows(ExportException.class, () -> FileName.of("stl", "u\u0308ber", "stl"));
    assertTrue(refusal.what().contains("accent"), refusal.what());
  }

  @Test
  void of_aStepOf120Bytes_isTheLongest() {
    String longest = "x".repeat(FileName.STEP_BYTES - ".stl".length());
    assertEquals("stl/" + longest + ".stl", FileName.of("stl", longest, "stl").toString());
    assertThrows(ExportException.class, () -> FileName.of("stl", longest + "x", "stl"));
    // Sixty letters of two bytes each, and the extension.
    assertThrows(ExportException.class, () -> FileName.of("stl", "\u00fc".repeat(60), "stl"));
    ExportException huge =
        assertThrows(ExportException.class, () -> FileName.of("stl", "x".repeat(100_000), "stl"));
    assertTrue(huge.getMessage().length() < 500);
  }
}
