package thwartwise.passage;

import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.SolarDay;
import thwartwise.electrics.TimedRun;
import thwartwise.electrics.UsableCharge;
import thwartwise.geometry.Vector3;
import thwartwise.passage.MotorSpeed.HullSpeed;

/**
 * How long and how far motor and battery take a boat on a day.
 *
 * @param usable what the battery gives; empty where nothing is known of one
 * @param boat after somebody looked it over, with the equipment that is aboard
 * @param fullCurrent of the motor, A; empty where not even a guess is possible
 * @param speeds fastest first; none where running time cannot be computed
 * @param hullSpeed m/s, of the whole length of the boat
 * @param rowing the means to row or paddle home; empty where there are none among the kit
 * @param batteryAshore the name of a battery that is stated and not among the kit
 * @param motorAshore the same for the motor
 */
public record PassagePlan(
    Boat boat,
    Optional<UsableCharge> usable,
    Optional<Double> fullCurrent,
    List<MotorSpeed> speeds,
    double hullSpeed,
    Optional<Rowing> rowing,
    Optional<String> batteryAshore,
    Optional<String> motorAshore) {

  /** The daily time of a lamp or socket that nobody timed, s (judgement). */
  private static final double UNSTATED_USE = 8 * 3600.0;

  /**
   * The share of a motor's electrical power at its shaft, where only the shaft power is known
   * (judgement: the poor end of small motors, which have 0.6 to 0.8, FROM MEMORY).
   */
  private static final double SHAFT_SHARE = 0.6;

  public PassagePlan {
    speeds = List.copyOf(speeds);
  }

  /** The plan of a boat as its file states it, after somebody looked it over. */
  public static PassagePlan of(Boat stated, LocalDate today) {
    Boat whole = stated.asFound();
    List<String> kit = whole.kit().stream().map(Kit::name).toList();
    Boat boat = whole.withElectrics(whole.electrics().aboard(kit));
    ElectricalSystem electrics = boat.electrics();
    Optional<UsableCharge> usable =
        electrics.battery().map(b -> UsableCharge.of(b, today, boat.waters().temperature()));
    Optional<String> motorAshore = ashore(whole.electrics().motor().flatMap(m -> m.kit()), kit);
    Optional<Double> full = motorAshore.isPresent() ? Optional.empty() : fullCurrent(boat);
    double hullSpeed = HullSpeed.of(length(boat));
    return new PassagePlan(
        boat,
        usable,
        full,
        usable
            .filter(u -> motorAshore.isEmpty() && !u.isWornOut())
            .map(u -> speeds(electrics, u, full, hullSpeed))
            .orElse(List.of()),
        hullSpeed,
        rowing(boat.kit()),
        ashore(whole.electrics().battery().map(Battery::kit), kit),
        motorAshore);
  }

  private static Optional<Rowing> rowing(List<Kit> kit) {
    List<Kit> all = kit.stream().filter(Kit::isForRowing).toList();
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(all.stream().allMatch(Kit::isPaddle) ? Rowing.PADDLES : Rowing.OARS);
  }

  private static Optional<String> ashore(Optional<String> named, List<String> kit) {
    return named.filter(name -> !kit.contains(name));
  }

  /**
   * The current: from the plate, from the thrust or, if only the shaft power is known, from that. A
   * battery does not drive a boat with petrol aboard unless somebody says so.
   */
  private static Optional<Double> fullCurrent(Boat boat) {
    double volts = boat.electrics().volts();
    return boat.electrics()
        .motor()
        .flatMap(motor -> motor.currentAt(volts))
        .or(
            () ->
                boat.propulsion() instanceof Propulsion.Outboard outboard
                        && boat.kit().stream().noneMatch(Kit::isOfPetrol)
                    ? Optional.of(outboard.power() / SHAFT_SHARE / volts)
                    : Optional.empty());
  }

  private static double length(Boat boat) {
    DoubleSummaryStatistics along =
        boat.hull().stations().stream()
            .flatMap(station -> station.port().stream())
            .mapToDouble(Vector3::x)
            .summaryStatistics();
    return along.getMax() - along.getMin();
  }

  private static List<MotorSpeed> speeds(
      ElectricalSystem electrics, UsableCharge usable, Optional<Double> full, double hullSpeed) {
    double otherDraw = electrics.otherDraw();
    Stream<MotorSpeed> timed =
        electrics.runs().stream()
            .flatMap(run -> timed(run, usable, full, otherDraw, hullSpeed).stream())
            .sorted(Comparator.comparingDouble(MotorSpeed::current).reversed());
    return electrics.runs().isEmpty()
        ? full.map(a -> untimed(a, usable, otherDraw, hullSpeed)).stream().toList()
        : timed.toList();
  }

  private static Optional<MotorSpeed> timed(
      TimedRun run,
      UsableCharge usable,
      Optional<Double> full,
      double otherDraw,
      double hullSpeed) {
    return run.current()
        .or(() -> full)
        .map(
            current ->
                new MotorSpeed(
                    Optional.of(run),
                    Math.min(run.speed(), hullSpeed),
                    current,
                    run.current().isEmpty(),
                    run.speed() > hullSpeed,
                    usable.time(current + otherDraw)));
  }

  private static MotorSpeed untimed(
      double current, UsableCharge usable, double otherDraw, double hullSpeed) {
    return new MotorSpeed(
        Optional.empty(),
        Math.min(MotorSpeed.UNTIMED, hullSpeed),
        current,
        true,
        false,
        usable.time(current + otherDraw));
  }

  /** The claimed running time at full power, s, where the battery cannot give it. */
  public Optional<Double> claimNotMet() {
    return boat.electrics()
        .motor()
        .flatMap(ElectricMotor::claimedTime)
        .filter(claimed -> fullTime().map(time -> claimed > time).orElse(false));
  }

  /** The running time at full power, lamps and sockets on, s. */
  public Optional<Double> fullTime() {
    return usable.flatMap(u -> fullDraw().map(u::time));
  }

  /** The current at full power with lamps and sockets on, A. */
  public Optional<Double> fullDraw() {
    return fullCurrent.map(a -> a + boat.electrics().otherDraw());
  }

  /**
   * The return trip at the fastest setting against the wind and current that the boat file states;
   * empty where it states neither, or where no running time is known.
   */
  public Optional<ReturnTrip> inStatedWaters() {
    boolean stated = boat.waters().wind().isPresent() || boat.waters().current().isPresent();
    return speeds.stream()
        .filter(speed -> stated)
        .findFirst()
        .map(s -> ReturnTrip.of(s.time(), s.speed(), statedWind(), statedStream()));
  }

  /** The stated wind, m/s; zero where none is stated. */
  public double statedWind() {
    return boat.waters().wind().orElse(0.0);
  }

  /** The stated current of the water, m/s; zero where none is stated. */
  public double statedStream() {
    return boat.waters().current().orElse(0.0);
  }

  /** The daily charge from the panel in a dull month, C; empty without a latitude. */
  public Optional<Double> givenBack(Month month) {
    ElectricalSystem electrics = boat.electrics();
    return electrics
        .panel()
        .flatMap(
            panel ->
                electrics
                    .latitude()
                    .map(l -> SolarDay.energy(panel.watts(), l, month) / electrics.volts()));
  }

  /** The daily charge for lamps and sockets, C. */
  public double usedADay() {
    return boat.electrics().circuits().stream()
        .filter(c -> c.use().isOtherDraw())
        .mapToDouble(PassagePlan::usedADay)
        .sum();
  }

  private static double usedADay(Circuit circuit) {
    return circuit.current() * circuit.timeADay().orElse(UNSTATED_USE);
  }
}
