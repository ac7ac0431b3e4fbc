package thwartwise.loadcase;

import java.util.List;
import thwartwise.boat.SeatPositions.Packing;

/** The people aboard, and their places. */
public sealed interface Crew {

  /** Not stated. */
  record NotStated() implements Crew {}

  record Nobody() implements Crew {}

  /** People by name, each at a place. */
  record Named(List<Seat> seats) implements Crew {
    public Named {
      seats = List.copyOf(seats);
    }
  }

  /** A person at a place. */
  record Seat(String person, String place) {}

  /**
   * A number of people of one mass.
   *
   * @param places the place of each of them
   * @param packing how they share the length of their places
   */
  record Alike(int people, double eachKg, List<String> places, Packing packing) implements Crew {
    public Alike {
      places = List.copyOf(places);
    }
  }

  /** Words, in an older record. */
  record Stated(String words) implements Crew {}
}
