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

/** A boat under inspection: what the search for advice asks of it, and of it after a change. */
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

  /** False proves that there are fewer adults than told, or as many and a lighter crew. */
  boolean mayReach(Capacity goal);

  List<Finding> findings();

  /** What limits crew, of the boat as it is loaded. */
  List<Finding> limitingAsLoaded();

  /** What limits crew, of people seated so, with the allowance taken off. */
  List<CheckReading> limitingReadings(Seating seating, List<Double> masses);

  /**
   * An inspection of the boat after a change.
   *
   * @throws thwartwise.hull.UnusableBoat when the change cannot be made to it
   */
  InspectedBoat after(Change change);

  /**
   * Every finding of this boat with the people of another inspection of it aboard, so that the two
   * can be laid side by side: as loaded, and the crews that other one recommends. Only how each
   * comes out is reported, not how far it is from its limit.
   */
  List<Finding> comparable(InspectedBoat other);

  /** Whether the recommended crews of this boat must not do it, or it was not worked out. */
  boolean forbidsAtLimit(CheckQuestion act);

  /** The acts that some crew recommended for this boat must not do. */
  Set<Subject> forbiddenAtLimit();

  /**
   * The acts that the largest crew of this boat must not do, and the crews of another inspection of
   * it may.
   */
  List<Subject> forbiddenActs(InspectedBoat other);
}
