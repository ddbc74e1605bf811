package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.Test;
import sawstead.brief.CasterSet;
import sawstead.brief.MobileFrame;
import sawstead.brief.NoCasters;

class CastersMapperTest {

  @Test
  void casters_leftOutOrNone_areNone() {
    assertInstanceOf(NoCasters.class, Briefs.read(Briefs.LEAST).casters());
    assertInstanceOf(NoCasters.class, Briefs.with("casters: none").casters());
  }

  @Test
  void casters_haveAWheelThatSuitsTheirHeight() {
    CasterSet low = (CasterSet) Briefs.with("casters: {height: 70}").casters();
    CasterSet high = (CasterSet) Briefs.with("casters: {height: 100}").casters();
    assertEquals(50, low.wheel().nominal());
    assertEquals(75, high.wheel().nominal());
    assertEquals(95, high.plateLength().nominal());
  }

  @Test
  void frame_isAMobileFrame() {
    MobileFrame frame =
        (MobileFrame)
            Briefs.with("casters: {frame: {insideWidth: 700, insideDepth: 600}}").casters();
    assertEquals(25, frame.addedHeight().nominal());
    assertEquals("casters.frame.rim", frame.rim().path());
  }
}
