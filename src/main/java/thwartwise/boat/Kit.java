package thwartwise.boat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.geometry.Box;
import thwartwise.geometry.Vector3;

/**
 * A piece of kit.
 *
 * @param at its centre
 * @param volume its own volume, m³; without one it gives no lift
 * @param in the chamber it is stowed in
 * @param workedFrom the place from which it is steered or rowed, where somebody stated it; only
 *     asked for a motor and oars
 */
public record Kit(
    String name,
    double mass,
    Vector3 at,
    Optional<Double> volume,
    boolean fastened,
    Optional<String> in,
    Optional<String> workedFrom) {

  private static final List<String> PETROL = List.of("petrol", "gasoline", "gas can", "fuel");
  private static final List<String> TANK = List.of("tank", "can", "canister");
  private static final List<String> MOTOR = List.of("motor", "engine", "outboard");
  private static final List<String> ROWING =
      List.of("oar", "oars", "paddle", "paddles", "scull", "sculls");
  private static final Pattern OARS = Pattern.compile("\\b(oars?|sculls?)\\b");
  private static final List<String> VENTED =
      List.of(
          "batter",
          "accu",
          "lithium",
          "lifepo",
          "li-ion",
          "lead-acid",
          "lead acid",
          "agm",
          "power bank",
          "powerbank",
          "power pack",
          "powerpack",
          "power station",
          "charger");

  /** A thing for which nobody stated where it is used from. */
  public Kit(
      String name,
      double mass,
      Vector3 at,
      Optional<Double> volume,
      boolean fastened,
      Optional<String> in) {
    this(name, mass, at, volume, fastened, in, Optional.empty());
  }

  /** A thing of which only the name is known. */
  public static Kit named(String name) {
    return new Kit(name, 0, Vector3.ZERO, Optional.empty(), false, Optional.empty());
  }

  /**
   * Whether its space must be vented and is never sealed: a battery gives off gas and a charger
   * heats.
   */
  public boolean needsVenting() {
    return nameContainsAny(VENTED);
  }

  /** The same by its name, or because it is stated to be the battery aboard. */
  public boolean needsVenting(ElectricalSystem electrics) {
    return needsVenting() || electrics.isBattery(name);
  }

  /** Whether it is a battery by its name, and not a charger. */
  public boolean isBattery() {
    return needsVenting() && !nameContainsAny(List.of("charger"));
  }

  /** The same by its name, or because it is stated to be the battery aboard. */
  public boolean isBattery(ElectricalSystem electrics) {
    return isBattery() || electrics.isBattery(name);
  }

  /** Whether it is a vessel of petrol by its name; a petrol motor is none. */
  public boolean holdsPetrol() {
    return nameContainsAny(PETROL) && (nameContainsAny(TANK) || !isMotor());
  }

  /** Whether it is petrol, a vessel of it or a motor that uses it, by its name. */
  public boolean isOfPetrol() {
    return nameContainsAny(PETROL);
  }

  /** Whether it is a motor by its name. */
  public boolean isMotor() {
    return nameContainsAny(MOTOR);
  }

  /** The same by its name, or because it is stated to be the motor aboard. */
  public boolean isMotor(ElectricalSystem electrics) {
    return isMotor() || electrics.isMotor(name);
  }

  /** Whether it is for rowing or paddling by its name. */
  public boolean isForRowing() {
    return List.of(name.toLowerCase(Locale.ROOT).split("[^a-z]+")).stream()
        .anyMatch(ROWING::contains);
  }

  /** Whether it is something to row with by its name; a paddle is used from anywhere. */
  public boolean isOars() {
    return OARS.matcher(name.toLowerCase(Locale.ROOT)).find();
  }

  /** Whether it is for paddling by its name; a paddle needs no rowlocks. */
  public boolean isPaddle() {
    return nameContainsAny(List.of("paddle"));
  }

  /** Whether it is a solar panel by its name. */
  public boolean isSolarPanel() {
    return nameContainsAny(List.of("solar")) || name.equalsIgnoreCase("panel");
  }

  /** Whether its name contains one of these words, given in small letters. */
  public boolean nameContainsAny(List<String> words) {
    String mine = name.toLowerCase(Locale.ROOT);
    return words.stream().anyMatch(mine::contains);
  }

  /** A copy outside any chamber, loose, with its middle here. */
  public Kit movedTo(Vector3 place) {
    return new Kit(name, mass, place, volume, fastened, Optional.empty(), workedFrom);
  }

  /** A copy that nothing holds. */
  Kit loose() {
    return new Kit(name, mass, at, volume, false, in, workedFrom);
  }

  /** A copy that is used from that place. */
  public Kit withWorkedFrom(String place) {
    return new Kit(name, mass, at, volume, fastened, in, Optional.of(place));
  }

  /** The space it takes up, if its volume is known. */
  public Box box() {
    return Box.cube(at, volume.orElse(0.0));
  }
}
