package thwartwise.spread;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Loading;
import thwartwise.boat.Person;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.checks.Role;
import thwartwise.crew.Seating;
import thwartwise.loadcase.LoadedBoat;

/** People to be put aboard a boat that is slightly different. */
interface CrewCase {

  int people();

  /** Whether they are the people of the boat file. */
  boolean isAsLoaded();

  /** How they sit; empty where the boat file seats them. */
  Optional<Seating> seating();

  /** The roles of the checks that are asked. */
  Set<Role> asked();

  /**
   * The people aboard a boat, as measured, without allowance.
   *
   * @param factors for the mass of each person
   */
  LoadedBoat aboard(BoatModel model, List<Double> factors);

  /**
   * People of stated masses in one seating.
   *
   * @param masses in the order of the places, kg
   */
  record SeatedCrew(Seating seated, List<Double> masses, Packing packing, Set<Role> asked)
      implements CrewCase {
    /** The case for the checks that limit the crew. */
    SeatedCrew(Seating seated, List<Double> masses, Packing packing) {
      this(seated, masses, packing, Set.of(Role.LIMITS_CREW));
    }

    /** The same with nobody heavier than this, kg. */
    SeatedCrew upTo(double heaviest) {
      return new SeatedCrew(
          seated, masses.stream().map(mass -> Math.min(mass, heaviest)).toList(), packing, asked);
    }

    SeatedCrew asking(Set<Role> roles) {
      return new SeatedCrew(seated, masses, packing, roles);
    }

    @Override
    public Optional<Seating> seating() {
      return Optional.of(seated);
    }

    @Override
    public int people() {
      return masses.size();
    }

    @Override
    public boolean isAsLoaded() {
      return false;
    }

    @Override
    public LoadedBoat aboard(BoatModel model, List<Double> factors) {
      List<Double> weighed =
          IntStream.range(0, masses.size()).mapToObj(i -> masses.get(i) * factors.get(i)).toList();
      return LoadedBoat.of(model, seated.bodies(model, weighed, packing));
    }
  }

  /** The people of the boat file, in their places there. */
  record NamedPeople(List<Person> named, Set<Role> asked) implements CrewCase {
    @Override
    public int people() {
      return named.size();
    }

    @Override
    public Optional<Seating> seating() {
      return Optional.empty();
    }

    @Override
    public boolean isAsLoaded() {
      return true;
    }

    @Override
    public LoadedBoat aboard(BoatModel model, List<Double> factors) {
      List<Body> seated = model.aboard();
      List<Body> weighed =
          IntStream.range(0, seated.size())
              .mapToObj(i -> seated.get(i).withMass(seated.get(i).mass() * factors.get(i)))
              .toList();
      return LoadedBoat.of(model, weighed);
    }
  }

  /** A seated crew with something more aboard besides. */
  record LadenCrew(SeatedCrew crew, Loading.Weight extra) implements CrewCase {
    /** The same with so much besides instead, kg. */
    LadenCrew carrying(double mass) {
      return new LadenCrew(crew, new Loading.Weight(mass, extra.at()));
    }

    @Override
    public Optional<Seating> seating() {
      return crew.seating();
    }

    @Override
    public int people() {
      return crew.people();
    }

    @Override
    public boolean isAsLoaded() {
      return false;
    }

    @Override
    public Set<Role> asked() {
      return crew.asked();
    }

    @Override
    public LoadedBoat aboard(BoatModel model, List<Double> factors) {
      return crew.aboard(model, factors).with(extra);
    }
  }
}
