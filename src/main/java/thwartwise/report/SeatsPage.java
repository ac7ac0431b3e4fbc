package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import thwartwise.boat.Boat;
import thwartwise.boat.EmptyHelm;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.Recommendation.QuestionMargin;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Page;
import thwartwise.page.Sentence;

/** Who sits where, who stays ashore and why, as printed. */
public final class SeatsPage {
  private SeatsPage() {}

  public static String of(Boat boat, CrewAnswer answer) {
    UnitFormat units = ReaderUnits.of(boat);
    Page page = new Page();
    page.title(boat.name()).paragraph(verdict(answer));
    if (!answer.seats().isEmpty()) {
      seats(page, answer, units);
      helm(boat, answer).ifPresent(page::paragraph);
    }
    if (!answer.ashore().isEmpty()) {
      ashore(page, answer, units);
    }
    if (!answer.seats().isEmpty()) {
      fewer(page, answer);
      margins(page, answer, units);
    }
    cautions(page);
    return page.toString();
  }

  private static String[] verdict(CrewAnswer answer) {
    if (answer.seats().isEmpty()) {
      return new String[] {"Nobody goes: nothing is recommended for these people in this boat"};
    }
    return answer.allMayGo()
        ? new String[] {"Nothing was found against all of them going, seated as shown here"}
        : new String[] {
          "Not all of them may go: somebody stays ashore, or the boat makes two trips"
        };
  }

  private static void seats(Page page, CrewAnswer answer, UnitFormat units) {
    page.heading("Who sits where");
    answer.seats().forEach(s -> page.point(s.place() + ": " + who(s.member(), units)));
    double all = answer.seats().stream().mapToDouble(s -> s.member().heaviest()).sum();
    page.gap().paragraph("Together they weigh " + units.mass(all, Side.UP) + " at most, dressed");
  }

  private static Optional<String> helm(Boat boat, CrewAnswer answer) {
    return EmptyHelm.of(boat, answer.seats().stream().map(s -> s.place()).toList())
        .map(EmptyHelmWords::of);
  }

  private static String who(NamedPerson member, UnitFormat units) {
    return member.name() + " (" + member.how().in(units.system()).words() + ")";
  }

  private static void ashore(Page page, CrewAnswer answer, UnitFormat units) {
    page.heading("Who stays ashore");
    answer.ashore().forEach(m -> page.point(who(m, units)));
    if (!answer.breaks().isEmpty()) {
      page.gap()
          .paragraph("With all of them aboard:")
          .points(RefusalWords.of(answer.breaks(), units));
    }
    if (!answer.seats().isEmpty()) {
      page.gap()
          .paragraph(
              "No larger crew of these people may go; of crews of this size, the one with the"
                  + " people"
                  + " named first is shown",
              "Name others first to see whether they may go instead");
    }
  }

  private static void fewer(Page page, CrewAnswer answer) {
    page.heading("When somebody gets out");
    if (answer.notAlone().isEmpty() && answer.moves().isEmpty()) {
      page.paragraph("If one gets out, the others may stay where they sit");
    }
    answer.moves().forEach(m -> page.point(move(m)));
    notAlone(answer).forEach((place, names) -> page.point(alone(place, names)));
  }

  private static String[] move(CrewAnswer.Move move) {
    List<String> then = new ArrayList<>();
    move.seats().forEach(s -> then.add(s.member().name() + " at " + s.place()));
    return new String[] {
      "Before " + move.leaving().name() + " gets out the others move: " + Sentence.list(then)
    };
  }

  private static Map<String, List<String>> notAlone(CrewAnswer answer) {
    return answer.notAlone().stream()
        .collect(
            Collectors.groupingBy(
                CrewAnswer.NotAlone::place,
                LinkedHashMap::new,
                Collectors.mapping(n -> n.member().name(), Collectors.toList())));
  }

  private static String alone(String place, List<String> names) {
    return "Alone in the boat, not at " + place + ": " + Sentence.list(names);
  }

  private static void margins(Page page, CrewAnswer answer, UnitFormat units) {
    page.heading("Margin left at each limit in these seats");
    answer
        .governing()
        .ifPresent(m -> page.paragraph("Nearest to its limit: " + CheckWords.of(m.question())));
    answer.margins().forEach(m -> page.point(words(m, units)));
    page.gap()
        .paragraph("After the allowance for tape and scales, at the worst weight each may have");
  }

  private static String words(QuestionMargin left, UnitFormat units) {
    return CheckWords.of(left.question())
        + ": "
        + MarginWords.value(left.margin(), units)
        + ", "
        + MarginWords.asked(left.margin(), units);
  }

  private static void cautions(Page page) {
    page.heading("Before anybody steps in");
    page.point(Disclaimer.NO_PLATE, Disclaimer.LAST_WORD);
    page.point(
        "Weigh yourselves",
        "A youth whom nobody weighed counts at a weight that nineteen in twenty do not exceed the"
            + " day before the next birthday. The median would be too light: half of all children"
            + " are"
            + " heavier, and the table is from years when children were lighter");
    page.point(
        "Inspect the boat first",
        "This answers only where people sit. The page of inspect says what nobody may do, how much"
            + " extra weight it carries and which chambers are tested");
    page.point("Nothing here says who is old enough to go without an adult");
    page.point("Everybody wears a life jacket that fits, fastened before stepping in");
  }
}
