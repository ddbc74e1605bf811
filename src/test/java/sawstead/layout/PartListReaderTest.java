package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PartListReaderTest {
  @TempDir Path folder;

  private List<Part> read(String text) throws IOException, CutRequestException {
    Path file = folder.resolve("list.csv");
    Files.writeString(file, text);
    return PartListReader.read(file, "board");
  }

  private void assertComplaint(String text, String code, String where, String what) {
    CutRequestException e = assertThrows(CutRequestException.class, () -> read(text));
    Complaint complaint = e.complaints().get(0);
    assertEquals(code, complaint.code(), complaint.toString());
    assertTrue(complaint.where().endsWith(where), complaint.toString());
    assertTrue((complaint.what() + complaint.remedy()).contains(what), complaint.toString());
  }

  @Test
  void read_ofTheDocumentedForm_givesParts() throws Exception {
    List<Part> parts = read("part,length,width,quantity,grain\nside, 600 ,250.5,4,along\n");
    assertEquals(1, parts.size());
    Part side = parts.get(0);
    assertEquals("side", side.name());
    assertEquals(600, side.length());
    assertEquals(250.5, side.width());
    assertEquals(4, side.quantity());
    assertEquals(Grain.ALONG, side.grain());
    assertTrue(side.where().endsWith("list.csv:2"));
  }

  @Test
  void read_withByteOrderMarkQuotesAndOtherOrder_givesParts() throws Exception {
    List<Part> parts = read("\uFEFFwidth,part,length\r\n100,\"leg, front\",480 mm\r\n\r\n");
    assertEquals("leg, front", parts.get(0).name());
    assertEquals(480, parts.get(0).length());
    assertEquals(1, parts.get(0).quantity());
    assertEquals(Grain.FREE, parts.get(0).grain());
  }

  @Test
  void read_inAnotherLanguage_isTheSame() throws Exception {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals(250.5, read("part,length,width\na,600,250.5\n").get(0).width());
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals(1, read("PART,LENGTH,WIDTH,GRAIN\nI,600,250,FREE\n").size());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void badLists_areExplained() {
    assertComplaint("", "no-parts", "list.csv", "empty");
    assertComplaint("part,length,width\n", "no-parts", "list.csv", "no parts");
    assertComplaint("part,lenght,width\na,1,1\n", "column", "list.csv:1", "'length'");
    assertComplaint("part,length,width,colour\na,1,1,red\n", "column", "list.csv:1", "use only");
    assertComplaint("part,length\na,1\n", "column", "list.csv:1", "'width' is missing");
    assertComplaint("part;length;width\na;1;1\n", "column", "list.csv:1", "commas");
    assertComplaint("part,length,width,width\na,1,1,1\n", "column", "list.csv:1", "twice");
    assertComplaint("part,length,width\na,600,25x\n", "number", "list.csv:2", "'25x'");
    assertComplaint("part,length,width\na,600,\n", "number", "list.csv:2", "width of part 'a'");
    assertComplaint("part,length,width\na,-600,10\n", "number", "list.csv:2", "'-600'");
    assertComplaint("part,length,width\na,1e9,10\n", "number", "list.csv:2", "'1e9'");
    assertComplaint("part,length,width\na,NaN,10\n", "number", "list.csv:2", "'NaN'");
    assertComplaint("part,length,width\na,600,25,5\n", "cells", "list.csv:2", "decimal comma");
    assertComplaint("part,length,width\n,600,25\n", "name", "list.csv:2", "no name");
    assertComplaint(
        "part,length,width,quantity\na,600,25,2.5\n", "quantity", "list.csv:2", "'2.5'");
    assertComplaint(
        "part,length,width,grain\na,600,25,diagonal\n", "grain-word", "list.csv:2", "'diagonal'");
    assertComplaint("part,length,width\n\"a,600,25\n", "csv", "list.csv", "quote");
  }

  @Test
  void badLines_areAllReportedInOneRun() {
    CutRequestException e =
        assertThrows(
            CutRequestException.class,
            () -> read("part,length,width,grain\na,x,y,z\nb,1,1,free\nc,0,5,free\n"));
    assertEquals(4, e.complaints().size(), e.complaints().toString());
  }

  @Test
  void missingFileFolderAndBinary_areExplained() throws Exception {
    assertThrows(
        CutRequestException.class, () -> PartListReader.read(folder.resolve("none.csv"), "b"));
    assertThrows(CutRequestException.class, () -> PartListReader.read(folder, "b"));
    Path binary = folder.resolve("binary.csv");
    Files.write(binary, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
    CutRequestException e =
        assertThrows(CutRequestException.class, () -> PartListReader.read(binary, "b"));
    assertEquals("encoding", e.complaints().get(0).code());
  }

  @Test
  void randomBytes_giveAComplaintOrParts() throws Exception {
    SplittableRandom random = new SplittableRandom(42);
    String letters = "part,length,width\n\"'0123456789.-;x\t\r\u00e9";
    for (int run = 0; run < 2000; run++) {
      StringBuilder text = new StringBuilder(random.nextBoolean() ? "part,length,width\n" : "");
      int n = random.nextInt(60);
      for (int i = 0; i < n; i++) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      Path file = folder.resolve("fuzz.csv");
      Files.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
      try {
        PartListReader.read(file, "board");
      } catch (CutRequestException e) {
        assertTrue(!e.complaints().isEmpty(), "seed 42, run " + run);
      }
    }
  }
}
