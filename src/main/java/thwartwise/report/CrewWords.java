package thwartwise.report;

import java.util.Comparator;
import java.util.Optional;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;

/** How many people, and how heavy. Mass comes before number. */
public final class CrewWords {
  private CrewWords() {}

  /** The number of people with the greatest total mass. */
  static int aboard(Recommendation crew) {
    int people = Math.max(1, crew.people());
    return crew.crewLimits().stream()
        .filter(limit -> limit.people() * (limit.massLimit() + 1) > crew.crew())
        .map(CrewLimit::people)
        .min(Comparator.comparingInt(n -> Math.abs(n - people)))
        .orElse(people);
  }

  /** The total mass holds only if no person is heavier than the search allowed. */
  static String heaviest(Recommendation crew, UnitFormat units) {
    int people = aboard(crew);
    return crew.crewLimits().stream()
        .filter(limit -> limit.people() == people && people > 1)
        .map(limit -> ", nobody over " + units.mass(limit.massLimit(), Side.DOWN))
        .findFirst()
        .orElse("");
  }

  /** One more adult, who is only a little too heavy. */
  public static Optional<String> nearly(Recommendation crew, UnitFormat units) {
    return crew.nearlyOneMore()
        .map(
            limit ->
                Sentence.capital(heads(limit, units))
                    + ", not of "
                    + units.mass(crew.adult(), Side.UP));
  }

  /** The number of people, and the greatest mass of each. */
  static String heads(CrewLimit limit, UnitFormat units) {
    return FigureText.people(limit.people()) + " of " + upTo(limit, units);
  }

  static int most(Recommendation crew) {
    return crew.crewLimits().stream().mapToInt(CrewLimit::people).max().orElse(crew.people());
  }

  /**
   * Whether a limit on each person applies to the extra weight: it was searched with nobody heavier
   * than an adult.
   */
  static boolean isExtraForLightPeopleOnly(Recommendation crew) {
    return crew.crewLimits().stream()
        .anyMatch(l -> l.extraMass() >= 1 && l.massLimit() > crew.adult());
  }

  /** How many people the swamped boat holds up, and how. */
  static String heldUp(Recommendation crew) {
    return FigureText.adults(crew.holdsUpWhenSwamped())
        + (crew.heldOnTo() ? ", in the water and holding on" : "");
  }

  /** The greatest mass of each person, for this number of people. */
  static String upTo(CrewLimit limit, UnitFormat units) {
    return "up to "
        + units.mass(limit.massLimit(), Side.DOWN)
        + (limit.people() > 1 ? " each" : "");
  }
}
