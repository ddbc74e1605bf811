package sawstead.house.flawed.export;

import sawstead.house.flawed.book.Page;

/** Part of a house that is wrong on purpose: sees its neighbour, which sees it. */
public final class Ledger {
  Page page;
}
