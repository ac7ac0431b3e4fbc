package thwartwise.boat;

import java.util.ArrayList;
import java.util.List;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * The positions of people at one place, from aft to fore and, abreast, from starboard to port.
 *
 * <p>Abreast they sit in lanes of equal width; on a place to one side the first sits right out,
 * because people lean back on a side seat there. A place with a length holds rows, a seat width
 * apart where there is room for it.
 */
public final class SeatPositions {
  /** The width of one person on a bench: BinSchUO annex X 9.05 (READ). */
  public static final double SEAT_WIDTH = 0.45;

  /** The tape's error, which does not cost a seat, m. */
  private static final double TAPE = 1e-9;

  private final Place place;
  private final int people;
  private final Packing packing;

  private SeatPositions(Place place, int people, Packing packing) {
    this.place = place;
    this.people = people;
    this.packing = packing;
  }

  /** The positions; the height of each is that of the place. */
  public static List<Vector3> of(Place place, int people, Packing packing) {
    return people == 0 ? List.of() : new SeatPositions(place, people, packing).all();
  }

  private List<Vector3> all() {
    int rows = rows();
    List<Vector3> all = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      double x = x(row, rows);
      lanes(inRow(row, rows)).forEach(y -> all.add(Vector3.of(x, y, place.z())));
    }
    return all;
  }

  private int rows() {
    if (!place.hasLength()) {
      return 1;
    }
    int least = (people + abreast() - 1) / abreast();
    return isInFile() ? Math.max(least, Math.min(people, seats(place.along()))) : least;
  }

  /**
   * Whether they sit one behind the other, as far as there is room; people packed to an end sit
   * abreast.
   */
  private boolean isInFile() {
    boolean isLong = place.along().length() > place.across().length();
    return place.isToOneSide() || isLong && packing == Packing.SPREAD;
  }

  private int abreast() {
    return seats(place.across());
  }

  /** The number of people for a stretch for their middles. */
  private static int seats(Span stretch) {
    return 1 + (int) Math.floor(stretch.length() / SEAT_WIDTH + TAPE);
  }

  /** The number in a row; the fuller rows are at the end to which everybody is packed. */
  private int inRow(int row, int rows) {
    int fromEnd = packing == Packing.FORE ? rows - 1 - row : row;
    if (packing == Packing.SPREAD || isInFile()) {
      return people / rows + (fromEnd < people % rows ? 1 : 0);
    }
    return Math.min(rows == 1 ? people : abreast(), people - fromEnd * abreast());
  }

  private double x(int row, int rows) {
    Span along = place.along();
    double step = rows > 1 ? Math.min(SEAT_WIDTH, along.length() / (rows - 1)) : 0;
    return switch (packing) {
      case SPREAD -> along.from() + along.length() * (2.0 * row + 1) / (2 * rows);
      case AFT -> along.from() + row * step;
      case FORE -> along.to() - (rows - 1 - row) * step;
    };
  }

  private List<Double> lanes(int count) {
    List<Double> lanes = new ArrayList<>();
    for (int n = 0; n < count; n++) {
      lanes.add(place.isToOneSide() ? fromOutside(n, count) : lane(n, count));
    }
    return lanes;
  }

  private double lane(int n, int count) {
    Span across = place.across();
    return across.middle() + across.length() / 2 * (2.0 * n + 1 - count) / count;
  }

  private double fromOutside(int n, int count) {
    Span across = place.across();
    double step = count > 1 ? Math.min(SEAT_WIDTH, across.length() / (count - 1)) : 0;
    return across.from() > 0 ? across.to() - (count - 1 - n) * step : across.from() + n * step;
  }

  /** How people share the length of their place. */
  public enum Packing {
    SPREAD(""),
    AFT("all at the aft end of their places"),
    FORE("all at the fore end of their places");

    private final String words;

    Packing(String words) {
      this.words = words;
    }

    /** Empty for people who sit evenly spread. */
    public String words() {
      return words;
    }

    /** The possible packings; only a place with a length leaves a choice. */
    public static List<Packing> of(List<Place> places) {
      return places.stream().anyMatch(Place::hasLength) ? List.of(values()) : List.of(SPREAD);
    }
  }
}
