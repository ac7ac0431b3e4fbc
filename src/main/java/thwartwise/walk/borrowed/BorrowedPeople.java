package thwartwise.walk.borrowed;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.MassSource;
import thwartwise.boat.ObservedTrial;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitSystem;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.questions.Outline;
import thwartwise.walk.questions.PeopleText;

/**
 * The people in a borrowed boat. Children are entered by age and count as heavy children of that
 * age. The heaviest sit nearest to the middle of the boat; the advice says who should change seats.
 */
record BorrowedPeople(
    Replay replay,
    PlannedMasses plannedMasses,
    UnitSystem units,
    Outline outline,
    List<Place> places,
    List<Assumption> assumed) {

  List<Person> aboard() {
    List<NamedPerson> going = going();
    if (going.isEmpty()) {
      return List.of();
    }
    assumed.add(
        new Assumption.NamedCrew(
            going.stream().map(p -> new MassSource(p.name(), p.how().template())).toList()));
    List<NamedPerson> heaviestFirst =
        going.stream()
            .sorted(Comparator.comparingDouble(NamedPerson::heaviest).reversed())
            .toList();
    List<Person> seated = new ArrayList<>();
    for (Place place : fromTheMiddle()) {
      int from = seated.size();
      int to = Math.min(heaviestFirst.size(), from + place.people());
      seated.addAll(
          at(
              place,
              heaviestFirst.subList(from, to).stream()
                  .map(p -> new Person(p.name(), p.heaviest(), place.name(), 0))
                  .toList()));
    }
    return seated;
  }

  /** The same people on the seats of an observed trial, if at least as many took part in it. */
  List<Person> seatedAsObserved(ObservedTrial seen, List<Person> aboard) {
    if (aboard.size() > seen.seats().size()) {
      return aboard;
    }
    List<Person> left =
        aboard.stream().sorted(Comparator.comparingDouble(Person::mass).reversed()).toList();
    List<Person> seated = new ArrayList<>();
    for (Place place : fromTheMiddle()) {
      int sat = Collections.frequency(seen.seats(), place.name());
      int to = Math.min(left.size(), seated.size() + sat);
      seated.addAll(at(place, left.subList(seated.size(), to)));
    }
    return seated;
  }

  private List<NamedPerson> going() {
    return replay
        .ask(
            QuestionDefinition.of(
                    "short.people",
                    "Who goes",
                    "weights or ages",
                    "who goes, such as Iris "
                        + either("62 kg", "137 lb")
                        + ", boy 12, girl 10, adult",
                    new PeopleText(plannedMasses, units)::read)
                .how(
                    "Such as Iris %s, Tom %s dressed, boy 12, girl 10, adult."
                        .formatted(either("62 kg", "137 lb"), either("80 kg", "176 lb")),
                    "Children go by age. Enter: nobody is named; the figures hold for any crew.")
                .why("The dry figures say whether these people may sit like this.")
                .unless(this::tooMany)
                .optional("nobody named"))
        .orElse(List.of());
  }

  private String either(String metric, String own) {
    return units.isMetric() ? metric : own;
  }

  private Optional<String> tooMany(List<NamedPerson> going) {
    int room = places.stream().mapToInt(Place::people).sum();
    return going.size() <= room
        ? Optional.empty()
        : Optional.of(
            "%d people are named, and the seats take %d. Name fewer, or change the seats."
                .formatted(going.size(), room));
  }

  private List<Place> fromTheMiddle() {
    double middle = (outline.aft() + outline.fore()) / 2;
    return places.stream()
        .sorted(Comparator.comparingDouble(place -> Math.abs(place.x() - middle)))
        .toList();
  }

  private static List<Person> at(Place place, List<Person> people) {
    List<Vector3> spots = SeatPositions.of(place, people.size(), Packing.SPREAD);
    List<Person> seated = new ArrayList<>();
    for (int i = 0; i < people.size(); i++) {
      Person person = people.get(i);
      Vector3 spot = spots.get(i);
      Optional<Double> along = place.hasLength() ? Optional.of(spot.x()) : Optional.empty();
      seated.add(new Person(person.name(), person.mass(), place.name(), spot.y(), along));
    }
    return seated;
  }
}
