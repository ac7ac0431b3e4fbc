package thwartwise.files.report;

import java.util.OptionalDouble;
import thwartwise.afloat.RightingCurve;
import thwartwise.inspection.StateFigures;
import thwartwise.inspection.StateFigures.AfloatFigures;
import thwartwise.inspection.StateFigures.PoseFigures;
import thwartwise.inspection.StateFigures.RightingFigures;
import thwartwise.inspection.StateFigures.SwampedFigures;
import thwartwise.inspection.StateFigures.WaterFigures;
import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.measure.UnitFormat;
import thwartwise.report.CurveEndWords;
import thwartwise.report.LoadCaseWords;
import tools.jackson.databind.node.ObjectNode;

/**
 * One loading of the boat as a tree: afloat, heeled, swamped; null where there is no such state.
 */
final class StateTree {
  private StateTree() {}

  static ObjectNode of(StateFigures state, UnitFormat words) {
    ObjectNode node = JsonText.object().put("loading", LoadCaseWords.of(state.loadCase()));
    node.set("loadCase", LoadCaseCodec.write(state.loadCase()));
    node.putNull("afloat").putNull("righting");
    state.afloat().ifPresent(afloat -> node.set("afloat", afloat(afloat)));
    state.righting().ifPresent(righting -> node.set("righting", righting(righting)));
    node.set("swamped", swamped(state.swamped()));
    node.set("looseWater", ReportTree.list(state.looseWater(), StateTree::water));
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
    node.set("curve", ReportTree.list(righting.curve(), StateTree::point));
    Figures.put(node, "floodingHeelDeg", degrees(righting.floodingHeel()));
    node.put("floodingAt", righting.floodingAt());
    Figures.put(node, "greatestMomentNm", righting.greatestMoment());
    Figures.put(node, "greatestMomentHeelDeg", Math.toDegrees(righting.greatestMomentHeel()));
    Figures.put(node, "workToFloodingNm", righting.work());
    righting.end().ifPresent(end -> put(node, end));
    node.set("openings", ReportTree.list(righting.openings(), StateTree::reached));
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
    node.set("posesReached", ReportTree.list(swamped.poses(), StateTree::pose));
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
}
