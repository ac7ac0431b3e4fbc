package thwartwise.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import thwartwise.boat.Place;

/** The seats of a borrowed boat: the foremost, the aftmost, and any between, all as high. */
record BorrowedSeats(Replay replay, Tape tape, Outline outline, List<String> assumed) {
  /** What a person takes of a seat, across. */
  private static final double EACH = 0.45;

  /** From the middle of a person who sits right out to the outside of the rail. */
  private static final double NEAREST = 0.12;

  private static final double LEAST_REACH = 0.05;
  private static final int MOST_SIDE_BY_SIDE = 2;

  List<Place> places() {
    int seats =
        replay.ask(
            Words.whole("short.seats", "How many seats across", 1, 4)
                .how("Thwarts and benches people sit on; not the floor, not a deck.")
                .why("People are put at seats, and told which."));
    List<Double> along = seats == 1 ? List.of(along("seat", "Seat")) : spread(seats);
    double high = high();
    assumed.add(
        "Seats: all as high as the highest, those between the ends evenly spaced, and people"
            + " sitting as far out on them as the rail lets them; not measured.");
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
        entry(key, subject).unless(x -> Slips.backward("The foremost seat", aft, x, tape)));
  }

  private Entry<Double> entry(String key, String subject) {
    return tape.length("short.seat." + key, subject + ", forward of the aft end")
        .how("Tape from the aft end, level, to the middle of the seat.")
        .why("Weight at the ends sinks that end.")
        .within(tape.length(outline.aft(), outline.fore(), "length of the hull"));
  }

  private double high() {
    return replay.ask(
        tape.length("short.seat.high", "Height of the highest seat")
            .how("From the lowest point of the bottom, inside, straight up to the top of it.")
            .show(Sketches.SEAT)
            .why("The higher people sit the sooner it tips.")
            .within(tape.length(0.05, outline.highest() + 0.1, "height of seats in such a boat")));
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
