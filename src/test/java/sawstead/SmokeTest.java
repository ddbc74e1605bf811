package sawstead;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SmokeTest {
  @Test
  void jdk_isAtLeast17() {
    assertTrue(Runtime.version().feature() >= 17);
  }
}
