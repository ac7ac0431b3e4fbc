package thwartwise.walk.questions;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.AfloatProof.HeelMeasurement;
import thwartwise.boat.AfloatProof.MovedWeight;
import thwartwise.boat.AfloatProof.RailHeights;
import thwartwise.boat.AfloatProof.TimedRoll;
import thwartwise.boat.AfloatProof.WeightToSide;
import thwartwise.boat.Boat;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Side;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.NumberReader;
import thwartwise.measure.PrintableText;
import thwartwise.measure.QuantityReader;
import thwartwise.measure.Reading;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/** What is read of the boat afloat in calm, shallow water next to the landing. */
public final class ProofQuestions {
  private static final String NOT_READ = "not read";

  /** Less is not read to a rail that is not already awash, m. */
  private static final double LEAST = 0.02;

  /** One end comes up where the other is loaded, m. */
  private static final double LIFTED = 0.15;

  private static final int LEAST_SWINGS = 2;
  private static final int MOST_SWINGS = 50;

  /** One swing of a boat this small (judgement), s. */
  private static final double QUICKEST = 0.5;

  private static final double SLOWEST = 8;

  /** A shorter one shows too little, m. */
  private static final double SHORTEST_LINE = 0.3;

  /** What a rule shows, m. */
  private static final double LEAST_SWING = 0.001;

  /** More is no proof but a capsize begun (judgement), rad. */
  private static final double MOST_HEEL = Math.toRadians(20);

  private final Replay replay;
  private final LocalDate today;
  private final Boat boat;
  private final QuantityQuestions quantities;
  private final List<Station> stations;
  private final Station middle;

  public ProofQuestions(Replay replay, LocalDate today, Boat boat) {
    this.replay = replay;
    this.today = today;
    this.boat = boat;
    this.quantities = new QuantityQuestions(boat.units());
    this.stations = boat.hull().stations();
    this.middle = stations.get(AfloatProof.amidships(boat.hull()));
  }

  public AfloatProof proof() {
    boolean kit = kit();
    Optional<RailHeights> empty =
        isRead("proof.empty.any", "Rails read with nobody aboard?", "Nobody aboard, or no", RAILS)
            ? Optional.of(rails("proof.empty", "Nobody aboard", false))
            : Optional.empty();
    List<Person> people = people();
    Optional<RailHeights> seated =
        people.isEmpty()
            ? Optional.empty()
            : Optional.of(rails("proof.seated", "People seated", true));
    Optional<MovedWeight> moved = moved();
    Optional<TimedRoll> roll = roll();
    LocalDate date =
        replay.ask(
            WordQuestions.day("proof.date", "When it was read", today)
                .how("The day the boat was afloat.")
                .why("A proof is about the boat as it was that day.")
                .orElse(today, "today"));
    return new AfloatProof(date, by(), kit, empty, people, seated, moved, roll);
  }

  private static final List<String> RAILS = List.of("bow", "stern", "port", "starboard");

  private String by() {
    QuestionDefinition<String> by =
        WordQuestions.remark("proof.by", "Who read it")
            .how("Who held the tape.")
            .why("The record names the person who read it.");
    return replay.ask(boat.measuredBy().map(who -> by.orElse(who, who)).orElse(by));
  }

  private boolean kit() {
    return !boat.kit().isEmpty()
        && replay.ask(
            WordQuestions.yesNo("proof.kit", "Is all listed kit aboard, where it is listed?")
                .how("yes: all of it, each in its place. no: all of it is ashore.")
                .why("Every kilogram aboard counts; half of it would fit neither answer."));
  }

  private boolean isRead(String key, String subject, String row, List<String> order) {
    return replay.ask(
        WordQuestions.yesNo(key, subject)
            .how(
                "Plumb from the top of the rail to the water, the mean of a few readings.",
                "bow: at " + at(stations.get(stations.size() - 1)) + ", on the port side;",
                "stern: at " + at(stations.get(0)) + ", on the port side;",
                "port and starboard: amidships, at " + at(middle) + ".")
            .why("How the boat floats tells what it weighs and where.")
            .orElse(false, NOT_READ)
            .rowIfAny(row, order));
  }

  private static String at(Station station) {
    return "station " + WordQuestions.quoted(station.name());
  }

  private RailHeights rails(String key, String subject, boolean begins) {
    Vector3 bow = stations.get(stations.size() - 1).portRail();
    QuestionDefinition<Double> first = rail(key + ".bow", subject + ", rail at the bow", bow);
    return new RailHeights(
        replay.ask(begins ? first.row(subject, RAILS) : first),
        replay.ask(rail(key + ".stern", subject + ", at the stern", stations.get(0).portRail())),
        replay.ask(rail(key + ".port", subject + ", amidships to port", middle.portRail())),
        replay.ask(rail(key + ".starboard", subject + ", to starboard", middle.starboardRail())));
  }

  private QuestionDefinition<Double> rail(String key, String subject, Vector3 rail) {
    return measured(quantities.length(key, subject))
        .how("Plumb from the top of the rail to the water, the mean of a few readings.")
        .why("How the boat floats tells what it weighs and where.")
        .within(
            quantities
                .length(LEAST, rail.z() + LIFTED, "rail above the water there")
                .unlessInsisted());
  }

  /** A guess proves nothing. */
  private static QuestionDefinition<Double> measured(QuestionDefinition<Double> entry) {
    return entry.unlessAmbiguous(
        typed ->
            QuantityReader.guessed(typed)
                .map(
                    figure ->
                        new Warning(
                            PrintableText.excerpt(typed.strip())
                                + " is a guess, and a guess proves nothing. Measure it, or leave"
                                + " this part out: back, and no.",
                            Optional.empty(),
                            false)));
  }

  private List<Person> people() {
    if (boat.places().isEmpty()) {
      return List.of();
    }
    return new RepeatedQuestion(replay, "proof.person", "person", "Rails read with people seated?")
        .inRows("Person", order())
        .orNone(
            entry ->
                entry
                    .how(
                        "Known people, each weighed as dressed, sitting still in the middle of",
                        "the seat; no more of them than were recommended. In doubt: no.")
                    .why("A boat that is loaded tells more than an empty one.")
                    .orElse(false, NOT_READ),
            this::person);
  }

  private String[] order() {
    return new String[] {"name", quantities.either("kg", "lb"), "place", "to port", "from aft"};
  }

  private Person person(String key, List<Person> before) {
    String name =
        replay.ask(
            WordQuestions.name(
                    key + ".name", "Person, name", before.stream().map(Person::name).toList())
                .how("Or on one line, with ; between: name; mass; place; how far to port.")
                .why("So that a weight that may be wrong can be named.")
                .row("Person " + (before.size() + 1), List.of(order())));
    String subject = "Person " + WordQuestions.quoted(name);
    double mass =
        replay.ask(
            measured(
                quantities.asked(BoatProperties.PERSON_MASS, key + ".mass", subject + ", mass")));
    Place place = place(key, subject, before);
    double y =
        replay.ask(
            measured(quantities.length(key + ".y", subject + ", to port"))
                .how("From the middle line to the middle of the person; starboard with a minus.")
                .why("Off the middle heels the boat.")
                .within(
                    quantities.length(
                        place.across().from(), place.across().to(), "reach of that place"))
                .orElse(place.usualY(), quantities.show(place.usualY())));
    Optional<Double> x =
        place.hasLength()
            ? Optional.of(
                replay.ask(
                    measured(quantities.length(key + ".x", subject + ", from aft"))
                        .how("From the aft end of the hull to the middle of the person.")
                        .why("People at one end of a bench trim the boat.")
                        .within(
                            quantities.length(
                                place.along().from(), place.along().to(), "length of that place"))
                        .orElse(place.x(), quantities.show(place.x()))))
            : Optional.empty();
    return new Person(name, mass, place.name(), y, x);
  }

  private Place place(String key, String subject, List<Person> before) {
    List<String> names = boat.places().stream().map(Place::name).toList();
    String chosen =
        replay.ask(
            WordQuestions.oneOf(key + ".place", subject + ", sits at", names)
                .how("One of the places of the boat; a beginning of its name is enough.")
                .why("Where people sit decides how the boat lies.")
                .unless(name -> full(name, before)));
    return boat.places().stream().filter(p -> p.name().equals(chosen)).findFirst().orElseThrow();
  }

  private Optional<String> full(String chosen, List<Person> before) {
    int room =
        boat.places().stream()
            .filter(p -> p.name().equals(chosen))
            .mapToInt(Place::people)
            .findFirst()
            .orElse(0);
    long there = before.stream().filter(p -> p.place().equals(chosen)).count();
    return there < room
        ? Optional.empty()
        : Optional.of(
            "The place \"%s\" takes %s, and %s sit there already. Type another place."
                .formatted(chosen, room, there));
  }

  private Optional<MovedWeight> moved() {
    List<String> order = List.of(quantities.either("kg", "lb"), "from aft", "up");
    boolean done =
        replay.ask(
            WordQuestions.yesNo("proof.weight.any", "Was a weight moved across, nobody aboard?")
                .how(
                    "A can of water or bag of sand that was weighed, set down to port and then",
                    "to starboard. Its middle: from the aft end, and up from the lowest point",
                    "of the bottom.")
                .why("How far the boat heels tells how high its weight lies.")
                .orElse(false, "not done")
                .rowIfAny("Weight, or no", order));
    if (!done) {
      return Optional.empty();
    }
    double length = stations.get(stations.size() - 1).portRail().x();
    double mass =
        replay.ask(
            measured(quantities.asked(BoatProperties.KIT_MASS, "proof.weight.mass", "Weight")));
    double along =
        replay.ask(
            measured(quantities.length("proof.weight.x", "Weight, its middle from aft"))
                .how("From the aft end of the hull to the middle of the weight.")
                .why("It trims the boat, too.")
                .within(quantities.length(0, length, "length of the hull")));
    double height =
        replay.ask(
            measured(quantities.length("proof.weight.z", "Weight, its middle up from the bottom"))
                .how("From the lowest point of the bottom up to the middle of the weight.")
                .why("Weight up high heels a boat more.")
                .within(
                    quantities.length(
                        0, middle.portRail().z() + 0.5, "height of a weight aboard")));
    HeelInstrument instrument = instrument();
    Function<Side, HeelMeasurement> heel = heel(instrument);
    return Optional.of(
        new MovedWeight(
            mass,
            along,
            height,
            toSide(Side.PORT, instrument, heel),
            toSide(Side.STARBOARD, instrument, heel)));
  }

  /** What the heel is read by. */
  private enum HeelInstrument {
    RAILS("out", "port rail", "starboard rail"),
    PLUMB_LINE("out", "swing"),
    LEVEL("out", "degrees");

    private final List<String> order;

    HeelInstrument(String... order) {
      this.order = List.of(order);
    }
  }

  private HeelInstrument instrument() {
    return replay.ask(
        WordQuestions.choice(
                "proof.weight.by",
                "Heel read by rails, plumb line or level",
                ChoiceReader.of(HeelInstrument.RAILS, "rails", "rail", "tape")
                    .or(HeelInstrument.PLUMB_LINE, "plumb line", "plumb", "pendulum")
                    .or(HeelInstrument.LEVEL, "level", "telephone", "phone"))
            .how(
                "rails: both heights above the water amidships. plumb line: how far its end",
                "swings over a rule. level: degrees, as a telephone shows them. These two",
                "count from where they stood with the weight in the middle.")
            .why("Each tells how far the boat heels; rails need calm water most.")
            .orElse(HeelInstrument.RAILS, "rails"));
  }

  private Function<Side, HeelMeasurement> heel(HeelInstrument instrument) {
    if (instrument == HeelInstrument.PLUMB_LINE) {
      double length =
          replay.ask(
              measured(quantities.length("proof.pendulum", "Plumb line, its length"))
                  .how("From where it hangs to the rule it is read on.")
                  .why("Swing over length is the heel.")
                  .within(
                      quantities.length(
                          SHORTEST_LINE, BoatQuantity.PENDULUM.most(), "length of such a line")));
      return side -> new HeelMeasurement.ByPendulum(length, swing(side, length));
    }
    return instrument == HeelInstrument.LEVEL ? this::level : this::heights;
  }

  private HeelMeasurement heights(Side side) {
    String subject = subject(side);
    return new HeelMeasurement.ByRails(
        replay.ask(rail(key(side) + ".port", subject + ", port rail amidships", middle.portRail())),
        replay.ask(
            rail(key(side) + ".starboard", subject + ", starboard rail", middle.starboardRail())));
  }

  private double swing(Side side, double length) {
    return replay.ask(
        measured(
                quantities.length(
                    key(side) + ".swing", subject(side) + ", swing of the plumb line"))
            .how("To the side of the weight, from where it hung with the weight in the middle.")
            .why("Swing over length is the heel.")
            .within(
                quantities.length(
                    LEAST_SWING, length * Math.tan(MOST_HEEL), "swing of such a line")));
  }

  private HeelMeasurement level(Side side) {
    double degrees =
        replay.ask(
            measured(
                    QuestionDefinition.of(
                        key(side) + ".level",
                        subject(side) + ", level",
                        "degrees",
                        "degrees, such as 4.5",
                        typed -> figure(typed, "degrees")))
                .how(
                    "To the side of the weight, from what it showed with the weight in the middle.")
                .why("It is the heel.")
                .unless(ProofQuestions::noHeel));
    return new HeelMeasurement.ByLevel(Math.toRadians(degrees));
  }

  /** Repeated with its unit. */
  private static Reading<Double> figure(String typed, String unit) {
    Reading<Double> read = NumberReader.figure(typed);
    return read instanceof Reading.Understood<Double> figure
        ? Reading.understood(figure.value(), figure.text() + " " + unit)
        : read;
  }

  private static Optional<String> noHeel(double degrees) {
    return degrees > 0 && degrees <= Math.toDegrees(MOST_HEEL)
        ? Optional.empty()
        : Optional.of(
            "A proof heels a boat by up to 20 degrees, to the side of the weight. Type how many"
                + " degrees more than before it shows, or take a lighter weight.");
  }

  private static String key(Side side) {
    return side == Side.PORT ? "proof.toPort" : "proof.toStarboard";
  }

  private static String subject(Side side) {
    return side == Side.PORT ? "Weight to port" : "Weight to starboard";
  }

  private WeightToSide toSide(
      Side side, HeelInstrument instrument, Function<Side, HeelMeasurement> heel) {
    double half = middle.portRail().y();
    double out =
        replay.ask(
            measured(
                    quantities.length(
                        key(side) + ".out", subject(side) + ", its middle from the middle line"))
                .how("From the middle line of the boat out to the middle of the weight.")
                .why("Weight times distance is what heels the boat.")
                .within(quantities.length(0.05, half, "half breadth there"))
                .row(subject(side), instrument.order));
    return new WeightToSide(out, heel.apply(side));
  }

  private Optional<TimedRoll> roll() {
    boolean done =
        replay.ask(
            WordQuestions.yesNo("proof.roll.any", "Was the roll timed, nobody aboard?")
                .how(
                    "Press one rail down a little, let go, and time several whole swings: over",
                    "to one side, to the other and back is one.")
                .why("A cross-check of how stiff the boat is; it decides nothing.")
                .orElse(false, "not done")
                .rowIfAny("Roll, or no", List.of("swings", "seconds for all of them")));
    if (!done) {
      return Optional.empty();
    }
    int swings =
        replay.ask(
            WordQuestions.whole("proof.roll.swings", "Swings", LEAST_SWINGS, MOST_SWINGS)
                .how("Whole ones, out to both sides and back.")
                .why("The more of them, the less the thumb on the watch matters."));
    double seconds =
        replay.ask(
            QuestionDefinition.of(
                    "proof.roll.seconds",
                    "Time for all of them",
                    "seconds",
                    "seconds, such as 12.5",
                    typed -> figure(typed, "seconds"))
                .how("By a watch, from letting go.")
                .why("The time of one swing tells how stiff the boat is.")
                .unless(all -> unusual(all, swings)));
    return Optional.of(new TimedRoll(swings, seconds));
  }

  private static Optional<String> unusual(double seconds, int swings) {
    double each = seconds / swings;
    return each >= QUICKEST && each <= SLOWEST
        ? Optional.empty()
        : Optional.of(
            "A boat like this takes 0.5 to 8 seconds for one whole swing. Type the seconds for all %s."
                .formatted(swings));
  }
}
