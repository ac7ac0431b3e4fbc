package thwartwise.boat;

import java.util.List;
import thwartwise.hull.Material;

/**
 * An assumption about a boat, made because nobody measured it; metres and kilograms. Boat files
 * store the names of these types and of their components for good.
 */
public sealed interface Assumption {

  /** The shell has the usual thickness of its material. */
  record UsualShell(Material material, double thickness) implements Assumption {}

  /** An unmeasured shell is taken as thick, so that chambers are small. */
  record ThickShell(Material material, double thickness) implements Assumption {}

  /** People stand on the shell itself. */
  record FloorOnShell(double thickness) implements Assumption {}

  /**
   * A guess.
   *
   * @param answer question and value as they were shown when it was given
   * @param countedPoorer whether it was counted less favourably than guessed
   */
  record Guess(String answer, boolean countedPoorer) implements Assumption {}

  /** An unweighed hull is taken as heavy for its length times beam. */
  record HullByArea(double kilogramsPerSquareMetre) implements Assumption {}

  /** All kit but the motor is one loose weight at this height above the bottom. */
  record KitAsOneWeight(double height) implements Assumption {}

  /** A bench runs along either side; people sit on it up to this far in from the rail. */
  record SideBenches(double inward) implements Assumption {}

  /** The named people, and the source of the mass of each. */
  record NamedCrew(List<MassSource> people) implements Assumption {
    public NamedCrew {
      people = List.copyOf(people);
    }
  }

  /**
   * The source of one person's mass.
   *
   * @param source with its measures in both systems, as in {@code UnitText}
   */
  record MassSource(String name, String source) {}

  /** A trial in knee-deep water does not count; the date as in ISO 8601. */
  record TrialNotCounted(String date, TrialFault fault) implements Assumption {}

  /** Why a trial does not count. */
  enum TrialFault {
    OF_ANOTHER_BOAT,
    SEATS_NOT_NAMED
  }

  /** A simplification of the short walk. */
  record Simplified(Simplification what) implements Assumption {}

  /** The simplifications of the short walk, which have no figure. */
  enum Simplification {
    SHORT_WALK,
    HULL_DRAWN_FROM_A_FEW_DIMENSIONS,
    MATERIAL_NOT_KNOWN,
    MOTOR_WEIGHT_BY_POWER,
    SEATS_EVENLY_SPACED,
    NO_LEAK_TEST_SHOWN,
    LEAK_TEST_ON_PAPER
  }

  /** A part of the boat is less known or measured. */
  record Unmeasured(UnmeasuredThing what) implements Assumption {}

  /** The things that are assumed without a figure. */
  enum UnmeasuredThing {
    CENTRE_OF_BARE_HULL,
    PROPULSION,
    KIT_STAYS_WHERE_LISTED
  }

  /** Kit of known volume is not fastened and so gives no lift in a swamped boat. */
  record LooseKit(String name) implements Assumption {}

  /** More people sit at a place than it takes. */
  record CrowdedPlace(String place) implements Assumption {}

  /**
   * The gain of one more measured station between two others.
   *
   * @param volumeM3 the chamber volume that could then count
   * @param reducesAllowance whether the allowance on every volume and height would be smaller
   */
  record StationGain(String aft, String fore, double volumeM3, boolean reducesAllowance)
      implements Assumption {}

  /** An assumption of the method for every boat. */
  record OfMethod(MethodAssumption assumption) implements Assumption {}

  /** Words: what somebody wrote into a boat file, and what older files have. */
  record Stated(String words) implements Assumption {}

  /** The assumption of a thick shell for a material. */
  static Assumption thickShell(Material material) {
    return new ThickShell(material, material.unmeasuredThickness());
  }
}
