package thwartwise.walk.borrowed;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.Simplification;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Place;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.measure.ChoiceReader;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;
import thwartwise.walk.questions.FillingQuestions;
import thwartwise.walk.questions.Outline;

/** One chamber of a borrowed boat. It is asked for only if a written leak test of it is shown. */
record BorrowedChamber(
    Replay replay,
    QuantityQuestions quantities,
    Outline outline,
    List<Place> places,
    LocalDate today,
    List<Assumption> assumed) {

  private static final String BOW = "bow";
  private static final String STERN = "stern";

  /** What is shown as evidence that the flooded boat holds people up. */
  enum Shown {
    NOTHING,
    PAPER,
    TRIAL
  }

  private static final ChoiceReader<Shown> SHOWN =
      ChoiceReader.of(Shown.NOTHING, "nothing", "no", "n", "none")
          .or(Shown.PAPER, "paper", "yes", "y", "test", "leak test")
          .or(Shown.TRIAL, "trial");

  Shown asked() {
    return replay.ask(
        WordQuestions.choice("short.tested", "What shows that it holds you up full", SHOWN)
            .how(
                "paper: you hold a leak test of a chamber, shut as under way, ten minutes or",
                "more, at most 1 litre let in, with a day and a name; the largest, if there",
                "are several; none that holds a battery or a charger.",
                "trial: today, in knee-deep water, those who go sat in it full to the brim",
                "for ten minutes, and somebody looked. nothing: the page tells how.")
            .why("A chamber nobody tested counts for nothing, however tight it looks.")
            .orElse(Shown.NOTHING, "nothing"));
  }

  List<Chamber> chambers(Shown shown) {
    if (shown != Shown.PAPER) {
      assumed.add(new Assumption.Simplified(Simplification.NO_LEAK_TEST_SHOWN));
      return List.of();
    }
    String where = where();
    Span along = along(where, length(where));
    double top = top(where);
    assumed.add(new Assumption.Simplified(Simplification.LEAK_TEST_ON_PAPER));
    Filling tested = new Filling.Air(Seal.PROVEN, Optional.of(test()));
    Box box = new Box(along, Span.ALL, new Span(outline.lowest(), top));
    return List.of(new Chamber("chamber at the " + where, box, tested, Optional.empty(), false));
  }

  /** The chamber is assumed to reach from side to side; one under a side bench does not. */
  private List<Place> across() {
    return places.stream().filter(p -> !p.isToOneSide()).toList();
  }

  private String where() {
    ChoiceReader<String> spots = ChoiceReader.of(BOW, BOW).or(STERN, STERN);
    for (Place place : across()) {
      spots = spots.or(place.name(), place.name());
    }
    return replay.ask(
        WordQuestions.choice("short.chamber.where", "That chamber is at the", spots)
            .how("At the bow or the stern from side to side, or the box under one of the seats.")
            .why("Where it lifts decides whether the swamped boat lies level.")
            .row(
                "The chamber",
                List.of("bow, stern, seat", "length", "height of lid", "day", "by")));
  }

  private double length(String where) {
    return replay.ask(
        quantities
            .length("short.chamber.length", "Its length, fore and aft")
            .how("Along the middle, outside to outside of its walls; the shorter if it slants.")
            .why("With the shape of the hull it gives the litres that count.")
            .within(
                quantities.length(0.05, (outline.fore() - outline.aft()) / 2, "half of the boat")));
  }

  private Span along(String where, double length) {
    if (where.equals(BOW)) {
      return new Span(outline.fore() - length, outline.fore());
    }
    if (where.equals(STERN)) {
      return new Span(outline.aft(), outline.aft() + length);
    }
    double middle =
        places.stream()
            .filter(p -> p.name().equals(where))
            .mapToDouble(Place::x)
            .findFirst()
            .orElseThrow();
    return new Span(
        Math.max(outline.aft(), middle - length / 2),
        Math.min(outline.fore(), middle + length / 2));
  }

  private double top(String where) {
    double most =
        places.stream()
            .filter(p -> p.name().equals(where))
            .mapToDouble(Place::z)
            .findFirst()
            .orElse(outline.highest());
    return replay.ask(
        quantities
            .length("short.chamber.top", "Height of its lid")
            .how("From the lowest point of the bottom straight up to the underside of its top.")
            .why("With the shape of the hull it gives the litres that count.")
            .within(quantities.length(0.05, most, "height of what it lies under")));
  }

  /** The test on the paper, taken at the poor end of what the question asks for. */
  private SealTest test() {
    FillingQuestions asked = new FillingQuestions(replay, quantities, today);
    LocalDate day = asked.day("short.test", "The paper");
    return new SealTest(
        day,
        "as the paper shown says",
        SealTest.LEAST_MINUTES,
        SealTest.MOST_LITRES,
        asked.by("short.test", "The chamber"));
  }
}
