package sawstead.preview.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class NoiseTest {
  @Test
  void at_repeatsWithoutASeamAndStaysInRange() {
    Noise noise = new Noise(5, 7, 11);
    for (int i = 0; i < 500; i++) {
      double s = i * 0.0173;
      double t = i * 0.0311;
      double value = noise.at(s, t);
      assertTrue(value >= 0 && value <= 1);
      assertEquals(value, noise.at(s + 1, t - 2), 1e-9);
    }
  }
}
