package thwartwise.files.boat;

import thwartwise.boat.Boat;
import thwartwise.boat.Place;
import thwartwise.json.Location;

/** How many places and people a small boat can have; with more no search comes to an end. */
final class CountRules {
  /** Judgement: a bench on either side and four thwarts, each named in parts. */
  private static final int MOST_PLACES = 40;

  /** Judgement: twice as many as ever sat in a boat of six metres. */
  private static final int MOST_PEOPLE = 24;

  private CountRules() {}

  static void check(Location file, Boat boat) {
    int places = boat.places().size();
    if (places > MOST_PLACES) {
      throw file.fault(
          "%d places, and a boat of this size has at most %d. Give each bench and thwart once, with"
              + " how many people it takes.",
          places, MOST_PLACES);
    }
    int people = boat.places().stream().mapToInt(Place::people).sum();
    if (people > MOST_PEOPLE) {
      throw file.fault(
          "the places take %d people together, and a boat of this size has room for at most %d."
              + " Write how many can sit at each place at once, each on 0.45 m.",
          people, MOST_PEOPLE);
    }
  }
}
