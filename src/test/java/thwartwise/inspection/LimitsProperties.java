package thwartwise.inspection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.boat.Space;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.Limits;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Seating;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.hull.UnusableBoat;
import thwartwise.report.LoadCaseWords;
import thwartwise.rules.RuleSet;
import thwartwise.sampleboats.BoatEdits;
import thwartwise.sampleboats.OrdinaryBoats;

/**
 * What a reader takes for granted of an answer: below a limit everything meets, a hair's breadth of
 * tape moves it by little, and who knows less gets no more. Each property lists in words where it
 * does not hold.
 */
final class LimitsProperties {
  static final RuleSet RULES = RuleSetFile.cautiousDefault();

  /** Between two spots along the boat that a weight is stood on, m. */
  private static final double ALONG = 0.05;

  /** Nothing stands in the very ends, as a share of the length. */
  private static final double END = 0.08;

  /** Above the floor; what is higher than any seat is a deck, m. */
  private static final double LOW = 0.45;

  /** Whole kilograms and a search by halves: one up or down each. */
  private static final double LITTLE = 2;

  private static final Vector3 AHEAD = Vector3.of(1, 0, 0);

  private LimitsProperties() {}

  static Recommendation of(Boat boat) {
    CrewAssessment judge = new CrewAssessment(BoatModel.of(boat, OrdinaryBoats.TODAY), RULES);
    return new Limits(judge, RULES, List.of()).recommendation(List.of());
  }

  /**
   * People of every whole mass up to what each number of them may weigh, in every seating up to its
   * own figure.
   *
   * @param apart between two masses tried, kg
   */
  static List<String> peopleBelowTheLimit(Boat boat, Recommendation r, int apart) {
    BoatModel model = BoatModel.of(boat, OrdinaryBoats.TODAY);
    CrewAssessment judge = new CrewAssessment(model, RULES);
    List<String> wrong = new ArrayList<>();
    for (Recommendation.CrewLimit limit : r.crewLimits()) {
      for (Seating seating : Seating.of(limit.people(), boat.places())) {
        double most = limit.upTo(seating.places(model)).orElse(0);
        for (double mass = most; mass >= RULES.value("lightest-person"); mass -= apart) {
          if (!judge.meetsAll(seating, mass)) {
            wrong.add(
                told(
                    "people below the limit",
                    LoadCaseWords.crew(seating.crew(model, mass, Packing.SPREAD))));
          }
        }
      }
    }
    return wrong;
  }

  /**
   * Every kilogram up to what may be aboard besides, each at another spot, and every spot each five
   * centimetres with nearly all of it, with each number of people seated as is told with that.
   */
  static List<String> weightsBelowTheLimit(Boat boat, Recommendation r) {
    BoatModel model = BoatModel.of(boat, OrdinaryBoats.TODAY);
    CrewAssessment judge = new CrewAssessment(model, RULES);
    List<Vector3> spots = spots(model);
    List<String> wrong = new ArrayList<>();
    for (Recommendation.CrewLimit limit : r.crewLimits()) {
      double mass = Math.min(limit.massLimit(), r.adult());
      allowed(model, limit)
          .forEach(s -> weigh(judge, s, mass, (int) limit.extraMass(), spots, wrong));
    }
    return wrong;
  }

  private static void weigh(
      CrewAssessment judge,
      Seating seating,
      double mass,
      int extra,
      List<Vector3> spots,
      List<String> out) {
    int tries = extra > 0 ? Math.max(extra, spots.size()) : 0;
    for (int k = 0; k < tries; k++) {
      int weight = k < extra ? k + 1 : extra - k % Math.min(5, extra);
      Vector3 at = spots.get(k * 7 % spots.size());
      Loading.Weight besides = new Loading.Weight(weight, at);
      if (!judge.loadedBoats(seating, mass).stream().allMatch(t -> judge.meets(t.with(besides)))) {
        out.add(
            told(
                "weight below the limit",
                String.format(
                    Locale.ROOT,
                    "%d kg at %.2f m besides %s",
                    weight,
                    at.x(),
                    LoadCaseWords.crew(seating.crew(judge.model(), mass, Packing.SPREAD)))));
      }
    }
  }

  /** As it is told with something besides; where that is not told, there is but one way. */
  private static List<Seating> allowed(BoatModel model, Recommendation.CrewLimit limit) {
    return Seating.of(limit.people(), model.boat().places()).stream()
        .filter(s -> limit.extraSeating().isEmpty() || limit.extraSeating().equals(s.places(model)))
        .toList();
  }

  /** On the floor or, where a box or a seat stands, on its top; a deck is none. */
  private static List<Vector3> spots(BoatModel model) {
    List<Vector3> spots = new ArrayList<>();
    Span length = model.form().outside().extent(AHEAD);
    double end = END * length.length();
    for (double x = length.from() + end; x <= length.to() - end; x += ALONG) {
      spots.add(Vector3.of(x, 0, height(model, x)));
    }
    return spots;
  }

  private static double height(BoatModel model, double x) {
    double floor = model.boat().hull().floor();
    DoubleStream boxes =
        model.spaces().stream()
            .map(Space::box)
            .filter(b -> b.contains(Vector3.of(x, 0, Math.max(floor, b.z().from()))))
            .mapToDouble(b -> b.z().to());
    DoubleStream seats =
        model.boat().places().stream().filter(p -> p.along().contains(x)).mapToDouble(Place::z);
    return DoubleStream.concat(boxes, seats).filter(z -> z <= floor + LOW).reduce(floor, Math::max);
  }

  /** A millimetre or a tenth of a kilogram never moves a figure by more than two kilograms. */
  static List<String> hairsBreadths(Boat boat, Recommendation here) {
    return hairsBreadths(hairsBreadths(boat), here);
  }

  /** The same for some of them, by what was changed. */
  static List<String> hairsBreadths(Map<String, Boat> edits, Recommendation here) {
    List<String> wrong = new ArrayList<>();
    edits.forEach((what, edited) -> near(what, of(edited), here, wrong));
    return wrong;
  }

  private static void near(String what, Recommendation is, Recommendation was, List<String> wrong) {
    apart(what + ": load", is.load(), was.load(), wrong);
    apart(what + ": crew", is.crew(), was.crew(), wrong);
    for (Recommendation.CrewLimit then : was.crewLimits()) {
      is.crewLimits().stream()
          .filter(now -> now.people() == then.people())
          .forEach(now -> near(what + ": " + then.people() + " people", now, then, wrong));
    }
  }

  private static void near(
      String what, Recommendation.CrewLimit is, Recommendation.CrewLimit was, List<String> wrong) {
    apart(what + ", each", is.massLimit(), was.massLimit(), wrong);
    // Where each is told in whole kilograms, so is what they come to: the load holds for those.
    if (Math.min(is.massLimit(), was.massLimit()) >= RULES.value("design-person")) {
      apart(what + " and besides", total(is), total(was), wrong);
    }
    for (List<String> places : was.excludedSeatings()) {
      OptionalDouble now = is.upTo(places);
      OptionalDouble then = was.upTo(places);
      if (now.isPresent() && then.isPresent()) {
        apart(what + " at " + places, now.getAsDouble(), then.getAsDouble(), wrong);
      }
    }
  }

  /** What may be aboard besides grows where people are lighter, so both are held together. */
  private static double total(Recommendation.CrewLimit limit) {
    return limit.people() * Math.min(limit.massLimit(), RULES.value("design-person"))
        + limit.extraMass();
  }

  private static void apart(String what, double is, double was, List<String> wrong) {
    if (!(Math.abs(is - was) <= LITTLE)) {
      wrong.add(
          told("a hair's breadth", String.format(Locale.ROOT, "%s %.0f, was %.0f", what, is, was)));
    }
  }

  static Map<String, Boat> hairsBreadths(Boat boat) {
    int middle = boat.hull().stations().size() / 2;
    int rail = boat.hull().stations().get(0).port().size() - 1;
    Map<String, Boat> all = new LinkedHashMap<>();
    all.put("hull 0.1 kg heavier", boat.withHullMass(boat.hull().mass() + 0.1));
    all.put("hull 0.1 kg lighter", boat.withHullMass(boat.hull().mass() - 0.1));
    all.put("middle rail 1 mm lower", BoatEdits.withPoint(boat, middle, rail, by(0, -0.001)));
    all.put("middle rail 1 mm higher", BoatEdits.withPoint(boat, middle, rail, by(0, 0.001)));
    all.put("middle chine 1 mm out", BoatEdits.withPoint(boat, middle, rail - 1, by(0.001, 0)));
    all.put("seat 1 mm higher", BoatEdits.withPlace(boat, 0, p -> p.at(p.z() + 0.001)));
    all.put("first thing 0.1 kg heavier", BoatEdits.withKit(boat, 0, k -> heavier(k, 0.1)));
    return all;
  }

  private static UnaryOperator<Vector3> by(double out, double up) {
    return p -> Vector3.of(p.x(), p.y() + out, p.z() + up);
  }

  private static Kit heavier(Kit k, double by) {
    return new Kit(k.name(), k.mass() + by, k.at(), k.volume(), k.fastened(), k.in());
  }

  /** No figure is above that of somebody who knows more. */
  static List<String> lessKnown(Boat boat, Recommendation all) {
    return lessKnown(lessKnown(boat), all);
  }

  /** The same for some of it, by what is not known. */
  static List<String> lessKnown(Map<String, Boat> edits, Recommendation all) {
    List<String> wrong = new ArrayList<>();
    edits.forEach(
        (what, edited) -> built(edited).ifPresent(less -> notMore(what, less, all, wrong)));
    return wrong;
  }

  private static Optional<Recommendation> built(Boat boat) {
    try {
      return Optional.of(of(boat));
    } catch (UnusableBoat refused) {
      return Optional.empty();
    }
  }

  private static void notMore(
      String what, Recommendation less, Recommendation all, List<String> wrong) {
    above(what + ": adults", less.people(), all.people(), wrong);
    above(what + ": crew", less.crew(), all.crew(), wrong);
    above(what + ": load", less.load(), all.load(), wrong);
    for (Recommendation.CrewLimit now : less.crewLimits()) {
      double then =
          all.crewLimits().stream()
              .filter(l -> l.people() == now.people())
              .mapToDouble(Recommendation.CrewLimit::massLimit)
              .findFirst()
              .orElse(0);
      above(what + ": each of " + now.people(), now.massLimit(), then, wrong);
      double total =
          all.crewLimits().stream()
              .filter(l -> l.people() == now.people())
              .mapToDouble(LimitsProperties::total)
              .findFirst()
              .orElse(0);
      above(what + ": besides and " + now.people(), total(now), total, wrong);
    }
  }

  private static void above(String what, double less, double all, List<String> wrong) {
    if (!(less <= all)) {
      wrong.add(
          told("less known", String.format(Locale.ROOT, "%s %.0f, was %.0f", what, less, all)));
    }
  }

  static Map<String, Boat> lessKnown(Boat boat) {
    List<Station> stations = boat.hull().stations();
    Map<String, Boat> all = new LinkedHashMap<>();
    for (int i = 0; i < boat.chambers().size(); i++) {
      String name = boat.chambers().get(i).name();
      boolean foam = boat.chambers().get(i).filling() instanceof Filling.Foam;
      all.put(
          name + (foam ? " of unknown foam" : " only claimed"),
          BoatEdits.withChamber(
              boat, i, foam ? LimitsProperties::unknown : LimitsProperties::claimed));
      all.put(name + " left out", boat.withChambers(BoatEdits.without(boat.chambers(), i)));
    }
    for (int i = 1; i + 1 < stations.size(); i++) {
      all.put(
          "station " + stations.get(i).name() + " left out",
          BoatEdits.withStations(boat, BoatEdits.without(stations, i)));
    }
    return all;
  }

  private static Chamber claimed(Chamber c) {
    return c.filledWith(new Filling.Air(Seal.CLAIMED, Optional.empty()));
  }

  private static Chamber unknown(Chamber c) {
    return c.filledWith(new Filling.Foam(false, true));
  }

  private static String told(String property, String what) {
    return property + ": " + what;
  }
}
