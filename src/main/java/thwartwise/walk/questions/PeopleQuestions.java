package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Kit;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.measured.BoatProperties;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionTopic;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/** Questions for the people aboard today and their seats. */
public final class PeopleQuestions {
  private final Replay replay;
  private final QuantityQuestions quantities;
  private final List<Place> places;
  private final List<Kit> kit;

  public PeopleQuestions(
      Replay replay, QuantityQuestions quantities, List<Place> places, List<Kit> kit) {
    this.kit = kit;
    this.replay = replay;
    this.quantities = quantities;
    this.places = places;
  }

  public List<Person> aboard() {
    return aboard("person");
  }

  public List<Person> aboard(String key) {
    return new RepeatedQuestion(replay, key, "person", "Shall named people be put aboard?")
        .withExplicitEnd()
        .inRows("Person", order())
        .orNone(
            entry ->
                entry
                    .how(
                        "The boat is also worked out as these people load it. Each in a row with ;",
                        "between, dressed and in a life jacket; or the name alone.")
                    .why("no: the recommendation is worked out all the same, for any crew."),
            this::person);
  }

  private String[] order() {
    return new String[] {"name", quantities.either("kg", "lb"), "place", "to port"};
  }

  private Person person(String key, List<Person> before) {
    String name =
        replay.ask(
            WordQuestions.name(
                    key + ".name", "Person, name", before.stream().map(Person::name).toList())
                .how(
                    "A first name, or helm, bow, child. Or on one line, with ; between:",
                    "name; mass; place; how far to port.")
                .why("So that the report can say who sits where.")
                .row("Person " + (before.size() + 1), List.of(order())));
    String subject = "Person " + WordQuestions.quoted(name);
    double mass = mass(key, subject);
    Place place = place(key, subject, before);
    double y = across(key, subject, place, before);
    return new Person(name, mass, place.name(), y, along(key, subject, place));
  }

  private double mass(String key, String subject) {
    return replay.ask(
        quantities.asked(BoatProperties.PERSON_MASS, new QuestionTopic(key, subject)));
  }

  private Place place(String key, String subject, List<Person> before) {
    String chosen =
        replay.ask(
            WordQuestions.oneOf(
                    key + ".place", subject + ", " + BoatProperties.PERSON_PLACE.subject(), names())
                .worded(BoatProperties.PERSON_PLACE)
                .unless(name -> full(name, before)));
    return places.stream().filter(p -> p.name().equals(chosen)).findFirst().orElseThrow();
  }

  private List<String> names() {
    return places.stream().map(Place::name).toList();
  }

  private Optional<String> full(String chosen, List<Person> before) {
    Place place = places.stream().filter(p -> p.name().equals(chosen)).findFirst().orElseThrow();
    long there = before.stream().filter(p -> p.place().equals(chosen)).count();
    return there < place.people()
        ? Optional.empty()
        : Optional.of(
            "The place \"%s\" takes %s, and %s sit there already. Type another place."
                .formatted(chosen, place.people(), there));
  }

  /** The position along the seat; left out, it is the end of the place that trims the boat more. */
  private Optional<Double> along(String key, String subject, Place place) {
    if (!place.hasLength()) {
      return Optional.empty();
    }
    return replay.ask(
        quantities
            .length(key + ".x", subject + ", from aft")
            .how(
                "From the aft end of the hull to the middle of the person; Enter: where they",
                "trim the boat more.")
            .why("People at one end of a bench trim the boat.")
            .within(
                quantities.length(place.along().from(), place.along().to(), "length of that place"))
            .optional("far end"));
  }

  /** As far outboard as the place allows, on the side to which the boat already heels. */
  private double farthest(Place place, List<Person> before) {
    double leaning =
        kit.stream().mapToDouble(k -> k.mass() * k.at().y()).sum()
            + before.stream().mapToDouble(p -> p.mass() * p.y()).sum();
    return place.isToOneSide()
        ? place.usualY()
        : leaning < 0 ? place.across().from() : place.across().to();
  }

  private double across(String key, String subject, Place place, List<Person> before) {
    double farthest = farthest(place, before);
    return replay.ask(
        quantities
            .length(key + ".y", subject + ", to port")
            .how("From the middle line to the middle of the person; starboard with a minus.")
            .why("Off the middle heels the boat; Enter takes the spot that heels it most.")
            .within(
                quantities.length(
                    place.across().from(), place.across().to(), "reach of that place"))
            .orElse(farthest, farthest < 0 ? "out to starboard" : "out to port"));
  }
}
