package sawstead.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sawstead.walk.Drawing;
import sawstead.walk.Drawing.Stroke;

/**
 * A drawing in characters, as every terminal has them. What to measure is an arrow of `=` or `:`.
 */
final class TextDrawing {
  private final char[][] page = new char[Drawing.HIGH + 1][Drawing.WIDE + 1];

  private TextDrawing() {
    for (char[] line : page) {
      Arrays.fill(line, ' ');
    }
  }

  /** The lines, without what is blank at their ends; blank ones above and below left out. */
  static List<String> lines(Drawing drawing) {
    TextDrawing text = new TextDrawing();
    drawing.strokes().forEach(text::draw);
    drawing.arrow().ifPresent(text::arrow);
    List<String> lines = new ArrayList<>();
    for (char[] line : text.page) {
      lines.add(new String(line).stripTrailing());
    }
    while (!lines.isEmpty() && lines.get(lines.size() - 1).isEmpty()) {
      lines.remove(lines.size() - 1);
    }
    while (!lines.isEmpty() && lines.get(0).isEmpty()) {
      lines.remove(0);
    }
    return lines;
  }

  private void draw(Stroke stroke) {
    if (stroke instanceof Stroke.Line line) {
      run(line, plain(line));
    } else if (stroke instanceof Stroke.Box box) {
      box(box);
    } else if (stroke instanceof Stroke.Round round) {
      round(round);
    } else if (stroke instanceof Stroke.Word word) {
      for (int k = 0; k < word.text().length(); k++) {
        put(word.x() + k, word.y(), word.text().charAt(k));
      }
    }
  }

  private static char plain(Stroke.Line line) {
    if (line.fromY() == line.toY()) {
      return '-';
    }
    if (line.fromX() == line.toX()) {
      return '|';
    }
    boolean falls = (line.toX() - line.fromX()) * (line.toY() - line.fromY()) > 0;
    return falls ? '\\' : '/';
  }

  private void box(Stroke.Box box) {
    double right = box.x() + box.width();
    double low = box.y() + box.height();
    run(new Stroke.Line(box.x(), box.y(), right, box.y()), '-');
    run(new Stroke.Line(box.x(), low, right, low), '-');
    run(new Stroke.Line(box.x(), box.y(), box.x(), low), '|');
    run(new Stroke.Line(right, box.y(), right, low), '|');
    for (double x : new double[] {box.x(), right}) {
      put(x, box.y(), '+');
      put(x, low, '+');
    }
  }

  private void round(Stroke.Round round) {
    if (round.radius() < 1) {
      put(round.x(), round.y(), 'o');
      return;
    }
    int steps = (int) (40 * round.radius());
    for (int k = 0; k < steps; k++) {
      double angle = 2 * Math.PI * k / steps;
      put(
          round.x() + 2 * round.radius() * Math.cos(angle),
          round.y() + round.radius() * Math.sin(angle),
          '.');
    }
  }

  private void arrow(Stroke.Line arrow) {
    boolean level = arrow.fromY() == arrow.toY();
    boolean upright = arrow.fromX() == arrow.toX();
    run(arrow, level ? '=' : upright ? ':' : '*');
    put(arrow.fromX(), arrow.fromY(), level ? '<' : upright ? '^' : '*');
    put(arrow.toX(), arrow.toY(), level ? '>' : upright ? 'v' : '*');
  }

  private void run(Stroke.Line line, char with) {
    double dx = line.toX() - line.fromX();
    double dy = line.toY() - line.fromY();
    int steps = (int) Math.max(1, Math.max(Math.abs(dx), Math.abs(dy)));
    for (int k = 0; k <= steps; k++) {
      put(line.fromX() + dx * k / steps, line.fromY() + dy * k / steps, with);
    }
  }

  private void put(double x, double y, char c) {
    int column = (int) Math.round(x);
    int line = (int) Math.round(y);
    if (line >= 0 && line < page.length && column >= 0 && column < page[line].length) {
      char there = page[line][column];
      boolean crossed = c == '-' && there == '|' || c == '|' && there == '-' || there == '+';
      page[line][column] = crossed && (c == '-' || c == '|') ? '+' : c;
    }
  }
}
