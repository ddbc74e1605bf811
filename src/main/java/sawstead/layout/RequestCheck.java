package sawstead.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Everything that makes a request impossible, found before planning; reports all at once. */
final class RequestCheck {
  /** Longest side and most pieces that the planner takes on. */
  static final double LONGEST = 20_000;

  static final int MOST_PIECES = 20_000;

  private final CutRequest request;
  private final List<Complaint> complaints = new ArrayList<>();
  private final Map<String, Board> boards = new HashMap<>();

  private RequestCheck(CutRequest request) {
    this.request = request;
  }

  static void check(CutRequest request) throws CutRequestException {
    RequestCheck check = new RequestCheck(request);
    check.boards();
    check.kerfs();
    check.stock();
    check.parts();
    if (check.complaints.isEmpty()) {
      check.supply();
    }
    if (!check.complaints.isEmpty()) {
      throw new CutRequestException(check.complaints);
    }
  }

  private void say(String code, String what, String where, String remedy) {
    complaints.add(new Complaint(code, what, where, remedy));
  }

  private void boards() {
    for (Board board : request.boards()) {
      if (boards.put(board.name(), board) != null) {
        say(
            "board-twice",
            "board '" + board.name() + "' is listed twice",
            board.name(),
            "give each board a name of its own");
      }
      if (!size(board.thickness()) || !(board.density() >= 0 && board.density() < 30_000)) {
        say(
            "board-figures",
            "board '" + board.name() + "' has an impossible thickness or density",
            board.name(),
            "write the thickness in mm and the density in kg per cubic metre");
      }
    }
  }

  private void kerfs() {
    for (double kerf : new double[] {request.kerfs().guided(), request.kerfs().table()}) {
      if (!(kerf >= 0 && kerf <= 20)) {
        say(
            "kerf",
            "a kerf of " + mm(kerf) + " is not possible",
            "kerf",
            "write the width of the cut in mm, 0 to 20, usually 2.2 to 3.2");
        return;
      }
    }
  }

  private void stock() {
    Set<String> names = new HashSet<>();
    for (Stock stock : request.stock()) {
      if (!names.add(stock.name())) {
        say(
            stock.offcut() ? "offcut-twice" : "stock-twice",
            (stock.offcut() ? "offcut '" : "stock '") + stock.name() + "' is listed twice",
            stock.where(),
            "list it once and raise its quantity, or name the second one differently");
      }
      if (!boards.containsKey(stock.board())) {
        say(
            "stock-board",
            "stock '" + stock.name() + "' is of board '" + stock.board() + "', which is not listed",
            stock.where(),
            "add the board, or correct its name");
      }
      boolean sizes = size(stock.length()) && size(stock.width());
      if (!sizes || stock.quantity() < 1 || !(stock.price() >= 0 && stock.price() < 1e9)) {
        say(
            "stock-figures",
            "stock '" + stock.name() + "' has an impossible size, quantity or price",
            stock.where(),
            "write sizes in mm, above 0 and at most "
                + mm(LONGEST)
                + ", and a quantity of 1 or more");
      } else if (!(stock.edge() >= 0) || stock.usableLength() <= 0 || stock.usableWidth() <= 0) {
        say(
            "trim",
            "a trim of "
                + mm(stock.edge())
                + " at each edge"
                + (stock.defects().isEmpty() ? "" : " and what lies beyond its defects")
                + " leaves nothing of '"
                + stock.name()
                + "'",
            stock.where(),
            stock.defects().isEmpty()
                ? "write a trim of 0 or a few mm"
                : "list the sound part of it as an offcut of its own");
      }
    }
  }

  private void parts() {
    if (request.parts().isEmpty()) {
      say("no-parts", "there is nothing to cut", "list", "add at least one part");
    }
    long pieces = 0;
    for (Part part : request.parts()) {
      if (!size(part.length()) || !size(part.width()) || part.quantity() < 1) {
        say(
            "part-figures",
            "part '" + part.name() + "' has an impossible size or quantity",
            part.where(),
            "write sizes in mm, above 0 and at most "
                + mm(LONGEST)
                + ", and a quantity of 1 or more");
        continue;
      }
      pieces += part.quantity();
      part(part);
    }
    if (pieces > MOST_PIECES) {
      say(
          "too-many",
          "the list asks for " + pieces + " pieces, more than " + MOST_PIECES,
          "list",
          "cut it in several lists");
    }
  }

  private void part(Part part) {
    double kerf = request.kerfs().wider();
    if (kerf >= Math.min(part.length(), part.width())) {
      say(
          "kerf-wider",
          "the kerf of " + mm(kerf) + " is not narrower than part '" + part.name() + "'",
          part.where(),
          "correct the part's size (" + size(part) + ") or the kerf");
      return;
    }
    List<Stock> own = request.stock().stream().filter(s -> s.board().equals(part.board())).toList();
    if (own.isEmpty()) {
      say(
          "no-stock",
          "there is no stock of board '" + part.board() + "' for part '" + part.name() + "'",
          part.where(),
          "add a sheet of that board, or make the part of another");
      return;
    }
    if (own.stream().noneMatch(s -> fits(part, part.grain(), s))) {
      tooLarge(part, own);
    }
  }

  /** Whether every part fits some stock of its board. */
  static boolean fitAll(CutRequest request) {
    return request.parts().stream()
        .allMatch(
            part ->
                request.stock().stream()
                    .filter(s -> s.board().equals(part.board()))
                    .anyMatch(s -> fits(part, part.grain(), s)));
  }

  private void tooLarge(Part part, List<Stock> own) {
    String usable =
        mm(own.stream().mapToDouble(Stock::usableLength).max().orElse(0))
            + " x "
            + mm(own.stream().mapToDouble(Stock::usableWidth).max().orElse(0));
    Grain other = part.grain() == Grain.ALONG ? Grain.ACROSS : Grain.ALONG;
    if (part.grain() != Grain.FREE && own.stream().anyMatch(s -> fits(part, other, s))) {
      say(
          "grain",
          "part '"
              + part.name()
              + "' ("
              + size(part)
              + ") fits no sheet with grain "
              + part.grain().word(),
          part.where(),
          "write grain "
              + other.word()
              + " or free, or use a sheet whose grain runs the other way");
      return;
    }
    say(
        "too-large",
        "part '" + part.name() + "' (" + size(part) + ") is larger than any sheet",
        part.where(),
        "make it at most "
            + usable
            + " (inside the trim), join it from two, or add a larger sheet");
  }

  private static boolean fits(Part part, Grain grain, Stock stock) {
    int length = Steps.up(part.length());
    int width = Steps.up(part.width());
    int sheetLength = Steps.down(stock.usableLength());
    int sheetWidth = Steps.down(stock.usableWidth());
    boolean along = length <= sheetLength && width <= sheetWidth;
    boolean across = width <= sheetLength && length <= sheetWidth;
    return (grain != Grain.ACROSS && along) || (grain != Grain.ALONG && across);
  }

  /** Total area: what is certainly not enough is said before any search. */
  private void supply() {
    for (Board board : request.boards()) {
      double need = 0;
      for (Part part : request.parts()) {
        if (part.board().equals(board.name())) {
          need += part.length() * part.width() * part.quantity();
        }
      }
      double have = 0;
      for (Stock stock : request.stock()) {
        if (stock.board().equals(board.name())) {
          have += stock.usableLength() * stock.usableWidth() * stock.quantity();
        }
      }
      if (need > have) {
        notEnough(complaints, board.name());
      }
    }
  }

  static void notEnough(List<Complaint> complaints, String board) {
    complaints.add(
        new Complaint(
            "not-enough",
            "the stock of board '" + board + "' is not enough for all parts",
            board,
            "add sheets or raise their quantity"));
  }

  private static boolean size(double mm) {
    return mm > 0 && mm <= LONGEST;
  }

  private static String size(Part part) {
    return mm(part.length()) + " x " + mm(part.width());
  }

  private static String mm(double value) {
    return Lengths.text(value) + " mm";
  }
}
