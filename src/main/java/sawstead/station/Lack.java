package sawstead.station;

/** What a joint can lack, by the words in which the joinery tells it. */
enum Lack {
  THREAD(
      Remark.Weight.NOTE,
      "joint-thread",
      "drive such screws snug and no further; use bolts where much hangs on them"),
  SOME(Remark.Weight.NOTE, "joint-fewer", "glue carries these joints; clamp them until it has set"),
  ALL(
      Remark.Weight.MIND,
      "joint-short",
      "see that the other joints of these parts carry them, or make the parts wider"),
  FIT(
      Remark.Weight.MIND,
      "joint-short",
      "add a screw length to the workshop's list, or choose another joint");

  final Remark.Weight weight;
  final String rule;
  final String remedy;

  Lack(Remark.Weight weight, String rule, String remedy) {
    this.weight = weight;
    this.rule = rule;
    this.remedy = remedy;
  }

  static Lack of(String words) {
    if (words.contains("holds only")) {
      return THREAD;
    }
    if (words.startsWith("only ")) {
      return words.startsWith("only 0") ? ALL : SOME;
    }
    return FIT;
  }
}
