package thwartwise.report;

import java.util.Comparator;
import java.util.Optional;
import thwartwise.inspection.LimitingFactorWords;
import thwartwise.inspection.Recommendation;
import thwartwise.inspection.Recommendation.CrewLimit;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.record.InspectionRecord;

/** How much, how many, and what stands in the way of one more. Kilograms come before heads. */
final class CrewSection {
  private CrewSection() {}

  static void write(Page page, InspectionRecord inspection) {
    Recommendation crew = inspection.report().recommendation();
    page.heading("How much and how many");
    if (Verdict.of(inspection.report()) == Verdict.HELD) {
      page.paragraph("Nobody and nothing, as the boat stands", "A launch that is held has no crew");
    } else {
      LoadWords.write(page, inspection.boat(), crew);
      page.gap();
      page.paragraph(kilograms(crew)).paragraph(heads(crew)).paragraph(mostHeads(crew));
      SeatingWords.write(page, inspection.boat().places(), crew);
    }
    if (crew.wasSearched()) {
      page.gap().paragraph(staysUp(crew));
      HeldOnWords.of(inspection.report()).forEach(page::paragraph);
      next(page, crew);
    }
  }

  private static String[] kilograms(Recommendation crew) {
    String with = " with " + FigureText.people(aboard(crew)) + " aboard";
    return new String[] {
      "People, dressed and with life jackets on: up to "
          + FigureText.with(FigureText.down(crew.crew(), 0), "kg")
          + with
          + heaviest(crew),
      "Besides "
          + besides(crew)
          + " and the kit listed no more than "
          + FigureText.with(FigureText.down(crew.extra(), 0), "kg")
          + ", low down on the middle line"
          + seated(crew)
          + whileLight(crew)
    };
  }

  private static String besides(Recommendation crew) {
    int people = Math.max(1, crew.people());
    return people == aboard(crew) ? "them" : FigureText.people(people);
  }

  private static String seated(Recommendation crew) {
    int people = Math.max(1, crew.people());
    boolean oneWay =
        crew.crewLimits().stream()
            .anyMatch(l -> l.people() == people && !l.besidesLike().isEmpty());
    return oneWay ? ", seated as is told with it below" : "";
  }

  /** Cargo was looked for with nobody heavier than an adult. */
  private static String whileLight(Recommendation crew) {
    boolean heavier =
        crew.crewLimits().stream()
            .anyMatch(l -> !Double.isNaN(l.extra()) && l.eachUpTo() > crew.adult());
    return heavier && crew.extra() > 0
        ? ", and only while nobody is over "
            + FigureText.with(FigureText.down(crew.adult(), 0), "kg")
        : "";
  }

  /** The number of people that comes to the greatest mass of people. */
  static int aboard(Recommendation crew) {
    int people = Math.max(1, crew.people());
    return crew.crewLimits().stream()
        .filter(limit -> limit.people() * (limit.eachUpTo() + 1) > crew.crew())
        .map(CrewLimit::people)
        .min(Comparator.comparingInt(n -> Math.abs(n - people)))
        .orElse(people);
  }

  /** The sum is only good for people none of whom is heavier than the search allowed. */
  static String heaviest(Recommendation crew) {
    int people = aboard(crew);
    return crew.crewLimits().stream()
        .filter(limit -> limit.people() == people && people > 1)
        .map(
            limit ->
                ", nobody over " + FigureText.down(limit.eachUpTo(), 0) + FigureText.TIED + "kg")
        .findFirst()
        .orElse("");
  }

  private static String[] heads(Recommendation crew) {
    String adults =
        FigureText.adults(crew.people())
            + " of "
            + FigureText.up(crew.adult(), 0)
            + FigureText.TIED
            + "kg";
    if (crew.people() > 0) {
      return new String[] {"In people: " + adults, nearly(crew).orElse("")};
    }
    CrewLimit first = crew.crewLimits().get(0);
    return new String[] {adults + ", but " + heads(first), "Weigh whoever steps in"};
  }

  /** One adult more who is only a little too heavy. */
  static Optional<String> nearly(Recommendation crew) {
    return crew.nearlyOneMore()
        .map(
            limit ->
                Sentence.capital(heads(limit))
                    + ", not of "
                    + FigureText.with(FigureText.up(crew.adult(), 0), "kg"));
  }

  /** So many people, and how heavy each may be. */
  static String heads(CrewLimit limit) {
    return FigureText.people(limit.people()) + " of " + SeatingWords.upTo(limit);
  }

  /** Kilograms alone would let a crowd of children aboard. */
  static String mostHeads(Recommendation crew) {
    return "Never more than " + FigureText.people(most(crew)) + ", however light they are";
  }

  static int most(Recommendation crew) {
    return crew.crewLimits().stream().mapToInt(CrewLimit::people).max().orElse(crew.people());
  }

  private static String[] staysUp(Recommendation crew) {
    return new String[] {
      "It stays up with " + FigureText.adults(crew.staysUpWith()),
      "When swamped it holds up "
          + FigureText.adults(crew.holdsUpWhenSwamped())
          + (crew.heldOnTo() ? ", in the water with their hands on it" : ""),
      "If the chambers that are only claimed to be tight prove to be, the answer is "
          + FigureText.adults(crew.ifClaimedChambersProve())
    };
  }

  private static void next(Page page, Recommendation crew) {
    crew.governedBy()
        .ifPresent(f -> page.paragraph("What stops the next person: " + LimitingFactorWords.of(f)));
    if (!crew.nextPersonBreaks().isEmpty()) {
      String more = FigureText.up(crew.adult(), 0) + FigureText.TIED + "kg would break:";
      page.paragraph((crew.people() == 0 ? "An adult of " : "One adult more of ") + more)
          .points(crew.nextPersonBreaks());
    }
  }
}
