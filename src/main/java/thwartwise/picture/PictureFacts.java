package thwartwise.picture;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.RightingCurve;
import thwartwise.boat.Side;
import thwartwise.remedy.Deed;

/** The content of one picture, as data. Its title and caption are written where the page is. */
public sealed interface PictureFacts {

  /** The people drawn in it. */
  CrewAboard aboard();

  /**
   * The plan.
   *
   * @param places to sit
   * @param kit pieces of it
   * @param kitIsNamed false when there is too much of it
   * @param counting chambers that count when swamped
   * @param claimed chambers that are only claimed to be tight
   * @param open the other chambers
   */
  record Plan(
      CrewAboard aboard,
      int places,
      int kit,
      boolean kitIsNamed,
      int counting,
      int claimed,
      int open)
      implements PictureFacts {}

  /**
   * The boat from its starboard side.
   *
   * @param waterlines that are drawn, as they are labelled
   * @param empty whether there is a waterline with nobody aboard
   * @param loaded whether there is one with everybody aboard
   * @param heel swamped, rad; zero where it is not upright
   */
  record Profile(
      CrewAboard aboard,
      List<String> waterlines,
      boolean empty,
      boolean loaded,
      SwampedRest swamped,
      double heel)
      implements PictureFacts {
    public Profile {
      waterlines = List.copyOf(waterlines);
    }
  }

  /**
   * The boat full of water.
   *
   * @param heel rad
   */
  record FullOfWater(CrewAboard aboard, double heel) implements PictureFacts {}

  /**
   * The boat heeled and cut across.
   *
   * @param side toward which it heels
   * @param heel rad
   * @param rests whether it comes to rest there with everyone to that side
   * @param floods whether water begins to come in there
   * @param end why the righting curve ends
   * @param x where it is cut, m
   * @param arm of the weight about the lift, m; positive when it brings the boat back
   * @param lowestEdge name of the edge where it is cut
   * @param freeboard of that edge, m
   */
  record Section(
      CrewAboard aboard,
      Side side,
      double heel,
      boolean rests,
      boolean floods,
      RightingCurve.End end,
      double x,
      double arm,
      String lowestEdge,
      double freeboard)
      implements PictureFacts {}

  /**
   * The righting moment against heel.
   *
   * @param side toward which it heels
   * @param greatest moment, N·m
   * @param greatestAt heel of the greatest moment, rad
   * @param endsAt heel, rad
   * @param end why it ends there
   * @param restsAt heel of the equilibrium with everyone to that side, rad
   */
  record Moments(
      CrewAboard aboard,
      Side side,
      double greatest,
      double greatestAt,
      double endsAt,
      RightingCurve.End end,
      OptionalDouble restsAt)
      implements PictureFacts {}

  /**
   * The swamped boat before a change and after it.
   *
   * @param then the people drawn after it
   */
  record Changed(
      CrewAboard aboard, CrewAboard then, Deed deed, SwampedRest before, SwampedRest after)
      implements PictureFacts {}

  /**
   * The people drawn aboard.
   *
   * @param each mass of each of them, kg; zero when nobody is
   */
  record CrewAboard(int people, double each) {
    public boolean isEmpty() {
      return people == 0;
    }
  }

  /** The pose of a swamped boat, as far as it can be drawn. */
  enum SwampedRest {
    NOT_ASSESSED,
    SINKS,
    NOT_UPRIGHT,
    UPRIGHT
  }
}
