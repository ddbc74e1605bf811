package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sawstead.brief.Brief;
import sawstead.measure.Unit;

class BriefReaderTest {

  @TempDir Path folder;

  static Stream<Path> models() {
    return Briefs.yamlIn(Briefs.MODELS);
  }

  @ParameterizedTest
  @MethodSource("models")
  void read_ofTheDemoBriefs_findsNothingWrong(Path file) throws Exception {
    Brief brief = BriefReader.read(file);
    assertTrue(brief.saw().isPresent() || !brief.own().isEmpty());
    assertEquals(file.getFileName().toString(), brief.slug() + ".yaml");
  }

  @Test
  void read_ofTheSmallestBrief_needsNoMoreThan25Lines() throws Exception {
    assertTrue(Files.readAllLines(Briefs.MODELS.resolve("first-brief.yaml")).size() <= 25);
  }

  @Test
  void read_ofTheExampleMessage_hasItsThreeParts() throws Exception {
    // The form is fixed in examples-to-follow, no. 29.
    Path file = folder.resolve("x.yaml");
    Files.writeString(file, Briefs.LEAST + "station:\n  legs:\n    length: 3 km\n");
    BriefException wrong = assertThrows(BriefException.class, () -> BriefReader.read(file));
    assertEquals(
        "leg length is 3,000,000 mm, longer than any sheet in stock\n  "
            + file
            + ":14, station.legs.length\n"
            + "  write at most 2,440 mm, or leave it out and give workingHeight",
        wrong.getMessage());
    assertEquals(file.toString(), wrong.file());
  }

  @Test
  void read_ofNoFile_saysSo() {
    assertFault(folder.resolve("none.yaml"), "there is no such file");
  }

  @Test
  void read_ofAFolder_saysSo() {
    assertFault(folder, "this is a folder, not a brief");
  }

  @Test
  void read_ofAnEmptyFile_saysSo() throws Exception {
    assertFault(Files.createFile(folder.resolve("empty.yaml")), "the file is empty");
  }

  @Test
  void read_ofOtherThanUtf8_saysSo() throws Exception {
    Path file = folder.resolve("latin.yaml");
    Files.write(file, "name: Säge\n".getBytes(StandardCharsets.ISO_8859_1));
    assertFault(file, "the file is not UTF-8 text");
  }

  @Test
  void read_ofControlCharacters_saysSo() throws Exception {
    Path file = folder.resolve("binary.yaml");
    Files.write(file, new byte[] {'a', ':', ' ', 0, 1, 2});
    BriefException wrong = assertThrows(BriefException.class, () -> BriefReader.read(file));
    assertTrue(wrong.problems().get(0).what().startsWith("this is not YAML"), wrong.getMessage());
  }

  @Test
  void read_ofMoreThanAMebibyte_saysSo() throws Exception {
    Path file = folder.resolve("large.yaml");
    Files.writeString(file, "#".repeat(BriefReader.LARGEST + 1));
    assertFault(file, "the file is larger than 1 MiB");
  }

  @Test
  void read_withAByteOrderMark_ignoresIt() throws Exception {
    assertEquals("Least", Briefs.read("\ufeff" + Briefs.LEAST).name());
  }

  @Test
  void read_withWindowsLineEnds_countsLinesTheSame() {
    String yaml = Briefs.LEAST.replace("arbor: 230", "arbor: 0").replace("\n", "\r\n");
    assertEquals(7, Briefs.problems(yaml).get(0).line());
  }

  @Test
  void read_ofPlainNumbers_takesTheUnitOfTheFile() {
    Brief inch =
        Briefs.read(
            Briefs.LEAST
                .replace("units: mm", "units: inch")
                .replaceAll("(?<=[ {])(\\d+(?:\\.\\d+)?)(?=[,}])", "$1 mm"));
    assertEquals(Unit.INCH, inch.units());
    assertEquals(Briefs.read(Briefs.LEAST).saw(), inch.saw());
  }

  private void assertFault(Path file, String what) {
    BriefException wrong = assertThrows(BriefException.class, () -> BriefReader.read(file));
    assertEquals(1, wrong.problems().size());
    BriefProblem problem = wrong.problems().get(0);
    assertEquals(what, problem.what());
    assertEquals(file.toString(), problem.place(wrong.file()));
  }
}
