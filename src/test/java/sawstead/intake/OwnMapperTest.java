package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.brief.Brief;
import sawstead.brief.OwnParts;
import sawstead.brief.OwnUnitException;
import sawstead.brief.Point;

class OwnMapperTest {

  private static final String UNIT =
      """
      unit: shelf
      parameters:
        long: {default: 2 * deep, from: 100, to: 900}
        count: {kind: number, default: 2}
      values:
        t: sheet.wood.thickness
        inside: long - 2 * t
      sheets: {wood: all}
      demands:
        - {that: inside > 150, says: too short, remedy: make it longer}
      panels:
        - {id: board, size: [inside, 8 in]}
        - {id: second, when: count > 1, size: [inside, 100], place: {at: [0, 0, 3 * t]}}
      joints:
        - {joint: screw, from: board, into: second}
      motions:
        - {id: comes, moves: [second], slide: {direction: [0, -1, 0], to: inside / 2}}
      """;

  @TempDir Path folder;

  @BeforeEach
  void write() throws Exception {
    unit(UNIT.replace("2 * deep", "400"));
  }

  private void unit(String text) throws Exception {
    Files.createDirectories(folder.resolve("units"));
    Files.writeString(folder.resolve("units/shelf.yaml"), text);
  }

  private Brief brief(String use) throws Exception {
    return brief("mm", use);
  }

  private Brief brief(String units, String use) throws Exception {
    Path file = folder.resolve("brief.yaml");
    Files.writeString(
        file,
        """
        name: Own
        units: %s
        stock: [{name: ply, length: 96 in, width: 48 in, thickness: 18 mm}]
        own:
          - %s
        """
            .formatted(units, use));
    return BriefReader.read(file);
  }

  private static OwnParts drawn(Brief brief) throws OwnUnitException {
    return brief.own().get(0).design().drawn(Map.of());
  }

  @Test
  void drawn_byItsDefaults_isWorkedByHand() throws Exception {
    OwnParts parts = drawn(brief("{id: s, file: units/shelf.yaml}"));
    assertEquals(List.of("s/board", "s/second"), parts.panels().stream().map(p -> p.id()).toList());
    // 400 - 2 x 18 = 364; 8 in = 203.2 mm.
    assertEquals(new Point(364, 203.2), parts.panels().get(0).outline().get(2));
    assertEquals(54, parts.panels().get(1).at().z());
    assertEquals(182, parts.motions().get(0).to());
    assertEquals("s/second", parts.joints().get(0).into());
    assertEquals(List.of(), parts.remarks());
  }

  @Test
  void drawn_withAnotherCount_leavesOutPanelAndJoint() throws Exception {
    unit(UNIT.replace("2 * deep", "400").replace("moves: [second]", "moves: [board]"));
    OwnParts parts = drawn(brief("{id: s, file: units/shelf.yaml, with: {count: 1}}"));
    assertEquals(1, parts.panels().size());
    assertEquals(List.of(), parts.joints());
  }

  @Test
  void drawn_whereADemandFails_saysSo() throws Exception {
    OwnParts parts = drawn(brief("{id: s, file: units/shelf.yaml, with: {long: 186}}"));
    assertEquals("s: too short", parts.remarks().get(0).says());
    assertTrue(parts.remarks().get(0).stops());
    // 150 mm inside is 186 mm outside: the demand is met a hair above that.
    assertEquals(
        List.of(), drawn(brief("{id: s, file: units/shelf.yaml, with: {long: 186.01}}")).remarks());
  }

  @Test
  void read_ofInches_meansTheSame() throws Exception {
    Brief inches = brief("inch", "{id: s, file: units/shelf.yaml, with: {long: 16}}");
    assertEquals(
        drawn(brief("{id: s, file: units/shelf.yaml, with: {long: 406.4}}")), drawn(inches));
  }

  @Test
  void equals_ofUses_isByWhatTheyDraw() throws Exception {
    String use = "{id: s, file: units/shelf.yaml, with: {long: 300}}";
    assertEquals(brief(use), brief(use));
    assertNotEquals(brief(use), brief(use.replace("300", "301")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{id: s, file: units/none.yaml} | there is no unit file",
        "{id: s, file: ../shelf.yaml} | not in the folder of the brief",
        "{id: s, file: /etc/passwd} | not in the folder of the brief",
        "{id: s, file: units} | there is no unit file",
        "{id: stand, file: units/shelf.yaml} | is a unit of the station",
        "{id: s, file: units/shelf.yaml, with: {lang: 3}} | the unit has no parameter `lang`",
        "{id: s, file: units/shelf.yaml, with: {long: x}} | long: `x`",
        "{id: s, file: units/shelf.yaml, with: {count: 2 mm}} | count is no number",
        "{id: s, file: units/shelf.yaml, sheets: {wod: ply}} | the unit has no sheet role `wod`",
        "{id: s, file: units/shelf.yaml, sheets: {wood: plu}} | no sheet in stock is called `plu`"
      })
  void read_ofAWrongUse_saysWhatIsWrong(String use, String says) {
    BriefException refused = assertThrows(BriefException.class, () -> brief(use));
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "inside: long - 2 * t | inside: lnog - 2 * t | shelf.yaml:7: values.inside: there is no name",
        "inside: long - 2 * t | inside: long - | shelf.yaml:7: values.inside: `long -` is no formula",
        "t: sheet.wood.thickness | t: inside / 3 | `inside` is not known yet here",
        "t: sheet.wood.thickness | t: 3/4 | `3/4` has no unit",
        "t: sheet.wood.thickness | saw: 3 | `saw` cannot be a name",
        "t: sheet.wood.thickness | long: 3 | `long` is a parameter already",
        "count > 1 | count >> 1 | is no formula",
        "slide: { | slice: { | `slice` is no key",
        "id: board, size | id: board, siz | `siz` is no key",
        "sheets: {wood: all} | sheets: 3 | sheets"
      })
  void read_ofAWrongUnitFile_saysFileLineAndPath(String was, String is, String says)
      throws Exception {
    unit(UNIT.replace("2 * deep", "400").replace(was, is));
    BriefException refused =
        assertThrows(BriefException.class, () -> brief("{id: s, file: units/shelf.yaml}"));
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{long: 99} | it is 99 mm, but must be at least 100 mm",
        "{long: 901} | but must be at most 900 mm"
      })
  void drawn_withAChoiceOutOfRange_isRefused(String with, String says) throws Exception {
    Brief brief = brief("{id: s, file: units/shelf.yaml, with: " + with + "}");
    OwnUnitException refused = assertThrows(OwnUnitException.class, () -> drawn(brief));
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "from: board | from: bord | this unit has no `bord`",
        "to: inside / 2 | to: 0 | the motion ends where it begins",
        "joint: screw, from | joint: brad, removable: true, from | a brad joint is glued",
        "direction: [0, -1, 0] | direction: [0, 0, 0] | the direction has no length",
        "long - 2 * t | long - 40 * t | the panel would be",
        "id: second | id: board | `board` is used twice",
        "size: [inside, 8 in] | size: [inside / (t - t), 8 in] | has no finite value",
        "sheet.wood.thickness | saw.table.width | there is no `table`"
      })
  void drawn_whereNothingSoundFollows_isRefused(String was, String is, String says)
      throws Exception {
    unit(UNIT.replace("2 * deep", "400").replace(was, is));
    Brief brief = brief("{id: s, file: units/shelf.yaml}");
    OwnUnitException refused = assertThrows(OwnUnitException.class, () -> drawn(brief));
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }
}
