package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import sawstead.brief.Brief;

class CuttingMapperTest {

  @Test
  void leftOut_followsFromTheSaw() {
    Brief brief = Briefs.withSaw("mass: 22");
    assertEquals(brief.saw().orElseThrow().blade().kerf().nominal(), brief.cutting().tableKerf());
    assertEquals(
        brief.saw().orElseThrow().fence().right().nominal(), brief.cutting().ripCapacity());
  }

  @Test
  void withoutSaw_takesAFullKerf() {
    // REF-TRD-02: a full kerf is 1/8 in, 3.2 mm
    Brief brief =
        Briefs.read(
            """
            name: Only mine
            units: mm
            stock: [{name: birch-18, length: 2440, width: 1220, thickness: 17.7}]
            extras:
              - id: board
                stock: birch-18
                outline: [[0, 0], [600, 0], [600, 300], [0, 300]]
                place: {at: [0, 0, 500]}
            """);
    assertEquals(3.2, brief.cutting().tableKerf(), 1e-9);
    assertFalse(brief.cutting().favoursLabour());
  }
}
