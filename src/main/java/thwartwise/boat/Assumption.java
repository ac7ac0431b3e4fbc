package thwartwise.boat;

import java.util.List;
import thwartwise.hull.Material;

/**
 * What was taken for granted of a boat because nobody measured it; metres and kilograms. Boat files
 * keep the names of these types and of their parts for good.
 */
public sealed interface Assumption {

  /** The shell as thick as is usual for the stuff. */
  record UsualShell(Material material, double thickness) implements Assumption {}

  /** A shell that nobody measured is taken as thick, so that chambers are small. */
  record ThickShell(Material material, double thickness) implements Assumption {}

  /** People stand on the shell itself. */
  record FloorOnShell(double thickness) implements Assumption {}

  /**
   * An answer that was guessed.
   *
   * @param answer question and value as they were shown when it was given
   * @param countedPoorer whether a judgement was taken off it
   */
  record Guess(String answer, boolean countedPoorer) implements Assumption {}

  /** A hull that was not weighed, taken as heavy for its length times beam. */
  record HullByArea(double kilogramsPerSquareMetre) implements Assumption {}

  /** All kit but the motor as one loose weight so high above the bottom. */
  record KitAsOneWeight(double height) implements Assumption {}

  /** A bench along either side, people on it up to so far in from the rail. */
  record SideBenches(double inward) implements Assumption {}

  /** People who were named, and where the mass of each comes from. */
  record NamedCrew(List<MassSource> people) implements Assumption {
    public NamedCrew {
      people = List.copyOf(people);
    }
  }

  /**
   * Where the mass of one person comes from.
   *
   * @param source with its measures in either system, as in {@code UnitText}
   */
  record MassSource(String name, String source) {}

  /** A trial in knee-deep water that counts for nothing; the date as in ISO 8601. */
  record TrialNotCounted(String date, TrialFault fault) implements Assumption {}

  /** Why a trial counts for nothing. */
  enum TrialFault {
    OF_ANOTHER_BOAT,
    SEATS_NOT_NAMED
  }

  /** What the short walk simplifies. */
  record Simplified(Simplification what) implements Assumption {}

  /** What the short walk about a borrowed boat takes without a figure. */
  enum Simplification {
    SHORT_WALK,
    HULL_DRAWN_FROM_A_FEW_DIMENSIONS,
    MATERIAL_NOT_KNOWN,
    MOTOR_WEIGHT_BY_POWER,
    SEATS_EVENLY_SPACED,
    NO_LEAK_TEST_SHOWN,
    LEAK_TEST_ON_PAPER
  }

  /** What holds for a boat of which less is known or measured. */
  record Unmeasured(UnmeasuredThing what) implements Assumption {}

  /** Things that are taken for granted without a figure. */
  enum UnmeasuredThing {
    CENTRE_OF_BARE_HULL,
    PROPULSION,
    KIT_STAYS_WHERE_LISTED
  }

  /** Kit of known litres that is not fastened and so gives no lift in a swamped boat. */
  record LooseKit(String name) implements Assumption {}

  /** More people sit at a place than it is said to take. */
  record CrowdedPlace(String place) implements Assumption {}

  /**
   * What one more measured station between two others would be worth.
   *
   * @param volumeM3 the chamber volume that could then count
   * @param reducesAllowance whether less would then be taken off every volume and height
   */
  record StationGain(String aft, String fore, double volumeM3, boolean reducesAllowance)
      implements Assumption {}

  /** What the method takes for granted of every boat. */
  record OfMethod(MethodAssumption assumption) implements Assumption {}

  /** In words: what somebody wrote into a boat file, and what older files have. */
  record Stated(String words) implements Assumption {}

  /** Thick for a stuff whose shell nobody measured. */
  static Assumption thickShell(Material material) {
    return new ThickShell(material, material.unmeasuredThickness());
  }
}
