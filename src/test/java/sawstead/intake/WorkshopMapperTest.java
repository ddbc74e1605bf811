package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.brief.Brads;
import sawstead.brief.ScrewStock;
import sawstead.brief.Workshop;

class WorkshopMapperTest {

  @Test
  void workshop_leftOut_isTheUsualOne() {
    Workshop workshop = Briefs.read(Briefs.LEAST).workshop();
    assertTrue(workshop.glue());
    assertTrue(workshop.screws().contains(new ScrewStock(8, 32, false)));
    assertEquals(11, workshop.screws().size());
    assertEquals(12, workshop.holeSaws().size());
    assertEquals(new Brads(35, 1.2), workshop.brads());
  }

  @Test
  void workshop_inInches_isMillimetres_ascending() {
    Workshop workshop =
        Briefs.with(
                "workshop:",
                "  holeSaws: [2-1/2 in, 51]",
                "  screws: [{gauge: 6, length: 5/8 in, pocket: true}]",
                "  glue: false")
            .workshop();
    // REF-NUM-01: 1 in = 25.4 mm
    assertEquals(List.of(51.0, 63.5), workshop.holeSaws());
    assertEquals(List.of(new ScrewStock(6, 15.875, true)), workshop.screws());
    assertTrue(!workshop.glue());
  }
}
