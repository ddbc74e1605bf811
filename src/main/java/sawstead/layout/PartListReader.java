package sawstead.layout;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * Reads a plain part list: UTF-8 CSV with the header {@code part,length,width,quantity,grain} in
 * any order; {@code quantity} (1) and {@code grain} (free) may be left out. Lengths are millimetres
 * with a decimal point, whatever the language of the machine. Every bad line is reported in one
 * run, with its line number.
 */
public final class PartListReader {
  private static final List<String> COLUMNS =
      List.of("part", "length", "width", "quantity", "grain");
  private static final Set<String> NEEDED = Set.of("part", "length", "width");
  private static final long LARGEST_FILE = 10L << 20;

  private final String file;
  private final String board;
  private final List<Complaint> complaints = new ArrayList<>();

  private PartListReader(String file, String board) {
    this.file = file;
    this.board = board;
  }

  /**
   * Reads a file.
   *
   * @param board the board all parts are made of
   * @throws CutRequestException when it cannot be read or has bad lines
   */
  public static List<Part> read(Path file, String board) throws CutRequestException {
    PartListReader reader = new PartListReader(file.toString(), board);
    return reader.parse(new StringReader(reader.text(file)));
  }

  private String text(Path path) throws CutRequestException {
    try {
      if (Files.isDirectory(path) || Files.size(path) > LARGEST_FILE) {
        throw stop("unreadable", "this is no part list of at most 10 MB", file, "name a CSV file");
      }
      byte[] bytes = Files.readAllBytes(path);
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw stop("encoding", "the file is not UTF-8 text", file, "save it as CSV in UTF-8");
    } catch (IOException e) {
      throw stop("unreadable", "the file cannot be read", file, "check its name and permissions");
    }
  }

  private static CutRequestException stop(String code, String what, String where, String remedy) {
    return new CutRequestException(new Complaint(code, what, where, remedy));
  }

  private List<Part> parse(Reader text) throws CutRequestException {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .setTrim(true)
            .get();
    List<Part> parts = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      List<String> header = null;
      for (CSVRecord line : parser) {
        if (header == null) {
          header = header(line, parser.getCurrentLineNumber());
        } else {
          part(header, line, parser.getCurrentLineNumber(), parts);
        }
      }
      if (header == null) {
        throw stop("no-parts", "the list is empty", file, "begin it with part,length,width");
      }
    } catch (IOException | UncheckedIOException e) {
      throw stop(
          "csv", "the list is no proper CSV (a quote that does not end?)", file, "correct it");
    }
    if (complaints.isEmpty() && parts.isEmpty()) {
      throw stop("no-parts", "the list has no parts", file, "add a line below the header");
    }
    if (!complaints.isEmpty()) {
      throw new CutRequestException(complaints);
    }
    return parts;
  }

  private List<String> header(CSVRecord line, long number) throws CutRequestException {
    List<String> header = new ArrayList<>();
    for (String cell : line) {
      String column = cell.toLowerCase(Locale.ROOT);
      if (!COLUMNS.contains(column)) {
        say("column", "there is no column '" + cell + "'", number, columnRemedy(cell, column));
      } else if (header.contains(column)) {
        say("column", "column '" + column + "' is there twice", number, "keep one of the two");
      }
      header.add(column);
    }
    for (String column : COLUMNS) {
      if (NEEDED.contains(column) && !header.contains(column)) {
        say(
            "column",
            "column '" + column + "' is missing",
            number,
            "begin the list with part,length,width,quantity,grain");
      }
    }
    if (!complaints.isEmpty()) {
      throw new CutRequestException(complaints);
    }
    return header;
  }

  private static String columnRemedy(String cell, String column) {
    if (cell.contains(";") || cell.contains("\t")) {
      return "separate columns by commas and write decimals with a point";
    }
    String nearest = COLUMNS.get(0);
    int best = Integer.MAX_VALUE;
    for (String known : COLUMNS) {
      int distance = LevenshteinDistance.getDefaultInstance().apply(column, known);
      if (distance < best) {
        best = distance;
        nearest = known;
      }
    }
    return best <= 2
        ? "write '" + nearest + "'"
        : "use only part, length, width, quantity and grain";
  }

  private void part(List<String> header, CSVRecord line, long number, List<Part> parts) {
    if (line.size() != header.size()) {
      say(
          "cells",
          "the line has " + line.size() + " cells, the header has " + header.size(),
          number,
          "write one cell for each column; a decimal comma splits a number in two, use a point");
      return;
    }
    int before = complaints.size();
    String name = cell(header, line, "part", "");
    if (name.isEmpty()) {
      say("name", "the part has no name", number, "write one in column part");
    }
    double length = length(header, line, "length", number, name);
    double width = length(header, line, "width", number, name);
    int quantity = quantity(cell(header, line, "quantity", "1"), number, name);
    Grain grain = grain(cell(header, line, "grain", "free"), number, name);
    if (complaints.size() == before) {
      parts.add(new Part(name, length, width, quantity, grain, board, file + ":" + number));
    }
  }

  private static String cell(List<String> header, CSVRecord line, String column, String missing) {
    int at = header.indexOf(column);
    return at < 0 || line.get(at).isEmpty() ? missing : line.get(at);
  }

  private double length(
      List<String> header, CSVRecord line, String column, long number, String name) {
    String text = cell(header, line, column, "");
    try {
      double value = Millimetres.parse(text);
      if (value > 0 && value <= RequestCheck.LONGEST) {
        return value;
      }
    } catch (NumberFormatException e) {
      // said below, together with numbers out of range
    }
    say(
        "number",
        "the " + column + " of part '" + name + "' is '" + text + "'",
        number,
        "write millimetres above 0 and at most 20000 with a decimal point, for example 396.5");
    return Double.NaN;
  }

  private int quantity(String text, long number, String name) {
    try {
      int value = new BigDecimal(text).intValueExact();
      if (value >= 1 && value <= RequestCheck.MOST_PIECES) {
        return value;
      }
    } catch (ArithmeticException | NumberFormatException e) {
      // said below, together with numbers out of range
    }
    say(
        "quantity",
        "the quantity of part '" + name + "' is '" + text + "'",
        number,
        "write a whole number from 1 to " + RequestCheck.MOST_PIECES);
    return 0;
  }

  private Grain grain(String text, long number, String name) {
    for (Grain grain : Grain.values()) {
      if (grain.word().equalsIgnoreCase(text)) {
        return grain;
      }
    }
    say(
        "grain-word",
        "the grain of part '" + name + "' is '" + text + "'",
        number,
        "write along, across or free");
    return Grain.FREE;
  }

  private void say(String code, String what, long number, String remedy) {
    complaints.add(new Complaint(code, what, file + ":" + number, remedy));
  }
}
