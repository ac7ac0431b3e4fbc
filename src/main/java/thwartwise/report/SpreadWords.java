package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;
import thwartwise.spread.BoatSpread;

/** How sure the answer is, and what measuring again could gain, in sentences. */
record SpreadWords(Boat boat, BoatSpread spread, UnitFormat units) {
  private static final String NO_BETTER = "Measuring better would not let anybody go";

  /** The crew in words: "two adults", "one person of 78 kg", "nobody". */
  private String crew(int people, double each) {
    if (people == 0) {
      return "nobody";
    }
    return each < spread.adult() ? "one person of " + units.mass(each, Side.DOWN) : adults(people);
  }

  private static String adults(int people) {
    return FigureText.adults(people);
  }

  String recommended() {
    return Sentence.capital(crew(spread.recommended(), spread.each()));
  }

  /** In how many of 100 boats the crew would be smaller. */
  String fewer() {
    int people = spread.recommended();
    double lost = 1 - spread.share(people);
    if (lost == 0) {
      return "in fewer than 1 of 100 boats measured like this it would be fewer";
    }
    double beyond = people == 1 ? 0 : 1 - spread.share(people - 1);
    String then = people == 1 ? "none" : beyond > 0 ? "fewer" : FigureText.count(people - 1);
    return "in " + lost(spread.share(people)) + " it would be " + then;
  }

  /** The share of boats in which a limit is not met: "6 of 100 boats measured like this". */
  static String lost(double share) {
    return upToHundred(1 - share) + " of 100 boats measured like this";
  }

  private static int upToHundred(double share) {
    return (int) Math.ceil(100 * share - 1e-9);
  }

  /** What the search alone would have allowed. */
  String lowered() {
    return Sentence.capital(crew(spread.searched(), spread.searchedEach()))
        + " would be too many: fewer than 95 of 100 boats measured like this carry them";
  }

  /**
   * How sure the answer is, and the one measurement most worth repeating if that could gain a
   * person.
   */
  List<String> onScreen() {
    List<String> words = new ArrayList<>();
    if (spread.recommended() > 0) {
      words.add(recommended() + "; " + fewer());
    }
    if (spread.isLowered()) {
      words.add(lowered());
    }
    spread.again().stream()
        .filter(again -> again.people() > spread.recommended())
        .findFirst()
        .map(again -> InputWords.betterWay(again, boat) + ": could be " + adults(again.people()))
        .map(Sentence::capital)
        .ifPresent(words::add);
    return words.isEmpty() ? List.of(NO_BETTER) : words;
  }

  String gain(int people) {
    return people > spread.recommended()
        ? "If it comes out well, inspect may then say " + adults(people)
        : "";
  }
}
