package thwartwise.files.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import thwartwise.afloat.Pose.PoseOrientation;
import thwartwise.afloat.RightingCurve;
import thwartwise.inspection.StateFigures;
import thwartwise.inspection.StateFigures.AfloatFigures;
import thwartwise.inspection.StateFigures.PoseFigures;
import thwartwise.inspection.StateFigures.RightingFigures;
import thwartwise.inspection.StateFigures.SwampedFigures;
import thwartwise.inspection.StateFigures.WaterFigures;
import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measure.UnitFormat;
import thwartwise.report.CurveEndWords;
import thwartwise.report.LoadCaseWords;
import tools.jackson.databind.node.ObjectNode;

/**
 * One loading of the boat as a tree, and read back: afloat, heeled, swamped; null for a state that
 * does not exist.
 */
final class StateCodec {
  private static final WordChoice<PoseOrientation> ORIENTATIONS =
      WordChoice.of(PoseOrientation::word, PoseOrientation.values());

  /** The sentence of older reports; newer reports word it elsewhere. */
  private static final String TRIM_LOST_ONCE = "it cannot be balanced in trim any further";

  private StateCodec() {}

  static ObjectNode write(StateFigures state, UnitFormat words) {
    ObjectNode node = JsonText.object().put("loading", LoadCaseWords.of(state.loadCase()));
    node.set("loadCase", LoadCaseCodec.write(state.loadCase()));
    node.putNull("afloat").putNull("righting");
    state.afloat().ifPresent(afloat -> node.set("afloat", afloat(afloat)));
    state.righting().ifPresent(righting -> node.set("righting", righting(righting)));
    node.set("swamped", swamped(state.swamped()));
    node.set("looseWater", ReportCodec.list(state.looseWater(), StateCodec::water));
    return NoteCodec.put(node, state.note(), words);
  }

  private static ObjectNode afloat(AfloatFigures afloat) {
    ObjectNode node = JsonText.object();
    Figures.put(node, "displacementKg", afloat.displacement());
    node.set("centreOfGravity", ReportValues.point(afloat.centreOfGravity()));
    node.set("pose", pose(afloat.pose()));
    Figures.put(node, "immersedVolumeM3", afloat.immersedVolume());
    node.set("centreOfBuoyancy", ReportValues.point(afloat.centreOfBuoyancy()));
    Figures.put(node, "waterplaneAreaM2", afloat.waterplaneArea());
    Figures.put(node, "gmM", afloat.gm());
    Figures.put(node, "leastFreeboardM", afloat.leastFreeboard());
    return node.put("leastFreeboardAt", afloat.leastFreeboardAt()).put("stable", afloat.stable());
  }

  private static ObjectNode righting(RightingFigures righting) {
    ObjectNode node = JsonText.object().put("toward", righting.toward());
    node.set("curve", ReportCodec.list(righting.curve(), StateCodec::point));
    Figures.put(node, "floodingHeelDeg", degrees(righting.floodingHeel()));
    node.put("floodingAt", righting.floodingAt());
    Figures.put(node, "greatestMomentNm", righting.greatestMoment());
    Figures.put(node, "greatestMomentHeelDeg", Math.toDegrees(righting.greatestMomentHeel()));
    Figures.put(node, "workToFloodingNm", righting.work());
    righting.end().ifPresent(end -> put(node, end));
    node.set("openings", ReportCodec.list(righting.openings(), StateCodec::reached));
    return node;
  }

  private static void put(ObjectNode righting, RightingCurve.End end) {
    righting.put("endsBecause", CurveEndWords.of(end));
    if (end.trimLost()) {
      righting.put("trimLost", true);
    }
  }

  private static ObjectNode reached(RightingFigures.Reached opening) {
    ObjectNode node = JsonText.object().put("name", opening.name());
    Figures.put(node, "heelDeg", degrees(opening.heel()));
    return node.put("into", opening.into());
  }

  private static ObjectNode water(WaterFigures water) {
    ObjectNode node = JsonText.object();
    Figures.put(node, "litres", 1000 * water.volume());
    Figures.put(node, "leastFreeboardM", water.leastFreeboard());
    Figures.put(node, "gmM", water.gm());
    Figures.put(node, "heelDeg", Math.toDegrees(water.heel()));
    return node.put("comesBack", water.returns());
  }

  private static ObjectNode point(RightingFigures.Point point) {
    ObjectNode node = JsonText.object();
    Figures.put(node, "heelDeg", Math.toDegrees(point.heel()));
    Figures.put(node, "armM", point.arm());
    Figures.put(node, "momentNm", point.moment());
    return node;
  }

  private static ObjectNode swamped(SwampedFigures swamped) {
    ObjectNode node = JsonText.object().put("floats", swamped.floats());
    node.putNull("pose").putNull("stable");
    swamped.pose().ifPresent(pose -> node.set("pose", pose(pose)));
    swamped.pose().ifPresent(pose -> node.put("stable", pose.stable()));
    Figures.put(node, "spareBuoyancyKg", swamped.spareBuoyancy());
    node.set("posesReached", ReportCodec.list(swamped.poses(), StateCodec::pose));
    return node;
  }

  private static ObjectNode pose(PoseFigures pose) {
    ObjectNode node = JsonText.object().put("word", pose.orientation().word());
    Figures.put(node, "waterAtOriginM", pose.waterAtOrigin());
    Figures.put(node, "heelDeg", Math.toDegrees(pose.heel()));
    Figures.put(node, "trimDeg", Math.toDegrees(pose.trim()));
    return node.put("stable", pose.stable());
  }

  private static double degrees(OptionalDouble radians) {
    return Math.toDegrees(radians.orElse(Double.NaN));
  }

  static StateFigures read(ObjectReader report, String key) {
    ObjectReader state = report.freeObject(key, ReportValues.REMEDY);
    return new StateFigures(
        state.has("loadCase")
            ? LoadCaseCodec.read(state.freeObject("loadCase", ReportValues.REMEDY))
            : OldLoadCases.of(ReportValues.text(state, "loading")),
        optional(state, "afloat").map(StateCodec::afloat),
        optional(state, "righting").map(StateCodec::righting),
        swamped(state.freeObject("swamped", ReportValues.REMEDY)),
        added(state, "looseWater", "filling").map(StateCodec::water).toList(),
        NoteCodec.read(state));
  }

  private static Optional<ObjectReader> optional(ObjectReader fields, String key) {
    return fields.hasValue(key)
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
        ReportValues.list(righting, "curve", "point").stream().map(StateCodec::point).toList();
    return new RightingFigures(
        ReportValues.text(righting, "toward"),
        curve,
        radians(righting, "floodingHeelDeg"),
        ReportValues.text(righting, "floodingAt"),
        Figures.read(righting, "greatestMomentNm"),
        Math.toRadians(Figures.read(righting, "greatestMomentHeelDeg")),
        righting.has("workToFloodingNm") ? Figures.read(righting, "workToFloodingNm") : Double.NaN,
        end(righting),
        added(righting, "openings", "opening").map(StateCodec::reached).toList());
  }

  /** A lost trim; reports without its own key have it in words. */
  private static Optional<RightingCurve.End> end(ObjectReader righting) {
    if (!righting.has("endsBecause")) {
      return Optional.empty();
    }
    String words = ReportValues.text(righting, "endsBecause");
    return Optional.of(
        new RightingCurve.End(
            righting.hasValue("floodingHeelDeg") ? ReportValues.text(righting, "floodingAt") : "",
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
        optional(swamped, "pose").map(StateCodec::pose),
        ReportValues.list(swamped, "posesReached", "pose").stream().map(StateCodec::pose).toList(),
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
