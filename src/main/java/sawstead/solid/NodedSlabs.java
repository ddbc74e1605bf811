package sawstead.solid;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Slabs of any linework: conducts the steps from noding to the triangulated plan. */
final class NodedSlabs {
  private NodedSlabs() {}

  static Slabs of(Storeys storeys) {
    Linework linework = Linework.noded(storeys.rings());
    Cells cells = Cells.of(linework);
    List<BitSet> columns = new ArrayList<>();
    for (BitSet inside : cells.inside()) {
      columns.add(storeys.column(inside));
    }
    Plan plan = CellTriangles.plan(linework, cells, columns);
    int levels = storeys.heights().length - 1;
    return new Slabs(storeys.heights(), plan, linework.arcGain(cells, columns, levels));
  }
}
