package sawstead.preview.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenTest {
  private static final String TEXT =
      """
      stock: [{name: birch-18}]
      sleds: [{id: crosscut}]
      station:
        wings: {right: {contents: [{id: router-case, width: 330}]}}
      """;

  @ParameterizedTest
  @CsvSource({
    "wing-right/router-case, station.wings.right.contents[0].width, true",
    "wing-right/router-case, station.workingHeight, false",
    "wing-right/router-case, stock[0].length, false",
    "saw/switch, saw.switch.x, true",
    "saw/switch, saw.table.width, false",
    "crosscut/base, sleds[0].length, true",
    "crosscuts/base, sleds[0].length, false",
  })
  void isFor_theItemThatBearsTheName_andTheSection(String body, String path, boolean is) {
    assertEquals(is, new Written(TEXT, List.of(body)).isFor(path));
  }
}
