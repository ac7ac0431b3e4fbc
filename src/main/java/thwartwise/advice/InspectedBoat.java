package thwartwise.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import thwartwise.boat.BoatModel;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.CheckReading;
import thwartwise.checks.Finding;
import thwartwise.crew.Capacity;
import thwartwise.crew.Limits;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Refusal;
import thwartwise.crew.Seating;
import thwartwise.remedy.Change;

/** A boat under inspection, as the search for advice needs it before and after a change. */
public interface InspectedBoat {
  BoatModel model();

  /** The day for which the boat is inspected. */
  LocalDate date();

  /** Why nothing is recommended for the boat, whatever is changed; empty where something may be. */
  List<Refusal> refusals();

  Limits limits();

  Recommendation recommendation();

  /** The figures of the recommendation, without what it takes to tell why. */
  Capacity capacity();

  /** False proves that there are fewer adults than given, or as many and a lighter crew. */
  boolean mayReach(Capacity goal);

  List<Finding> findings();

  /** The findings that limit the crew, for the boat as it is loaded. */
  List<Finding> limitingAsLoaded();

  /** The findings that limit the crew, for people in these seats, after the allowance. */
  List<CheckReading> limitingReadings(Seating seating, List<Double> masses);

  /**
   * An inspection of the boat after a change.
   *
   * @throws thwartwise.hull.UnusableBoat when the change cannot be made to it
   */
  InspectedBoat after(Change change);

  /**
   * Every finding of this boat with the people of another inspection aboard, for a comparison of
   * the two: as loaded, and with the crews that the other one recommends. Only outcomes are
   * reported, not margins.
   */
  List<Finding> comparable(InspectedBoat other);

  /** Whether the recommended crews of this boat must not do it, or it was not assessed. */
  boolean forbidsAtLimit(CheckQuestion act);

  /** The acts that some recommended crew of this boat must not do. */
  Set<Subject> forbiddenAtLimit();

  /**
   * The acts that the largest crew of this boat must not do, and the crews of another inspection
   * may.
   */
  List<Subject> forbiddenActs(InspectedBoat other);
}
