package sawstead.outside;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

/**
 * What an outside program said before it ended well.
 *
 * @param command the command line, for messages
 * @param text its standard output
 * @param complaints its standard error
 */
public record Answer(String command, String text, String complaints) {

  /** The output read as JSON; an {@link AssertionError} that shows the output when it is not. */
  public JsonNode json() {
    try {
      JsonNode node = new ObjectMapper().readTree(text);
      if (node == null || node.isMissingNode()) {
        throw new AssertionError(command + " printed nothing. Standard error:\n" + complaints);
      }
      return node;
    } catch (JsonProcessingException e) {
      throw new AssertionError(command + " did not print JSON but:\n" + text, e);
    }
  }
}
