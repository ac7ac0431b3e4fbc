package thwartwise.measured;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.CrewWhenSwamped;
import thwartwise.boat.Kit;
import thwartwise.boat.Person;
import thwartwise.boat.Waters;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.Property.Settable;

/**
 * The table of all single values of a boat. A new property costs one line here, besides its record
 * component and its test.
 */
public final class BoatProperties {
  private BoatProperties() {}

  public static final Property<Boat, Double> BAILER =
      Property.of(
              "bailer",
              ValueType.number(BoatQuantity.BAILER_LITRES),
              Boat::bailer,
              "Fill the bailer with a jug, count the litres, or leave it out.")
          .withQuestion(
              "Bailer or bucket aboard, it holds",
              List.of("Fill it from the litre jug and count; no when there is none aboard."),
              List.of("How long it takes to bail the boat out depends on it."))
          .whenOmitted("none aboard")
          .withChangeLabel("the bailer")
          .withLabel("For bailing: a bailer of ");

  public static final Property<Boat, CrewWhenSwamped> WHEN_SWAMPED =
      Property.<Boat, CrewWhenSwamped>of(
              "whenSwamped",
              ValueType.oneOf(CrewWhenSwamped::word, CrewWhenSwamped.values()),
              Boat::whenSwamped,
              "Write what the crew does when the boat is full of water, or leave it out.")
          .whenOmitted("its form tells: a canoe is held on to, any other boat is sat in")
          .withChangeLabel("what the crew does when it is swamped")
          .withLabel("When swamped: ");

  public static final Property<Boat, Double> TRAILER =
      Property.of(
              "trailer",
              ValueType.number(BoatQuantity.TRAILER_MASS),
              Boat::trailer,
              "Read what it may carry on the plate of the trailer or rack, in kg, or leave it out.")
          .withQuestion(
              "Trailer or roof rack, it may carry",
              List.of("Read it on its plate or in its papers; no when there is none."),
              List.of("Hull and kit together must not weigh more on the road."))
          .whenOmitted("none")
          .withChangeLabel("the trailer or rack")
          .withLabel("On the road: a trailer or rack that may carry ");

  public static final Property<Boat, Double> VEHICLE =
      Property.of(
              "vehicle",
              ValueType.number(BoatQuantity.VEHICLE_MASS),
              Boat::vehicle,
              "Read in the car's papers what it may pull or bear on its roof, in kg, take off what"
                  + " trailer or rack weigh themselves, or leave it out.")
          .withQuestion(
              "Car that takes it, may pull or bear",
              List.of(
                  "In the car's papers: pulled on a trailer, or borne on the roof. Take off what",
                  "trailer or rack weigh themselves; no when nobody takes it anywhere."),
              List.of("On the road the lesser of both counts, for hull and kit together."))
          .whenOmitted("not said")
          .withChangeLabel("what the car may pull or bear")
          .withLabel("On the road: a car that may pull or bear, besides trailer or rack, ");

  public static final Property<Boat, UnitSystem> UNITS =
      Property.<Boat, UnitSystem>of(
              "units",
              ValueType.oneOf(UnitSystem::word, UnitSystem.values()),
              boat -> Optional.of(boat.units()).filter(units -> !units.isMetric()),
              "Write the units in which its papers speak, or leave it out.")
          .whenOmitted("metric");

  /** Single values of the boat that may be left out, in the order of the file. */
  public static final List<Settable<Boat, ?>> OF_BOAT =
      Stream.<List<? extends Settable<Boat, ?>>>of(
              List.of(
                  UNITS.with(Boat::in),
                  BAILER.with(Boat::withBailer),
                  WHEN_SWAMPED.with(Boat::whenSwamped),
                  TRAILER.with(Boat::withTrailer),
                  VEHICLE.with(Boat::withVehicle)),
              OutfitProperties.OF_BOAT)
          .<Settable<Boat, ?>>flatMap(List::stream)
          .toList();

  /** Those that the walk asks for together after the kit. */
  public static final List<Settable<Boat, Double>> EQUIPMENT =
      List.of(
          BAILER.with(Boat::withBailer),
          TRAILER.with(Boat::withTrailer),
          VEHICLE.with(Boat::withVehicle).ofThose(boat -> boat.trailer().isPresent()));

  public static final Property<HullMeasurements, Double> HULL_MASS =
      Property.known(
              "mass",
              ValueType.number(BoatQuantity.HULL_MASS),
              HullMeasurements::mass,
              "Weigh the bare hull on bathroom scales, one end after the other, and write the sum in"
                  + " kg.")
          .withQuestion(
              "Mass of the bare hull",
              List.of(
                  "Empty it of all that is not built in. One bathroom scale under each end in",
                  "turn, the other end on a block as high, the boat level: add the two readings."),
              List.of("Everything the boat can carry comes after this. A guess is worth nothing."));

  public static final Property<HullMeasurements, Material> MATERIAL =
      Property.of(
              "material",
              ValueType.oneOf(Material::word, Material.values()),
              HullMeasurements::material,
              "Write what the hull is made of, or its swamped density in kg/m3 as \"density\".")
          .whenOmitted("something else, of that density")
          .withQuestion(
              "What the hull is made of",
              List.of("What most of the shell is made of. Plywood under a glass skin is plywood."),
              List.of("Its material decides whether a swamped hull lifts or pulls down."))
          .withChangeLabel("what the hull is made of");

  public static final Property<HullMeasurements, Double> DENSITY =
      Property.known(
              "density",
              ValueType.number(BoatQuantity.DENSITY),
              HullMeasurements::density,
              "Weigh a soaked offcut of known size and write kg/m3.")
          .whenOmitted("that of the material, soaked")
          .withQuestion(
              "Density of that material, soaked",
              List.of(
                  "Weigh a soaked offcut and see how much water it pushes out of a full jug:",
                  "kilograms divided by litres, times 1000."),
              List.of(
                  "Heavier than water (1000) pulls the swamped boat down. In doubt, guess high."))
          .withChangeLabel("the swamped density of the hull");

  public static final Property<HullMeasurements, Double> THICKNESS =
      Property.known(
              "thickness",
              ValueType.number(BoatQuantity.THICKNESS),
              HullMeasurements::thickness,
              "Measure the shell with callipers at an edge or a drain hole and write metres.")
          .withQuestion(
              "Thickness of the shell",
              List.of(
                  "With a calliper or a rule at a cut edge: top of the transom, oar notch, hatch."),
              List.of("The inside lies this much further in; every chamber is smaller by it."))
          .whenOmitted("usual for the material")
          .withChangeLabel("the thickness of the shell");

  public static final Property<HullMeasurements, Double> FLOOR =
      Property.known(
              "floor",
              ValueType.number(BoatQuantity.HEIGHT),
              HullMeasurements::floor,
              "Measure with a tape from the lowest point of the bottom up to what people stand on.")
          .whenOmitted("on the shell")
          .withQuestion(
              "Height of the floor",
              List.of("Up from the baseline to the floorboards, or to the bottom's inside."),
              List.of("People who stand, stand on this."))
          .withChangeLabel("the height of the floor");

  public static final List<Property<HullMeasurements, ?>> OF_HULL =
      List.of(HULL_MASS, MATERIAL, DENSITY, THICKNESS, FLOOR);

  private static final String SHELTERED = "taken as sheltered";

  public static final Property<Waters, Double> WAVES =
      Property.of(
              "waves",
              ValueType.number(BoatQuantity.WAVES),
              Waters::waves,
              "Estimate the highest from trough to crest in metres, or leave it out.")
          .withQuestion(
              "Highest waves",
              List.of("From trough to crest; watch them pass a post or a standing person's leg."),
              List.of("A crest as high as the lowest edge of the boat comes aboard."))
          .whenOmitted(SHELTERED)
          .withChangeLabel("the highest waves");

  public static final Property<Waters, Boolean> BREAKING =
      flag("breaking", Waters::breaking, "Do crests tumble over?")
          .withQuestion(
              "Do crests tumble over?",
              List.of("Look from the bank on a lively day, or ask who knows the water."),
              List.of("Breaking waves fill open boats."))
          .withChangeLabel("whether crests tumble over");

  public static final Property<Waters, Double> WIND =
      Property.of(
              "wind",
              ValueType.number(BoatQuantity.WIND),
              Waters::wind,
              "Write metres a second, or \"force\" instead, or leave it out.")
          .whenOmitted(SHELTERED)
          .withQuestion(
              "Strongest wind, force",
              List.of("By what you see at its strongest:"),
              List.of("Wind pushes the boat over and away, and makes the waves."))
          .withChangeLabel("the strongest wind");

  public static final Property<Waters, Double> CURRENT =
      Property.of(
              "current",
              ValueType.number(BoatQuantity.CURRENT),
              Waters::current,
              "See how many metres a stick drifts in a second, or leave it out.")
          .whenOmitted(SHELTERED)
          .withQuestion(
              "Current, metres in ten seconds",
              List.of("Throw a stick in where it runs fastest; pace how far it gets in that time."),
              List.of("A current pulls a moored boat under and carries a swamped one away."))
          .withChangeLabel("the current");

  public static final Property<Waters, Boolean> WEIR =
      flag("weir", Waters::weir, "A weir, sluice or fall within reach?")
          .withQuestion(
              "A weir, sluice or fall within reach?",
              List.of("Look from the bank on a lively day, or ask who knows the water."),
              List.of("No boat holds up a person who is carried there."))
          .withChangeLabel("whether a weir is near");

  public static final Property<Waters, Boolean> WASH =
      flag("wash", Waters::wash, "Do passing boats throw up wash?")
          .withQuestion(
              "Do passing boats throw up wash?",
              List.of("Look from the bank on a lively day, or ask who knows the water."),
              List.of("Wash counts as waves that come without warning."))
          .withChangeLabel("whether boats throw up wash");

  public static final Property<Waters, Double> CELSIUS =
      Property.of(
              "celsius",
              ValueType.number(BoatQuantity.CELSIUS),
              Waters::temperature,
              "Hang a thermometer in the water, or leave it out.")
          .whenOmitted(SHELTERED)
          .withQuestion(
              "Coldest water, degrees Celsius",
              List.of("Hang a thermometer in the water; ask where there is none."),
              List.of("Under 15 degrees hands soon cannot hold on: the boat must bear more."))
          .withChangeLabel("the coldest water");

  public static final Property<Waters, Double> OFFSHORE =
      Property.of(
              "offshore",
              ValueType.number(BoatQuantity.OFFSHORE),
              Waters::offshore,
              "Write the farthest from the shore in metres, or leave it out.")
          .withQuestion(
              "Farthest from the shore",
              List.of("From the nearest place where somebody can stand or climb out."),
              List.of("A swamped boat waits there for help."))
          .whenOmitted(SHELTERED)
          .withChangeLabel("the distance from the shore");

  public static final List<Property<Waters, ?>> OF_WATERS =
      List.of(WAVES, BREAKING, WIND, CURRENT, WEIR, WASH, CELSIUS, OFFSHORE);

  private static Property<Waters, Boolean> flag(
      String key, Function<Waters, Optional<Boolean>> value, String asks) {
    return Property.of(key, ValueType.flag(), value, asks).whenOmitted(SHELTERED);
  }

  public static final Property<Kit, Double> KIT_MASS =
      Property.<Kit, Double>known(
              "mass",
              ValueType.number(BoatQuantity.KIT_MASS),
              Kit::mass,
              "Weigh it on bathroom or kitchen scales and write kg.")
          .withQuestion(
              "mass",
              List.of("Bathroom scales: you with it in your arms, less you without it."),
              List.of("Every kilogram of kit is one less of people."));

  public static final Property<Kit, Double> KIT_LITRES =
      Property.of(
              "litres",
              ValueType.number(BoatQuantity.KIT_LITRES),
              Kit::volume,
              "Work out the space it takes up, in litres, or leave it out.")
          .withQuestion(
              "its own volume",
              List.of(
                  "Length times breadth times height in centimetres, divided by 1000; or push it",
                  "under in a full tub and measure the water that runs over."),
              List.of(
                  "Under water it lifts by its volume, up to its own weight. Left out: no lift."))
          .whenOmitted("gives no lift")
          .withChangeLabel("its own volume");

  public static final Property<Kit, Boolean> KIT_FASTENED =
      Property.<Kit, Boolean>known(
              "fastened",
              ValueType.flag(),
              Kit::fastened,
              "Write whether it stays where it is in a boat upside down.")
          .withQuestion(
              "is it fastened?",
              List.of("Fastened so that it stays in a boat upside down."),
              List.of("Loose kit slides to the low side, and floats away from a swamped boat."))
          .whenOmitted("loose");

  public static final Property<Kit, String> KIT_IN =
      Property.of(
              "in", ValueType.text(), Kit::in, "Name the chamber it is stowed in, or leave it out.")
          .withQuestion(
              "stowed in which chamber",
              List.of("One of the chambers you named; a beginning of its name is enough."),
              List.of(
                  "It takes room there; and with a battery or a charger inside, it never counts."))
          .whenOmitted("in none")
          .withLabel("in ");

  public static final Property<Kit, String> WORKED_FROM =
      Property.of(
              "workedFrom",
              ValueType.text(),
              Kit::workedFrom,
              "Name the place it is steered or rowed from, or leave it out.")
          .whenOmitted("the nearest place")
          .withLabel("worked from the ");

  public static final List<Property<Kit, ?>> OF_KIT =
      List.of(KIT_MASS, KIT_LITRES, KIT_FASTENED, KIT_IN, WORKED_FROM);

  public static final Property<Person, Double> PERSON_MASS =
      Property.<Person, Double>known(
              "mass",
              ValueType.number(BoatQuantity.PERSON_MASS),
              Person::mass,
              "Weigh the person dressed and with the life jacket on, and write kg.")
          .withQuestion(
              "mass dressed, in a life jacket",
              List.of("Bathroom scales, in the clothes, boots and life jacket worn afloat."),
              List.of("People guess themselves light; wet clothes weigh more still."))
          .withChangeLabel("mass");

  public static final Property<Person, String> PERSON_PLACE =
      Property.<Person, String>known(
              "place",
              ValueType.text(),
              Person::place,
              "Write which of the places the person sits at.")
          .withQuestion(
              "sits at",
              List.of("One of the places you named; a beginning of its name is enough."),
              List.of("Where people sit decides how the boat lies."))
          .withChangeLabel("place");

  public static final List<Property<Person, ?>> OF_PERSON = List.of(PERSON_MASS, PERSON_PLACE);

  /**
   * The single values of one object of the boat file.
   *
   * @param place of the object: keys from the top of the file, blank for the top itself
   */
  public record PropertyGroup(String place, List<? extends Property<?, ?>> properties) {
    /** The whole table. */
    public static final List<PropertyGroup> ALL =
        List.of(
            new PropertyGroup(
                "", BoatProperties.OF_BOAT.stream().map(each -> each.property()).toList()),
            new PropertyGroup("hull", BoatProperties.OF_HULL),
            new PropertyGroup("hull stations points", PartProperties.OF_POINT),
            new PropertyGroup("hull skeg", PartProperties.OF_SKEG),
            new PropertyGroup("openings", PartProperties.OF_OPENING),
            new PropertyGroup(
                "chambers",
                Stream.concat(
                        PartProperties.OF_FILLING.stream(), PartProperties.OF_CHAMBER.stream())
                    .toList()),
            new PropertyGroup("places", PartProperties.OF_PLACE),
            new PropertyGroup("propulsion", PartProperties.OF_PROPULSION),
            new PropertyGroup("waters", BoatProperties.OF_WATERS),
            new PropertyGroup("kit", BoatProperties.OF_KIT),
            new PropertyGroup("aboard", BoatProperties.OF_PERSON),
            new PropertyGroup("leaks", OutfitProperties.OF_LEAK),
            new PropertyGroup("electrics", ElectricalProperties.OF_SYSTEM),
            new PropertyGroup("electrics battery", ElectricalProperties.OF_BATTERY),
            new PropertyGroup("electrics motor", ElectricalProperties.OF_MOTOR),
            new PropertyGroup("electrics runs", ElectricalProperties.OF_RUN),
            new PropertyGroup("electrics panel", ElectricalProperties.OF_PANEL),
            new PropertyGroup("electrics mainWire", WireProperties.OF_MAIN_WIRE),
            new PropertyGroup("electrics circuits", WireProperties.OF_CIRCUIT));
  }
}
