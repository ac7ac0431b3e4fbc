package thwartwise.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.ObservedTrial;
import thwartwise.boat.Person;
import thwartwise.checks.CheckId;
import thwartwise.checks.Finding;
import thwartwise.checks.Role;
import thwartwise.crew.Recommendation;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.loadcase.LoadCase;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.record.InspectionRecord;

/**
 * The trial in knee-deep water for a boat that holds up nobody when swamped only because nothing
 * proves its buoyancy: what it carries dry, never as permission to go, and the trial that would
 * show more.
 */
public final class KneeDeepTrial {
  private static final String HEADING = "First: the ten-minute trial in knee-deep water";

  private static final String NAMED =
      "Fill it to the brim in knee-deep water and sit in it for ten minutes, with those who are"
          + " to go. The page says how; type at \"today\" what you saw";

  static final String NOT_YET =
      "Nothing shows that it holds anybody up when full of water, so nobody goes yet";

  private static final Set<CheckId> DRY =
      EnumSet.of(
          CheckId.FREEBOARD_AT_REST,
          CheckId.THREE_FIFTHS_TO_ONE_SIDE,
          CheckId.STIFF_OFF_THE_MIDDLE);

  private KneeDeepTrial() {}

  /** Whether a trial is the main thing to do; one failed trial is enough. */
  public static boolean isAskedOf(InspectionRecord inspection) {
    return isUnproven(inspection)
        && inspection.boat().observedTrial().filter(ObservedTrial::failed).isEmpty();
  }

  /** Whether it holds up nobody swamped only for want of evidence. */
  static boolean isUnproven(InspectionRecord inspection) {
    Report report = inspection.report();
    Recommendation crew = report.recommendation();
    return ObservedTrialWords.counting(inspection).isEmpty()
        && crew.wasSearched()
        && crew.staysUpWith() > 0
        && crew.holdsUpWhenSwamped() == 0
        && report.chambers().stream().noneMatch(ChamberFigures::counted);
  }

  /** The trial in one sentence, for a list of what to do first. */
  static String named() {
    return NAMED;
  }

  /** What it carries dry, stated as only that; blank for other boats. */
  static String dryOnly(InspectionRecord inspection) {
    return isUnproven(inspection)
        ? Sentence.joined(List.of(dry("Dry, it carries ", inspection), NOT_YET))
        : "";
  }

  /** The same after a label that names dry already. */
  static String labelledDry(InspectionRecord inspection) {
    return dry("It carries ", inspection);
  }

  /** The dry figures alone, and whether the people named may sit as they do. */
  private static String dry(String itCarries, InspectionRecord inspection) {
    Recommendation crew = inspection.report().recommendation();
    return Sentence.of(itCarries + FigureText.adults(crew.staysUpWith())) + named(inspection);
  }

  private static String named(InspectionRecord inspection) {
    List<String> names = inspection.boat().aboard().stream().map(Person::name).toList();
    if (names.isEmpty()) {
      return "";
    }
    boolean within =
        inspection.report().findings().stream()
            .filter(f -> f.loadCase().kind() == LoadCase.Kind.AS_LOADED)
            .filter(f -> f.role() == Role.LIMITS_CREW && DRY.contains(f.question().check()))
            .noneMatch(Finding::holdsBack);
    return " "
        + Sentence.of(
            "With "
                + Sentence.list(names)
                + " it "
                + (within ? "stays within its dry limits" : "does not stay within its dry limits"));
  }

  static void write(Page page, InspectionRecord inspection) {
    if (!isAskedOf(inspection)) {
      return;
    }
    page.heading(HEADING);
    page.paragraph(
        "No chamber of this boat was shown to be tight, so it counts as holding nobody up when it"
            + " is full of water",
        "A trial can show more, for the day of the trial and for the people who sat in it");
    String[][] steps =
        steps(
            FigureText.adults(inspection.report().recommendation().staysUpWith()),
            ashore(inspection.boat()));
    for (int i = 0; i < steps.length; i++) {
      page.numbered(i + 1, steps[i]);
    }
  }

  /**
   * The battery goes ashore, because water over it makes gas and shorts it; without its weight it
   * is another boat.
   */
  private static String ashore(Boat boat) {
    List<String> names =
        boat.kit().stream()
            .filter(kit -> kit.needsVenting(boat.electrics()))
            .map(Kit::name)
            .distinct()
            .toList();
    return names.isEmpty()
        ? ""
        : ", but leave this ashore and tie bags of wet sand of the same weight in its place: "
            + Sentence.list(names);
  }

  // The requirements of the trial are common practice, no source; ten minutes as in a leak test of
  // a chamber.
  private static String[][] steps(String dry, String ashore) {
    return new String[][] {
      {
        "Choose calm, warm water that reaches an adult's knee, over a firm bottom",
        "Everybody wears a life jacket; an adult who does not get in stands by all the time"
      },
      {
        "Weigh those who are to go, dressed, and let them sit as they will sit under way",
        "Stow the kit where it is listed, and close hatches and lids" + ashore,
        "No more than " + dry + " sit in it: that is what it carries dry"
      },
      {
        "Lean together, slowly, to one side and then to the other",
        "It must come back by itself, and no water may come over the edge"
      },
      {"Sit still while others fill it to the brim with buckets from outside"},
      {
        "Sit in it for ten minutes by the clock, and lean a little to each side once",
        "It must float: a stick goes through under it from end to end; it must lie level, with no"
            + " end and no side going down; every head must stay clear of the water, with nobody"
            + " held"
      },
      {
        "Get out one after another and back in, until each has been the first out once and the last"
            + " one in it once",
        "It must stay level with those who are left, and their heads must stay clear"
      },
      {"Bail it out and open every chamber", "No chamber may have taken water"},
      {
        "Nobody goes if any of this failed or was not seen, or if it sank, lay over or touched the"
            + " bottom",
        "If all of it was seen and went well, type it at \"today\": it counts for that day, for those people on"
            + " those seats, for no more weight and for the boat as it was then"
      }
    };
  }
}
