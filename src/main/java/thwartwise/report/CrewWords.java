package thwartwise.report;

import java.util.Comparator;
import java.util.Optional;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;

/** How many people, and how heavy. Kilograms come before heads. */
public final class CrewWords {
  private CrewWords() {}

  /** The number of people that comes to the greatest mass of people. */
  static int aboard(Recommendation crew) {
    int people = Math.max(1, crew.people());
    return crew.crewLimits().stream()
        .filter(limit -> limit.people() * (limit.massLimit() + 1) > crew.crew())
        .map(CrewLimit::people)
        .min(Comparator.comparingInt(n -> Math.abs(n - people)))
        .orElse(people);
  }

  /** The sum is only good for people none of whom is heavier than the search allowed. */
  static String heaviest(Recommendation crew, UnitFormat units) {
    int people = aboard(crew);
    return crew.crewLimits().stream()
        .filter(limit -> limit.people() == people && people > 1)
        .map(limit -> ", nobody over " + units.mass(limit.massLimit(), Side.DOWN))
        .findFirst()
        .orElse("");
  }

  /** One adult more who is only a little too heavy. */
  public static Optional<String> nearly(Recommendation crew, UnitFormat units) {
    return crew.nearlyOneMore()
        .map(
            limit ->
                Sentence.capital(heads(limit, units))
                    + ", not of "
                    + units.mass(crew.adult(), Side.UP));
  }

  /** So many people, and how heavy each may be. */
  static String heads(CrewLimit limit, UnitFormat units) {
    return FigureText.people(limit.people()) + " of " + upTo(limit, units);
  }

  static int most(Recommendation crew) {
    return crew.crewLimits().stream().mapToInt(CrewLimit::people).max().orElse(crew.people());
  }

  /** Cargo was looked for with nobody heavier than an adult: whether that is a limit. */
  static boolean isExtraForLightPeopleOnly(Recommendation crew) {
    return crew.crewLimits().stream()
        .anyMatch(l -> l.extraMass() >= 1 && l.massLimit() > crew.adult());
  }

  /** How many it holds up full of water, and how. */
  static String heldUp(Recommendation crew) {
    return FigureText.adults(crew.holdsUpWhenSwamped())
        + (crew.heldOnTo() ? ", in the water and holding on" : "");
  }

  /** How heavy each of so many people may be. */
  static String upTo(CrewLimit limit, UnitFormat units) {
    return "up to "
        + units.mass(limit.massLimit(), Side.DOWN)
        + (limit.people() > 1 ? " each" : "");
  }
}
