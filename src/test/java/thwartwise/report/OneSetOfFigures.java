package thwartwise.report;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.crew.CrewSeating;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.InspectedBoats;
import thwartwise.inspection.Report;
import thwartwise.record.InspectionRecord;
import thwartwise.rules.RuleBook;
import thwartwise.sampleboats.OrdinaryBoats;
import thwartwise.today.TodayPage;

/**
 * Page, card, screen, {@code today} and {@code seats} asked of one boat, to the kilogram. As a
 * program it asks thirty boats and prints where two of them stand against each other; half an hour.
 */
final class OneSetOfFigures {
  private static final int THIRTY = 30;

  /** As many as it takes to tell of every number of people. */
  private static final int EVERY_ROW = 99;

  private final Boat boat;
  private final RuleBook book;
  private final Report report;
  private final Recommendation crew;
  private final List<String> wrong = new ArrayList<>();

  private OneSetOfFigures(Boat boat, RuleBook book) {
    this.boat = boat;
    this.book = book;
    this.report = InspectedBoats.underShipped(boat);
    this.crew = report.recommendation();
  }

  /**
   * Where two of them do not agree, in words.
   *
   * @param seats whether {@code seats} is asked as well, which takes longest
   */
  static List<String> contradictions(Boat boat, boolean seats) {
    OneSetOfFigures figures = new OneSetOfFigures(boat, RuleSetFile.bundledRuleBook());
    figures.sums();
    figures.screens();
    figures.reasons();
    if (seats) {
      figures.seats();
    }
    return figures.wrong;
  }

  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    int from = args.length > 0 ? Integer.parseInt(args[0]) : 0;
    int to = args.length > 1 ? Integer.parseInt(args[1]) : THIRTY;
    for (Boat boat : OrdinaryBoats.forty().subList(from, to)) {
      List<String> wrong = contradictions(boat, true);
      out.println(boat.name() + ": " + (wrong.isEmpty() ? "one set of figures" : wrong.size()));
      wrong.forEach(w -> out.println("  " + w));
    }
  }

  private void holds(boolean so, String what) {
    if (!so) {
      wrong.add(what);
    }
  }

  /** "Three adults of 95" and "at most 284 kg" is the kind of thing that must not be. */
  private void sums() {
    double room = Math.floor(crew.load()) - boat.kitMass();
    holds(crew.crew() <= room, "people and kit come to more than the load");
    holds(crew.people() * crew.adult() <= crew.crew(), "the adults weigh more than people may");
    for (CrewLimit limit : crew.crewLimits()) {
      String who = limit.people() + " people ";
      double people = limit.people() * Math.min(limit.massLimit(), crew.adult());
      holds(
          limit.people() * limit.massLimit() <= crew.crew(), who + "come to more than people may");
      holds(
          people + limit.extraMass() <= room,
          who + "and what is besides come to more than the load");
      holds(
          limit.people() <= crew.people() == limit.massLimit() >= crew.adult(),
          who + "are adults in one place and none in another");
    }
  }

  /** Whatever limits a crew has its words for a comparison in which less is recommended. */
  private void reasons() {
    crew.margins().stream()
        .map(m -> m.question())
        .forEach(q -> holds(!DecreaseWords.physics(q).isEmpty(), "no reason for " + q));
  }

  private void screens() {
    InspectionRecord record =
        new InspectionRecord(
            OffsetDateTime.parse("2026-11-26T09:00:00Z"), "somebody", "0.1.0", boat, report);
    String page = bare(TextPage.of(record));
    // The card says each figure in pounds, too.
    String card = bare(CardPage.text(record, "1")).replaceAll(",? \\(?\\d+ lb\\)?", "");
    String screen = bare(String.join(" ", Screen.of(record, EVERY_ROW)));
    String opening = bare(TodayPage.opening(record));
    // Its first figure begins a sentence.
    String read = opening.replace("One person", "one person");
    String people = whole(crew.crew());
    String load = whole(crew.load());
    for (String where : List.of(page, card)) {
      holds(where.contains(load + " kg total load"), "not told: load " + load);
      holds(where.contains(people + " kg all people together"), "not told: people " + people);
    }
    Map<String, String> told = new LinkedHashMap<>();
    told.put("At most " + load + " kg in all", screen);
    told.put("people may weigh at most " + people + " kg", screen);
    told.put("People up to " + people + " kg in all, load up to " + load + " kg", opening);
    told.forEach((figure, where) -> holds(where.contains(figure), "not told: " + figure));
    for (CrewLimit limit : crew.crewLimits()) {
      String row = row(limit);
      for (String where : List.of(page, card)) {
        holds(where.contains(row), "not told: " + row);
      }
      String upTo =
          limit.people()
              + " up to "
              + whole(limit.massLimit())
              + (limit.people() == 1 ? " kg" : " kg each");
      String besides = whole(limit.extraMass()) + " kg extra";
      holds(
          screen.contains(upTo + ", " + besides)
              || screen.contains(upTo + ": see the page")
              || screen.contains(upTo + ": ") && screen.contains("with " + besides + " only"),
          "not told on the screen: " + upTo + ", " + besides);
      today(read, limit);
    }
  }

  /** As the table of page and card has it. */
  private static String row(CrewLimit limit) {
    return limit.people()
        + (limit.people() == 1 ? " person " : " people ")
        + whole(limit.massLimit())
        + " kg "
        + (limit.extraMass() < 1 ? "nothing" : whole(limit.extraMass()) + " kg");
  }

  private void today(String opening, CrewLimit limit) {
    String people = limit.people() == 1 ? "one person" : limit.people() + " people";
    String each = people + " up to " + whole(limit.massLimit()) + " kg";
    holds(opening.contains(each), "today does not tell: " + each);
    String besides =
        crew.crewLimits().size() > 1
            ? whole(limit.extraMass()) + " kg with " + people
            : "no more than " + whole(limit.extraMass()) + " kg besides";
    boolean nothing = crew.crewLimits().stream().noneMatch(l -> l.extraMass() >= 1);
    String told = nothing ? "and nothing besides" : besides;
    holds(opening.contains(told), "today does not tell: " + told);
  }

  /** As heavy as the table has them they all get a seat, one kilogram heavier each they do not. */
  private void seats() {
    for (CrewLimit limit : crew.crewLimits()) {
      String who = limit.people() + " people of ";
      double each = Math.floor(limit.massLimit());
      holds(allSeated(limit.people(), each), "seats leaves ashore of " + who + each);
      holds(
          each >= RuleSetFile.cautiousDefault().value("heaviest-person")
              || !allSeated(limit.people(), each + 1),
          "seats takes " + who + (each + 1));
    }
  }

  private boolean allSeated(int people, double each) {
    List<NamedPerson> members =
        IntStream.range(0, people)
            .mapToObj(i -> NamedPerson.weighedDressed("person " + (i + 1), each))
            .toList();
    return CrewSeating.of(BoatModel.of(boat, OrdinaryBoats.TODAY), book, members).allMayGo();
  }

  private static String whole(double kilograms) {
    return String.valueOf((long) Math.floor(kilograms));
  }

  private static String bare(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ");
  }
}
