package thwartwise.files.boat;

import java.util.List;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.Property;
import tools.jackson.databind.node.ObjectNode;

/** A person aboard and the place. */
final class PersonCodec {
  static final String[] KEYS = Property.keys(BoatProperties.OF_PERSON, "name", "x", "y");
  private static final String NAME = "Write a name or a part, as in helm.";
  private static final String ALONG =
      "Measure from the aft end to the middle of the person, in metres, or leave it out.";
  private static final String ATHWART =
      "Measure from the middle line to the middle of the person, to port positive, in metres.";

  private PersonCodec() {}

  /** A person without a distance across sits where people usually sit at that place. */
  static Person read(ObjectReader person, List<Place> places) {
    String name = person.text("name", NAME);
    double mass = person.required(BoatProperties.PERSON_MASS);
    String at = person.required(BoatProperties.PERSON_PLACE);
    double usual =
        places.stream()
            .filter(p -> p.name().equals(at))
            .mapToDouble(Place::usualY)
            .findFirst()
            .orElse(0);
    return new Person(
        name,
        mass,
        at,
        person.optionalNumber("y", BoatQuantity.ATHWART, ATHWART).orElse(usual),
        person.optionalNumber("x", BoatQuantity.ALONG, ALONG));
  }

  static ObjectNode write(Person person) {
    ObjectNode node = JsonText.object().put("name", person.name());
    BoatProperties.OF_PERSON.forEach(property -> JsonText.put(node, property, person));
    person.x().ifPresent(x -> node.put("x", x));
    return node.put("y", person.y());
  }
}
