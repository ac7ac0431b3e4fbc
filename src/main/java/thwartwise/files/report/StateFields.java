package thwartwise.files.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import thwartwise.afloat.PoseOrientation;
import thwartwise.afloat.RightingCurve;
import thwartwise.inspection.StateFigures;
import thwartwise.inspection.StateFigures.AfloatFigures;
import thwartwise.inspection.StateFigures.PoseFigures;
import thwartwise.inspection.StateFigures.RightingFigures;
import thwartwise.inspection.StateFigures.SwampedFigures;
import thwartwise.inspection.StateFigures.WaterFigures;
import thwartwise.json.Figures;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;

/** One loading of the boat, read back. */
final class StateFields {
  private static final WordChoice<PoseOrientation> ORIENTATIONS =
      WordChoice.of(PoseOrientation::word, PoseOrientation.values());

  /** As reports said it that do not name it; it is reworded elsewhere only. */
  private static final String TRIM_LOST_ONCE = "it cannot be balanced in trim any further";

  private StateFields() {}

  static StateFigures read(ObjectReader report, String key) {
    ObjectReader state = report.freeObject(key, ReportValues.REMEDY);
    return new StateFigures(
        state.has("loadCase")
            ? LoadCaseCodec.read(state.freeObject("loadCase", ReportValues.REMEDY))
            : OldLoadCases.of(ReportValues.text(state, "loading")),
        optional(state, "afloat").map(StateFields::afloat),
        optional(state, "righting").map(StateFields::righting),
        swamped(state.freeObject("swamped", ReportValues.REMEDY)),
        added(state, "looseWater", "filling").map(StateFields::water).toList(),
        NoteCodec.read(state));
  }

  private static Optional<ObjectReader> optional(ObjectReader fields, String key) {
    return fields.says(key)
        ? Optional.of(fields.freeObject(key, ReportValues.REMEDY))
        : Optional.empty();
  }

  private static AfloatFigures afloat(ObjectReader afloat) {
    return new AfloatFigures(
        Figures.read(afloat, "displacementKg"),
        ReportValues.point(afloat, "centreOfGravity"),
        pose(afloat.freeObject("pose", ReportValues.REMEDY)),
        Figures.read(afloat, "immersedVolumeM3"),
        ReportValues.point(afloat, "centreOfBuoyancy"),
        Figures.read(afloat, "waterplaneAreaM2"),
        Figures.read(afloat, "gmM"),
        Figures.read(afloat, "leastFreeboardM"),
        ReportValues.text(afloat, "leastFreeboardAt"),
        ReportValues.flag(afloat, "stable"));
  }

  private static RightingFigures righting(ObjectReader righting) {
    List<RightingFigures.Point> curve =
        ReportValues.list(righting, "curve", "point").stream().map(StateFields::point).toList();
    return new RightingFigures(
        ReportValues.text(righting, "toward"),
        curve,
        radians(righting, "floodingHeelDeg"),
        ReportValues.text(righting, "floodingAt"),
        Figures.read(righting, "greatestMomentNm"),
        Math.toRadians(Figures.read(righting, "greatestMomentHeelDeg")),
        righting.has("workToFloodingNm") ? Figures.read(righting, "workToFloodingNm") : Double.NaN,
        end(righting),
        added(righting, "openings", "opening").map(StateFields::reached).toList());
  }

  /** Reports that do not say so themselves have a lost trim in words. */
  private static Optional<RightingCurve.End> end(ObjectReader righting) {
    if (!righting.has("endsBecause")) {
      return Optional.empty();
    }
    String words = ReportValues.text(righting, "endsBecause");
    return Optional.of(
        new RightingCurve.End(
            righting.says("floodingHeelDeg") ? ReportValues.text(righting, "floodingAt") : "",
            righting.flag("trimLost", words.equals(TRIM_LOST_ONCE))));
  }

  /** A list that reports of the first program versions did not have. */
  private static Stream<ObjectReader> added(ObjectReader fields, String key, String item) {
    return fields.has(key) ? ReportValues.list(fields, key, item).stream() : Stream.empty();
  }

  private static OptionalDouble radians(ObjectReader fields, String key) {
    OptionalDouble degrees = Figures.optional(fields, key);
    return degrees.isPresent() ? OptionalDouble.of(Math.toRadians(degrees.getAsDouble())) : degrees;
  }

  private static RightingFigures.Reached reached(ObjectReader opening) {
    return new RightingFigures.Reached(
        ReportValues.text(opening, "name"),
        radians(opening, "heelDeg"),
        ReportValues.text(opening, "into"));
  }

  private static WaterFigures water(ObjectReader water) {
    return new WaterFigures(
        Figures.read(water, "litres") / 1000,
        Figures.read(water, "leastFreeboardM"),
        Figures.read(water, "gmM"),
        Math.toRadians(Figures.read(water, "heelDeg")),
        ReportValues.flag(water, "comesBack"));
  }

  private static RightingFigures.Point point(ObjectReader point) {
    return new RightingFigures.Point(
        Math.toRadians(Figures.read(point, "heelDeg")),
        Figures.read(point, "armM"),
        Figures.read(point, "momentNm"));
  }

  private static SwampedFigures swamped(ObjectReader swamped) {
    return new SwampedFigures(
        ReportValues.flag(swamped, "floats"),
        optional(swamped, "pose").map(StateFields::pose),
        ReportValues.list(swamped, "posesReached", "pose").stream().map(StateFields::pose).toList(),
        Figures.read(swamped, "spareBuoyancyKg"));
  }

  private static PoseFigures pose(ObjectReader pose) {
    return new PoseFigures(
        pose.oneOf("word", ORIENTATIONS, ReportValues.REMEDY),
        Figures.optional(pose, "waterAtOriginM"),
        Math.toRadians(Figures.read(pose, "heelDeg")),
        Math.toRadians(Figures.read(pose, "trimDeg")),
        ReportValues.flag(pose, "stable"));
  }
}
