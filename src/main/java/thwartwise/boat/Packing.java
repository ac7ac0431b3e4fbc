package thwartwise.boat;

import java.util.List;

/** How people share the length of the places they sit at. */
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

  /** Only a place with a length leaves a choice. */
  public static List<Packing> of(List<Place> places) {
    return places.stream().anyMatch(Place::hasLength) ? List.of(values()) : List.of(SPREAD);
  }
}
