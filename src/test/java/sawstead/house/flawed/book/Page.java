package sawstead.house.flawed.book;

import java.util.logging.Logger;
import sawstead.house.flawed.export.Ledger;

/** Part of a house that is wrong on purpose: sees its neighbour, which sees it, and logs. */
public final class Page {
  Ledger ledger;
  Logger logger = Logger.getLogger("page");
}
