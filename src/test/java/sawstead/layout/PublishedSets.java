package sawstead.layout;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The published instances of {@code src/test/resources/packing}, cited in the README there. */
final class PublishedSets {
  /** One instance with or without turning. */
  record Instance(
      String set,
      String name,
      boolean turning,
      int sheetLength,
      int sheetWidth,
      List<int[]> items,
      int lowerBound,
      int bestKnown,
      boolean proven) {
    /** As a request, one unit a millimetre; sheet and pieces made smaller by the kerf. */
    CutRequest request(double kerf) {
      List<Part> parts = new ArrayList<>();
      for (int i = 0; i < items.size(); i++) {
        int[] item = items.get(i);
        Grain grain = turning ? Grain.FREE : Grain.ALONG;
        parts.add(new Part("p" + i, item[0] - kerf, item[1] - kerf, item[2], grain, "board", name));
      }
      Stock sheet = Stock.sheet("sheet", "board", sheetLength - kerf, sheetWidth - kerf, 0);
      return new CutRequest(
          List.of(new Board("board", 18, 685)),
          parts,
          List.of(sheet),
          Kerfs.both(kerf),
          SawLimits.SMALL_SAW);
    }

    /** Row of the table: the set, for classes with the class, and the rotation. */
    String row() {
      String group = set.equals("class") ? "class " + name.substring(0, 2) : set;
      return group + (turning ? ", turning" : ", fixed");
    }
  }

  private PublishedSets() {}

  private static List<Instance> all;

  static synchronized List<Instance> all() {
    if (all == null) {
      all = List.copyOf(load());
    }
    return all;
  }

  private static List<Instance> load() {
    Map<String, List<CSVRecord>> sheets = grouped("sheets.csv");
    Map<String, List<CSVRecord>> items = grouped("items.csv");
    List<Instance> instances = new ArrayList<>();
    for (CSVRecord best : read("best-known.csv")) {
      CSVRecord sheet = sheets.get(key(best)).get(0);
      List<int[]> own =
          items.get(key(best)).stream()
              .map(i -> new int[] {number(i, "length"), number(i, "width"), number(i, "demand")})
              .toList();
      instances.add(
          new Instance(
              best.get("set"),
              best.get("instance"),
              best.get("rotation").equals("1"),
              number(sheet, "sheet_length"),
              number(sheet, "sheet_width"),
              own,
              number(best, "lower_bound"),
              number(best, "best_known"),
              best.get("status").equals("optimal")));
    }
    return instances;
  }

  private static String key(CSVRecord line) {
    return line.get("set") + "/" + line.get("instance");
  }

  private static Map<String, List<CSVRecord>> grouped(String name) {
    return read(name).stream().collect(Collectors.groupingBy(PublishedSets::key));
  }

  private static int number(CSVRecord line, String column) {
    return Integer.parseInt(line.get(column));
  }

  private static List<CSVRecord> read(String name) {
    try (InputStream in = PublishedSets.class.getResourceAsStream("/packing/" + name)) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(new InputStreamReader(in, StandardCharsets.UTF_8))
          .getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
