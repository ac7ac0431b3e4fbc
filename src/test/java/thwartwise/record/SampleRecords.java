package thwartwise.record;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import thwartwise.advice.Advice;
import thwartwise.afloat.Pose.PoseOrientation;
import thwartwise.afloat.RightingCurve;
import thwartwise.boat.Assumption;
import thwartwise.boat.Boat;
import thwartwise.boat.BuoyancyReason;
import thwartwise.checks.Finding;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.crew.Refusal;
import thwartwise.files.report.OldNames;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.inspection.StateFigures;
import thwartwise.inspection.StateFigures.AfloatFigures;
import thwartwise.inspection.StateFigures.PoseFigures;
import thwartwise.inspection.StateFigures.RightingFigures;
import thwartwise.inspection.StateFigures.SwampedFigures;
import thwartwise.inspection.StateFigures.WaterFigures;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.CapacityFigure.FigureStatus;
import thwartwise.rules.FormulaNote;

/** Reports made up by hand, to see how they are kept and shown. Their figures are of no boat. */
public final class SampleRecords {
  private SampleRecords() {}

  public static InspectionRecord of(Boat boat, Report report) {
    return new InspectionRecord(
        OffsetDateTime.parse("2026-06-14T09:05:07+02:00"), "M. Quill", "0.1.0", boat, report);
  }

  public static Report report() {
    return report(recommendation(), findings());
  }

  /** Of a boat that is held on to when it is swamped, and that a stiff person tips. */
  public static Report heldOnTo() {
    Recommendation sat = recommendation();
    Recommendation held =
        new Recommendation(
            sat.people(),
            sat.crew(),
            sat.load(),
            sat.extra(),
            sat.adult(),
            sat.staysUpWith(),
            sat.holdsUpWhenSwamped(),
            sat.ifClaimsProven(),
            sat.governedBy(),
            sat.nextPersonBreaks(),
            sat.excludedSeatings(),
            sat.crewLimits(),
            sat.withheld(),
            sat.reasons(),
            sat.margins(),
            true);
    Finding tips =
        OldNames.finding(
            "sitting stiff a little off the middle",
            Role.FORBIDS_AN_ACT,
            Outcome.FALLS_SHORT,
            OptionalDouble.of(Math.toRadians(40)),
            Math.toRadians(24.16),
            false,
            Unit.DEGREE,
            "our own rule (judgement)",
            "one person of 95 kg; stiff",
            "");
    return report(held, Stream.concat(findings().stream(), Stream.of(tips)).toList());
  }

  public static Report report(Recommendation recommendation, List<Finding> findings) {
    return new Report(
        "Soup Ladle",
        state("as loaded: helm 80 kg on stern seat", true),
        state("at the limit: one person of 95 kg on midships thwart", true),
        chambers(),
        findings,
        recommendation,
        List.of(
            new CapacityFigure(
                "United States",
                "33 CFR 183.43 persons",
                FigureStatus.TAKES_PART,
                CapKind.PEOPLE,
                121.4,
                OptionalInt.of(1),
                OptionalDouble.empty(),
                "33 CFR 183.43 (READ)",
                FormulaNote.stated("taken as rowed")),
            new CapacityFigure(
                "United States",
                "33 CFR 183 flotation by volume",
                FigureStatus.BESIDE,
                CapKind.FLOTATION,
                0.0893,
                OptionalInt.empty(),
                OptionalDouble.of(0.0399),
                "handbook (READ)",
                FormulaNote.NONE),
            new CapacityFigure(
                "Pond rules",
                "freeboard-at-rest",
                FigureStatus.TAKES_PART,
                CapKind.LIMIT,
                0.3,
                OptionalInt.empty(),
                OptionalDouble.empty(),
                "the warden (judgement)",
                FormulaNote.stated("0.3 m; ours is 0.2 m, which this tightens")),
            new CapacityFigure(
                "Inland code",
                "freeboard at rest, category A waters",
                FigureStatus.BESIDE,
                CapKind.FREEBOARD,
                0.25,
                OptionalInt.empty(),
                OptionalDouble.of(0.219),
                "annex 9 (READ)",
                FormulaNote.stated("with the crew recommended")),
            new CapacityFigure(
                "Harbour rules",
                "",
                FigureStatus.DOES_NOT_APPLY,
                CapKind.NOTHING,
                Double.NaN,
                OptionalInt.empty(),
                OptionalDouble.empty(),
                "",
                FormulaNote.stated(
                    "does not apply: the boat is 3.6 m long and it is written for under 3 m"))),
        List.of(new Assumption.Stated("Nobody said how the boat is driven: taken as rowed.")),
        "Cautious default, 2026",
        List.of(),
        Advice.NONE);
  }

  public static Recommendation recommendation() {
    return new Recommendation(
        1,
        110.9,
        140.2,
        17.3,
        95,
        2,
        1,
        2,
        OldNames.factor("swamped, fore locker lost"),
        List.of(new Refusal.Stated("lift to spare for each person, fore locker lost")),
        List.of(List.of("stern seat")),
        List.of(
            new CrewLimit(1, 110.9, List.of(List.of("stern seat"))),
            new CrewLimit(
                2,
                75.6,
                List.of(List.of("stern seat"), List.of("midships thwart", "midships thwart")))),
        false,
        List.of(new Refusal.Stated("Only the proven chamber counts.")),
        List.of(
            OldNames.margin("swamped, fore locker lost", 23.5, 20, true, Unit.KILOGRAM),
            OldNames.margin("three fifths to one side", 0.125, 0.4, false, Unit.DEGREE)),
        false);
  }

  /** One adult of 95 kg, or two people of 92. */
  public static Recommendation nearlyTwo() {
    return twoUpTo(92);
  }

  /** One adult of 95 kg, or two people of so much each. */
  public static Recommendation twoUpTo(double each) {
    Recommendation one = recommendation();
    return new Recommendation(
        one.people(),
        2 * each,
        one.load(),
        one.extra(),
        one.adult(),
        one.staysUpWith(),
        one.holdsUpWhenSwamped(),
        one.ifClaimsProven(),
        one.governedBy(),
        one.nextPersonBreaks(),
        one.excludedSeatings(),
        List.of(
            new CrewLimit(1, 110.9, 20, List.of("stern seat"), List.of(), List.of()),
            new CrewLimit(2, each, 0, List.of(), List.of(), List.of())),
        one.withheld(),
        one.reasons(),
        one.margins(),
        false);
  }

  public static Recommendation nothing(List<CrewLimit> lighter, String... reasons) {
    return new Recommendation(
        0,
        0,
        0,
        0,
        95,
        0,
        0,
        0,
        OldNames.factor("swamped"),
        List.of(),
        List.of(),
        lighter,
        true,
        Stream.of(reasons).<Refusal>map(Refusal.Stated::new).toList(),
        List.of(),
        false);
  }

  public static StateFigures state(String loading, boolean floats) {
    return new StateFigures(
        OldNames.loadCase(loading),
        Optional.of(afloat()),
        Optional.of(righting()),
        new SwampedFigures(floats, Optional.of(swampedPose()), List.of(swampedPose()), 74.3),
        List.of(
            new WaterFigures(0.04, 0.187, 0.52, 0, true),
            new WaterFigures(0.08, 0.15, 0.3, Math.toRadians(6.25), false)),
        Note.NONE);
  }

  public static StateFigures sunk(String loading) {
    return new StateFigures(
        OldNames.loadCase(loading),
        Optional.empty(),
        Optional.empty(),
        new SwampedFigures(false, Optional.empty(), List.of(), -12.4),
        List.of(),
        Note.stated("No pose found: the water comes over the rail."));
  }

  private static AfloatFigures afloat() {
    return new AfloatFigures(
        169,
        Vector3.of(1.1, 0, 0.3),
        new PoseFigures(
            PoseOrientation.UPRIGHT, OptionalDouble.of(0.1399), 0, Math.toRadians(-1.24), true),
        0.169,
        Vector3.of(1.1, 0, 0.1),
        3.1,
        0.718,
        0.219,
        "transom cut-out",
        true);
  }

  private static RightingFigures righting() {
    return new RightingFigures(
        "starboard",
        List.of(
            new RightingFigures.Point(0, 0, 0),
            new RightingFigures.Point(Math.toRadians(1), 0.0125, 20.7)),
        OptionalDouble.of(Math.toRadians(27.46)),
        "rail, near middle",
        310.9,
        Math.toRadians(22),
        96.4,
        Optional.of(new RightingCurve.End("rail, near middle", false)),
        List.of(
            new RightingFigures.Reached(
                "locker hatch", OptionalDouble.of(Math.toRadians(21.3)), "fore locker"),
            new RightingFigures.Reached("drain", OptionalDouble.empty(), "")));
  }

  private static PoseFigures swampedPose() {
    return new PoseFigures(
        PoseOrientation.UPRIGHT,
        OptionalDouble.of(0.33),
        Math.toRadians(0.4),
        Math.toRadians(-2),
        true);
  }

  private static List<ChamberFigures> chambers() {
    Vector3 centre = Vector3.of(3, 0, 0.2);
    return List.of(
        new ChamberFigures(
            "fore locker",
            0.0399,
            centre,
            0.0399,
            true,
            new BuoyancyReason.ProvenTight("2026-05-02", "builder", false)),
        new ChamberFigures(
            "midships thwart", 0.086, centre, 0, false, new BuoyancyReason.OnlyClaimed()));
  }

  public static List<Finding> findings() {
    return List.of(
        OldNames.finding(
            "freeboard at rest",
            Role.LIMITS_CREW,
            Outcome.MEETS,
            OptionalDouble.of(0.219),
            0.20,
            true,
            Unit.METRE,
            "small-craft practice (judgement)",
            "one person of 95 kg",
            ""),
        OldNames.finding(
            "three fifths to one side",
            Role.LIMITS_CREW,
            Outcome.MEETS,
            OptionalDouble.of(Math.toRadians(9.11)),
            Math.toRadians(24.16),
            false,
            Unit.DEGREE,
            "ISO 12217, read through a worksheet (READ)",
            "one person of 95 kg; three fifths to starboard",
            ""),
        OldNames.finding(
            "standing",
            Role.FORBIDS_AN_ACT,
            Outcome.FALLS_SHORT,
            OptionalDouble.of(-0.031),
            0.0,
            true,
            Unit.METRE,
            "our own rule (judgement)",
            "one person of 95 kg; standing",
            "Nobody stands."),
        OldNames.finding(
            "hard against one side",
            Role.FORBIDS_AN_ACT,
            Outcome.NOT_ASSESSED,
            OptionalDouble.empty(),
            0.05,
            true,
            Unit.METRE,
            "our own rule (judgement)",
            "one person of 95 kg; hard against starboard",
            "No pose was found."));
  }
}
