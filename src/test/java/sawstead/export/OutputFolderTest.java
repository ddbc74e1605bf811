package sawstead.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
  private static final String LIST = FileList.NAME;

  @TempDir Path place;

  @Test
  void write_intoNothing_makesTheFolderAndItsParents() throws IOException {
    Path target = place.resolve("exports/demo");
    OutputFolder.at(target).write(files("report.json", "{}", "stl/stand/top.stl", "solid"));
    assertEquals("{}", contents(target).get("report.json"));
    assertEquals("solid", contents(target).get("stl/stand/top.stl"));
    assertEquals(List.of("demo"), names(target.getParent()));
  }

  @Test
  void write_overAnEarlierBuild_leavesNothingOfIt() throws IOException {
    Path target = place.resolve("demo");
    OutputFolder.at(target).write(files("report.json", "1", "stl/gone.stl", "x"));
    OutputFolder.at(target).write(files("report.json", "2"));
    assertEquals(List.of("report.json", LIST), List.copyOf(contents(target).keySet()));
    assertEquals("2", contents(target).get("report.json"));
    assertEquals(List.of("demo"), names(place));
  }

  @Test
  void write_intoAnEmptyFolder_fillsIt() throws IOException {
    Path target = Files.createDirectory(place.resolve("demo"));
    OutputFolder.at(target).write(files("a.txt", "a"));
    assertEquals("a", contents(target).get("a.txt"));
  }

  @Test
  void write_thatFailsHalfWay_leavesWhatWasThere() throws IOException {
    Path target = place.resolve("demo");
    OutputFolder.at(target).write(files("report.json", "old"));
    ExportException failure =
        assertThrows(
            ExportException.class,
            () ->
                OutputFolder.at(target)
                    .write(
                        draft -> {
                          put(draft, "report.json", "new");
                          throw new IOException("No space left on device");
                        }));
    assertTrue(failure.what().contains("No space left on device"), failure.what());
    assertEquals(target.toString(), failure.where());
    assertEquals("old", contents(target).get("report.json"));
    assertEquals(List.of("demo"), names(place));
  }

  @Test
  void write_thatFailsOfAProgrammingFault_leavesWhatWasThere() throws IOException {
    Path target = place.resolve("demo");
    assertThrows(
        IllegalStateException.class,
        () ->
            OutputFolder.at(target)
                .write(
                    draft -> {
                      put(draft, "report.json", "new");
                      throw new IllegalStateException("a bug");
                    }));
    assertEquals(List.of(), names(place));
  }

  @Test
  void write_overAFolderOfSomebodyElse_isRefused() throws IOException {
    Path target = Files.createDirectory(place.resolve("photos"));
    Files.writeString(target.resolve("report.json"), "{\"format\": \"holiday/1\"}");
    ExportException refusal = refused(target);
    assertTrue(refusal.what().contains("was not written by Sawstead"), refusal.what());
    assertEquals(List.of("report.json"), names(target));
    assertEquals(List.of("photos"), names(place));
  }

  @Test
  void write_overAFolderThatAlsoHoldsAStrangersFile_isRefusedAndNamesIt() throws IOException {
    Path target = place.resolve("demo");
    OutputFolder.at(target).write(files("report.json", "old", "stl/a.stl", "x"));
    Files.writeString(target.resolve("stl/notes.txt"), "mine");
    ExportException refusal = refused(target);
    assertTrue(refusal.what().contains("stl/notes.txt"), refusal.what());
    assertEquals("mine", contents(target).get("stl/notes.txt"));
    assertEquals("old", contents(target).get("report.json"));
  }

  @Test
  void write_overAFile_isRefused() throws IOException {
    Path target = Files.writeString(place.resolve("demo"), "a file");
    assertTrue(refused(target).what().contains("a file stands where"));
    assertEquals("a file", Files.readString(target));
  }

  @Test
  void write_belowAFile_isRefused() throws IOException {
    Path file = Files.writeString(place.resolve("file"), "a file");
    assertTrue(refused(file.resolve("demo")).what().contains("a file stands where"));
    assertTrue(refused(file.resolve("deeper/demo")).what().contains("a file stands where"));
    assertEquals("a file", Files.readString(file));
  }

  @Test
  void write_overALink_isRefusedAndTheLinksGoalIsUntouched() throws IOException {
    Path goal = place.resolve("goal");
    OutputFolder.at(goal).write(files("report.json", "old"));
    Path link = Files.createSymbolicLink(place.resolve("link"), goal);
    assertTrue(refused(link).what().contains("is a link"));
    Path dangling = Files.createSymbolicLink(place.resolve("dangling"), place.resolve("nowhere"));
    assertTrue(refused(dangling).what().contains("is a link"));
    assertEquals("old", contents(goal).get("report.json"));
  }

  @Test
  void write_overAFolderWithALink_neverFollowsIt() throws IOException {
    Path precious = Files.createDirectory(place.resolve("precious"));
    Files.writeString(precious.resolve("thesis.txt"), "years of work");
    Path target = place.resolve("demo");
    OutputFolder.at(target).write(files("stl", "a file of this name"));
    Files.delete(target.resolve("stl"));
    Files.createSymbolicLink(target.resolve("stl"), precious);
    OutputFolder.at(target).write(files("report.json", "new"));
    assertEquals("years of work", Files.readString(precious.resolve("thesis.txt")));
  }

  /** The one place on a Linux machine where not even root may make a folder. */
  @Test
  void write_whereTheSystemRefuses_saysSo() {
    Path kernels = Path.of("/proc");
    assumeTrue(Files.isDirectory(kernels), "a system with /proc");
    ExportException refusal = refused(kernels.resolve("demo"));
    assertTrue(refusal.what().startsWith("could not write") || refusal.what().contains("allowed"));
    assertEquals("/proc/demo", refusal.where());
  }

  @Test
  void write_ofTheRoot_isRefused() {
    assertThrows(ExportException.class, () -> OutputFolder.at(Path.of("/")));
  }

  @Test
  void write_whileAnotherBuildWrites_isRefused() throws IOException {
    Path target = place.resolve("demo");
    OutputFolder.at(target)
        .write(
            draft -> {
              put(draft, "a.txt", "a");
              assertTrue(refused(target).what().contains("another build"));
            });
    assertEquals("a", contents(target).get("a.txt"));
  }

  @Test
  void write_ofTwoNamesThatDifferInCapitalsOnly_isRefused() throws IOException {
    Path target = place.resolve("demo");
    ExportException refusal =
        assertThrows(
            ExportException.class,
            () -> OutputFolder.at(target).write(files("stl/Top.stl", "1", "stl/top.stl", "2")));
    assertEquals("stl/top.stl", refusal.where());
    assertEquals(List.of(), names(place));
  }

  @Test
  void write_ofAFileWhereAFolderIsNeeded_isRefused() {
    for (Contents order :
        List.of(
            files("stl/a.stl", "1", "stl/a.stl/b.stl", "2"),
            files("stl/a.stl/b.stl", "1", "stl/a.stl", "2"))) {
      assertThrows(
          ExportException.class, () -> OutputFolder.at(place.resolve("demo")).write(order));
    }
  }

  @Test
  void write_ofTheListsOwnName_isRefused() {
    assertThrows(
        ExportException.class,
        () -> OutputFolder.at(place.resolve("demo")).write(files(LIST, "mine")));
  }

  @Test
  void write_afterABuildThatDiedBetweenTheRenames_startsFromTheOldFolder() throws IOException {
    Path target = place.resolve("demo");
    OutputFolder.at(target).write(files("report.json", "old"));
    Files.move(target, place.resolve(".demo.sawstead-old"));
    assertThrows(
        ExportException.class,
        () ->
            OutputFolder.at(target)
                .write(
                    draft -> {
                      throw new IOException("full");
                    }));
    assertEquals("old", contents(target).get("report.json"));
    assertEquals(List.of("demo"), names(place));
  }

  @Test
  void write_whereAStrangerHasTheDraftsName_isRefused() throws IOException {
    Path strange = Files.createDirectory(place.resolve(".demo.sawstead-draft"));
    Files.writeString(strange.resolve("mine.txt"), "mine");
    assertTrue(refused(place.resolve("demo")).what().contains("has a name it needs"));
    assertEquals("mine", Files.readString(strange.resolve("mine.txt")));
  }

  private ExportException refused(Path target) {
    return assertThrows(
        ExportException.class, () -> OutputFolder.at(target).write(files("report.json", "new")));
  }

  private interface Contents extends OutputFolder.Contents {}

  private static Contents files(String... namesAndTexts) {
    return draft -> {
      for (int i = 0; i < namesAndTexts.length; i += 2) {
        put(draft, namesAndTexts[i], namesAndTexts[i + 1]);
      }
    };
  }

  private static void put(Draft draft, String name, String text) throws IOException {
    try (OutputStream out = draft.open(FileName.parse(name))) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  private static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        texts.put(folder.relativize(path).toString(), Files.readString(path));
      }
    }
    return texts;
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
