package thwartwise.files;

import thwartwise.boat.Person;
import tools.jackson.databind.node.ObjectNode;

/** Somebody aboard and where they sit. */
final class PersonFields {
  static final String[] KEYS = {"name", "mass", "place", "y"};
  private static final String NAME = "Write a name or a part, as in helm.";
  private static final String MASS =
      "Weigh the person dressed and with the life jacket on, and write kg.";
  private static final String PLACE = "Write which of the places the person sits at.";

  private PersonFields() {}

  static Person read(Fields person) {
    return new Person(
        person.text("name", NAME),
        person.number("mass", Quantity.PERSON_MASS, MASS),
        person.text("place", PLACE),
        Points.optionalY(person));
  }

  static ObjectNode write(Person person) {
    return JsonText.object()
        .put("name", person.name())
        .put("mass", person.mass())
        .put("place", person.place())
        .put("y", person.y());
  }
}
