package thwartwise.boat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The assumptions of the method for every boat, with the figures in force; SI, shares from 0 to 1.
 * {@code basis} is how well a figure is founded, in the words of the rule set. Records store the
 * names of these types and of their components, so they are never renamed.
 */
public sealed interface MethodAssumption {

  /** Still people; the mass of an unnamed adult, dressed, and the least mass considered. */
  record SeatedCrew(double adult, double lightest) implements MethodAssumption {}

  /**
   * The allowance for errors of measurement.
   *
   * @param mass share added to every mass
   * @param volume share subtracted from every counted volume
   * @param height subtracted from every height above the water
   * @param guessed why it is larger than usual, where it is
   */
  record MeasurementAllowance(
      double mass, double volume, double height, Optional<GuessedShape> guessed)
      implements MethodAssumption {}

  /**
   * A hull with few stations, or with a long gap between two of them.
   *
   * @param fewStations whether there are few; otherwise the gap is long
   * @param measured how many stations, or the share of the length in the gap
   * @param enough how many, or what share, would give the usual allowance
   * @param volume the usual share of volumes
   * @param height the usual loss of height
   */
  record GuessedShape(
      boolean fewStations, double measured, double enough, double volume, double height) {}

  /**
   * What the ways count as in which somebody said that things were measured.
   *
   * @param listedMass share added to the mass of hull and kit instead
   * @param ways the limit of each: one standard deviation, or how many times what counts unsaid
   */
  record MeasuringWays(double listedMass, List<RuleFigure> ways) implements MethodAssumption {
    public MeasuringWays {
      ways = List.copyOf(ways);
    }
  }

  /** The share of the way out to which everyone moves in "everyone to one side". */
  record MovedShare(double share, String source) implements MethodAssumption {}

  /** Density of the swamped shell; whether the owner stated it or the material has it. */
  record SwampedShell(double density, boolean stated) implements MethodAssumption {}

  /** When a chamber counts. */
  record ChamberRule(double leastMinutes, double mostLitres, int freshMonths, double foamShare)
      implements MethodAssumption {}

  /** How long a chamber that let water in must go on lifting, and why so long. */
  record LeakingChambers(double minutes, String source) implements MethodAssumption {}

  /** Where the weight of somebody still acts, kneeling: height above the floor. */
  record StillPerson(double kneeling) implements MethodAssumption {}

  /** Where the weight of somebody stiff acts: above the seat, the floor and the rail. */
  record StiffPerson(double seated, double standing, double kneeling, double leaning)
      implements MethodAssumption {}

  /** How far people move out, and to one side in standing up. */
  record MovingPerson(double leastReach, double sway) implements MethodAssumption {}

  /** A body in the water: the share of its mass that is legs, and its height above the seat. */
  record BodyInWater(double density, double legs, double height) implements MethodAssumption {}

  /** Figures behind the pulls on the boat; whether its anchor line is known. */
  record PullFigures(List<RuleFigure> figures, boolean anchorLineKnown)
      implements MethodAssumption {
    public PullFigures {
      figures = List.copyOf(figures);
    }
  }

  /** Figures behind bailing, drains and people in the water. */
  record FlowFigures(List<RuleFigure> figures) implements MethodAssumption {
    public FlowFigures {
      figures = List.copyOf(figures);
    }
  }

  /**
   * One figure of a rule set.
   *
   * @param limit its key there
   */
  record RuleFigure(String limit, double value, String basis) {}

  /** The heel above which a boat with water in it counts as not returning. */
  record NoReturn(double heel) implements MethodAssumption {}

  /** Waters that nobody described are taken as sheltered. */
  record UnstatedWaters(List<ShelteredWater> taken) implements MethodAssumption {
    public UnstatedWaters {
      taken = List.copyOf(taken);
    }
  }

  /**
   * One property of waters as it was assumed.
   *
   * @param figure empty for a property without one
   */
  record ShelteredWater(WaterProperty property, OptionalDouble figure, String basis) {}

  /** What can be stated of waters. */
  enum WaterProperty {
    WAVES,
    BREAKING,
    WIND,
    CURRENT,
    WEIR,
    WASH,
    TEMPERATURE,
    OFFSHORE
  }

  /** How much of the height of a wave must be left with everyone to one side. */
  record WaveAsFreeboard(double heeledShare, String basis) implements MethodAssumption {}
}
