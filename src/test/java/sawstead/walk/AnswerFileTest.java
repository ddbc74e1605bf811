package sawstead.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnswerFileTest {
  @TempDir private Path folder;

  @Test
  void answers_comeBackAsTheyWere() throws Exception {
    AnswerFile file = AnswerFile.beside(folder.resolve("shed.yaml"));
    assertEquals(List.of(), file.read());
    List<Answer> answers =
        List.of(
            new Answer("name", "Shed # 2: \u00bd", "Shed # 2: \u00bd"),
            new Answer("saw.table.width", "unknown", "640 mm \u00b1 60 mm"),
            new Answer("saw.dust", "no", ""));
    file.write(answers);
    assertEquals(answers, file.read());
    file.remove();
    assertFalse(Files.exists(file.path()));
  }

  @Test
  void linesThatSayNothing_arePassedOver() throws Exception {
    AnswerFile file = AnswerFile.beside(folder.resolve("shed.yaml"));
    Files.writeString(file.path(), "# head\nrubbish\n\nname\tShed\tShed\nname\t\t\n");
    assertEquals(List.of(new Answer("name", "Shed", "Shed")), file.read());
  }

  @Test
  void answerOfTwoLines_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Answer("name", "a\nb", ""));
    assertThrows(IllegalArgumentException.class, () -> new Answer("name", " ", ""));
  }
}
