package thwartwise.remedy;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.EmptyHelm;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.geometry.Vector3;
import thwartwise.remedy.Change.Effort;

/** Other seats for the people of today, two of them exchanged, or one of them ashore. */
final class CrewShifting {
  private CrewShifting() {}

  static List<Change> of(Boat boat) {
    List<Change> changes = new ArrayList<>();
    for (Person person : boat.aboard()) {
      boat.places().stream()
          .filter(place -> hasRoom(boat, place) && !place.name().equals(person.place()))
          .forEach(place -> changes.add(shifted(boat, person, place)));
    }
    swaps(boat, changes);
    boat.aboard().forEach(person -> changes.add(ashore(boat, person)));
    return changes;
  }

  private static boolean hasRoom(Boat boat, Place place) {
    return at(boat.aboard(), place).size() < place.people();
  }

  private static List<Person> at(List<Person> people, Place place) {
    return people.stream().filter(p -> p.place().equals(place.name())).toList();
  }

  private static Change shifted(Boat boat, Person person, Place place) {
    List<Person> moved =
        boat.aboard().stream()
            .map(p -> p == person ? new Person(p.name(), p.mass(), place.name(), 0) : p)
            .toList();
    return today(
        new Deed.SeatElsewhere(person.name(), place.name(), helm(boat, moved)),
        boat.withAboard(sideBySide(moved, place)));
  }

  private static Optional<EmptyHelm> helm(Boat boat, List<Person> aboard) {
    return EmptyHelm.of(boat, aboard.stream().map(Person::place).toList());
  }

  private static void swaps(Boat boat, List<Change> changes) {
    for (int i = 0; i < boat.aboard().size(); i++) {
      for (int j = i + 1; j < boat.aboard().size(); j++) {
        Person a = boat.aboard().get(i);
        Person b = boat.aboard().get(j);
        if (!a.place().equals(b.place()) && a.mass() != b.mass()) {
          changes.add(swapped(boat, a, b));
        }
      }
    }
  }

  private static Change swapped(Boat boat, Person a, Person b) {
    List<Person> others =
        boat.aboard().stream()
            .map(p -> p == a ? inThePlaceOf(a, b) : p == b ? inThePlaceOf(b, a) : p)
            .toList();
    return today(new Deed.ChangeSeats(a.name(), b.name()), boat.withAboard(others));
  }

  private static Person inThePlaceOf(Person who, Person where) {
    return new Person(who.name(), who.mass(), where.place(), where.y(), where.x());
  }

  private static Change ashore(Boat boat, Person person) {
    List<Person> left = boat.aboard().stream().filter(p -> p != person).toList();
    return today(new Deed.StayAshore(person.name(), helm(boat, left)), boat.withAboard(left));
  }

  /** Everyone at a place evenly spread, as the search seats them. */
  private static List<Person> sideBySide(List<Person> people, Place place) {
    int there = at(people, place).size();
    Iterator<Vector3> spots = SeatPositions.of(place, there, Packing.SPREAD).iterator();
    return people.stream()
        .map(p -> p.place().equals(place.name()) ? sitting(p, place, spots.next()) : p)
        .toList();
  }

  private static Person sitting(Person p, Place place, Vector3 spot) {
    Optional<Double> x = place.hasLength() ? Optional.of(spot.x()) : Optional.empty();
    return new Person(p.name(), p.mass(), p.place(), spot.y(), x);
  }

  /** These people and nobody else aboard, everyone at a place evenly spread. */
  static Change aboard(Boat boat, List<Person> people) {
    List<Person> seated = people;
    for (Place place : boat.places()) {
      seated = sideBySide(seated, place);
    }
    return today(new Deed.OthersAboard(), boat.withAboard(seated));
  }

  private static Change today(Deed deed, Boat boat) {
    return new Change("today", deed, Effort.NONE, true, boat);
  }
}
