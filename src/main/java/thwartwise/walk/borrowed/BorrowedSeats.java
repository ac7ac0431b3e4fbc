package thwartwise.walk.borrowed;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.Simplification;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.geometry.Span;
import thwartwise.measure.ChoiceReader;
import thwartwise.walk.engine.OrderedLengths;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;
import thwartwise.walk.questions.Outline;
import thwartwise.walk.questions.Sketches;

/** The seats of a borrowed boat: the foremost, the aftmost and any between, all at one height. */
record BorrowedSeats(
    Replay replay, QuantityQuestions quantities, Outline outline, List<Assumption> assumed) {
  /** The width of a person on a seat. */
  private static final double EACH = 0.45;

  /** The distance from the middle of a person who sits right out to the outside of the rail. */
  private static final double NEAREST = 0.12;

  /** How much farther inboard than right out people on a bench may lean, m (judgement). */
  private static final double INWARD = 0.25;

  private static final double LEAST_REACH = 0.05;
  private static final int MOST_SIDE_BY_SIDE = 2;

  List<Place> places() {
    int seats =
        replay.ask(
            WordQuestions.choice(
                    "short.seats", "How many seats across, or are they along the sides", SEATS)
                .how(
                    "Thwarts and benches people sit on; not the floor, not a deck. sides: there are",
                    "benches along both sides; any seats across stay empty then.")
                .show(Sketches.PLACES)
                .why("Each person gets a seat, and the page names it.")
                .row(
                    "Seats across",
                    List.of(
                        "1 to 4, or sides", "aftmost, forward", "foremost, forward", "height")));
    return seats == ALONG_THE_SIDES ? sides() : across(seats);
  }

  private static final int ALONG_THE_SIDES = 0;

  private static final ChoiceReader<Integer> SEATS =
      ChoiceReader.of(1, "1")
          .or(2, "2")
          .or(3, "3")
          .or(4, "4")
          .or(ALONG_THE_SIDES, "sides", "side", "along the sides");

  /** A bench along either side, as far out as the rail allows anywhere along it. */
  private List<Place> sides() {
    double aft = along("aft", "Benches, aftmost person");
    double fore = along("fore", "Benches, foremost person", aft);
    double high = high();
    assumed.add(new Assumption.SideBenches(INWARD));
    double rail = Math.max(outline.railAt(aft), outline.railAt(fore));
    double out = Math.max(LEAST_REACH, rail - NEAREST);
    Span port = new Span(Math.max(LEAST_REACH, out - INWARD), out);
    int people = (int) Math.min(MOST_SIDE_BY_SIDE, 1 + Math.floor((fore - aft) / EACH));
    Span along = new Span(aft, fore);
    return List.of(
        new Place("port bench", along, port, high, people, Posture.SITTING),
        new Place("starboard bench", along, port.mirrored(), high, people, Posture.SITTING));
  }

  private List<Place> across(int seats) {
    List<Double> along = seats == 1 ? List.of(along("seat", "Seat")) : spread(seats);
    double high = high();
    assumed.add(new Assumption.Simplified(Simplification.SEATS_EVENLY_SPACED));
    return IntStream.range(0, seats).mapToObj(i -> place(i, seats, along.get(i), high)).toList();
  }

  private List<Double> spread(int seats) {
    double aft = along("aft", "Aftmost seat");
    double fore = along("fore", "Foremost seat", aft);
    List<Double> along = new ArrayList<>();
    for (int i = 0; i < seats; i++) {
      along.add(aft + (fore - aft) * i / (seats - 1));
    }
    return along;
  }

  private double along(String key, String subject) {
    return replay.ask(entry(key, subject));
  }

  private double along(String key, String subject, double aft) {
    return replay.ask(
        entry(key, subject)
            .unless(x -> OrderedLengths.backward("The foremost seat", aft, x, quantities)));
  }

  private QuestionDefinition<Double> entry(String key, String subject) {
    return quantities
        .length("short.seat." + key, subject + ", forward of the aft end")
        .how("Tape from the aft end, level, to the middle of the seat.")
        .why("Weight at the ends sinks that end.")
        .within(quantities.length(outline.aft(), outline.fore(), "length of the hull"));
  }

  private double high() {
    return replay.ask(
        quantities
            .length("short.seat.high", "Height of the highest seat")
            .how("From the lowest point of the bottom, inside, straight up to the top of it.")
            .show(Sketches.SEAT)
            .why("The higher people sit the sooner it tips.")
            .within(
                quantities.length(
                    0.05, outline.highest() + 0.1, "height of seats in such a boat")));
  }

  private Place place(int i, int seats, double x, double high) {
    double rail = outline.railAt(x);
    int people = (int) Math.max(1, Math.min(MOST_SIDE_BY_SIDE, Math.floor(2 * rail / EACH)));
    return new Place(name(i, seats), x, high, Math.max(LEAST_REACH, rail - NEAREST), people);
  }

  static String name(int i, int seats) {
    if (seats == 1) {
      return "seat";
    }
    return i == 0 ? "aft seat" : i == seats - 1 ? "fore seat" : middle(i, seats);
  }

  private static String middle(int i, int seats) {
    return seats == 3 ? "middle seat" : i == 1 ? "second seat from aft" : "third seat from aft";
  }
}
