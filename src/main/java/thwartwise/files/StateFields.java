package thwartwise.files;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.inspection.AfloatFigures;
import thwartwise.inspection.PoseFigures;
import thwartwise.inspection.RightingFigures;
import thwartwise.inspection.StateFigures;
import thwartwise.inspection.SwampedFigures;

/** One loading of the boat, read back. */
final class StateFields {
  private StateFields() {}

  static StateFigures read(Fields report, String key) {
    Fields state = report.freeObject(key, ReportFields.REMEDY);
    return new StateFigures(
        ReportFields.text(state, "loading"),
        optional(state, "afloat").map(StateFields::afloat),
        optional(state, "righting").map(StateFields::righting),
        swamped(state.freeObject("swamped", ReportFields.REMEDY)),
        ReportFields.text(state, "note"));
  }

  private static Optional<Fields> optional(Fields fields, String key) {
    return fields.says(key)
        ? Optional.of(fields.freeObject(key, ReportFields.REMEDY))
        : Optional.empty();
  }

  private static AfloatFigures afloat(Fields afloat) {
    return new AfloatFigures(
        Figures.read(afloat, "displacementKg"),
        ReportFields.point(afloat, "centreOfGravity"),
        pose(afloat.freeObject("pose", ReportFields.REMEDY)),
        Figures.read(afloat, "immersedVolumeM3"),
        ReportFields.point(afloat, "centreOfBuoyancy"),
        Figures.read(afloat, "waterplaneAreaM2"),
        Figures.read(afloat, "gmM"),
        Figures.read(afloat, "leastFreeboardM"),
        ReportFields.text(afloat, "leastFreeboardAt"),
        ReportFields.flag(afloat, "stable"));
  }

  private static RightingFigures righting(Fields righting) {
    List<RightingFigures.Point> curve =
        ReportFields.list(righting, "curve", "point").stream().map(StateFields::point).toList();
    OptionalDouble flooding = Figures.optional(righting, "floodingHeelDeg");
    return new RightingFigures(
        ReportFields.text(righting, "toward"),
        curve,
        flooding.isPresent()
            ? OptionalDouble.of(Math.toRadians(flooding.getAsDouble()))
            : OptionalDouble.empty(),
        ReportFields.text(righting, "floodingAt"),
        Figures.read(righting, "greatestMomentNm"),
        Math.toRadians(Figures.read(righting, "greatestMomentHeelDeg")));
  }

  private static RightingFigures.Point point(Fields point) {
    return new RightingFigures.Point(
        Math.toRadians(Figures.read(point, "heelDeg")),
        Figures.read(point, "armM"),
        Figures.read(point, "momentNm"));
  }

  private static SwampedFigures swamped(Fields swamped) {
    return new SwampedFigures(
        ReportFields.flag(swamped, "floats"),
        optional(swamped, "pose").map(StateFields::pose),
        ReportFields.list(swamped, "posesReached", "pose").stream().map(StateFields::pose).toList(),
        Figures.read(swamped, "spareBuoyancyKg"));
  }

  private static PoseFigures pose(Fields pose) {
    return new PoseFigures(
        ReportFields.text(pose, "word"),
        Figures.optional(pose, "waterAtOriginM"),
        Math.toRadians(Figures.read(pose, "heelDeg")),
        Math.toRadians(Figures.read(pose, "trimDeg")),
        ReportFields.flag(pose, "stable"));
  }
}
