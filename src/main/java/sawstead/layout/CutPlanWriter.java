package sawstead.layout;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;

/**
 * Writes a plan as JSON, format {@code sawstead-breakdown/1}: lengths in mm, {@code at} of a piece
 * the corner nearest the sheet's origin, {@code size} as placed, {@code at} of a cut the near side
 * of its kerf, {@code setting} the distance from fence or stop to blade, null along the rail.
 */
public final class CutPlanWriter {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private CutPlanWriter() {}

  /** The plan as text, ended by a line feed. */
  public static String json(CutPlan plan) {
    ObjectNode root = JSON.createObjectNode();
    root.put("format", "sawstead-breakdown/1");
    root.put("lowerBound", plan.lowerBound());
    ArrayNode sheets = root.putArray("sheets");
    plan.sheets().forEach(sheet -> sheet(sheets.addObject(), sheet));
    root.put("settings", plan.settings());
    ArrayNode offcuts = root.putArray("offcuts");
    for (Offcut offcut : plan.offcuts()) {
      ObjectNode node = offcuts.addObject();
      node.put("stock", offcut.stock());
      node.put("sheet", offcut.sheet());
      pair(node, "at", offcut.x(), offcut.y());
      pair(node, "size", offcut.length(), offcut.width());
    }
    try {
      return JSON.writeValueAsString(root).replace("\r\n", "\n") + "\n";
    } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void sheet(ObjectNode node, SheetPlan sheet) {
    node.put("stock", sheet.stock());
    pair(node, "size", sheet.length(), sheet.width());
    ArrayNode pieces = node.putArray("pieces");
    for (PlacedPiece piece : sheet.pieces()) {
      ObjectNode one = pieces.addObject();
      one.put("part", piece.part());
      pair(one, "at", piece.x(), piece.y());
      pair(one, "size", piece.length(), piece.width());
      one.put("turned", piece.turned());
    }
    ArrayNode cuts = node.putArray("cuts");
    for (Cut cut : sheet.cuts()) {
      ObjectNode one = cuts.addObject();
      one.put("order", cut.order());
      one.put("tool", cut.guide().tool().word());
      one.put("along", cut.along().word());
      one.put("at", cut.at());
      one.put("from", cut.from());
      one.put("to", cut.to());
      if (cut.setting().isPresent()) {
        one.put("setting", cut.setting().getAsDouble());
      } else {
        one.putNull("setting");
      }
    }
  }

  private static void pair(ObjectNode node, String key, double a, double b) {
    node.putArray(key).add(a).add(b);
  }
}
