package thwartwise.plausibility;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Loading;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.checks.MeasurementNote.Fact;
import thwartwise.checks.Unit;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.PanelTwist;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.measure.UnitSystem;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;
import thwartwise.rules.RuleSet;

/**
 * Whether the measurements look like a boat. A measuring error that closes into some hull shows in
 * none of the checks, and every answer would be that of another boat. What cannot be computed gives
 * no finding.
 */
public final class Plausibility {
  private final Loading loading;
  private final BoatModel model;
  private final HullMeasurements hull;
  private final PlausibleLimits limits;
  private final List<PlausibilityFinding> found = new ArrayList<>();

  private Plausibility(Loading loading, RuleSet rules) {
    this.loading = loading;
    this.model = loading.model();
    this.hull = model.boat().hull();
    this.limits = new PlausibleLimits(rules);
  }

  /** The findings for the boat as it is loaded. */
  public static List<PlausibilityFinding> of(Loading loading, RuleSet rules) {
    Plausibility looked = new Plausibility(loading, rules);
    looked.hull();
    looked.found.addAll(StationPlausibility.of(looked.model, looked.limits));
    looked.found.addAll(ChamberPlausibility.of(looked.model, looked.limits));
    looked.found.addAll(OutlinePlausibility.of(looked.model, looked.limits));
    looked.found.addAll(EquipmentPlausibility.of(looked.model, looked.limits));
    looked.found.addAll(KitMassPlausibility.of(looked.model, looked.limits));
    looked.found.addAll(PlacePlausibility.of(looked.model, looked.limits));
    looked.found.addAll(SidePlausibility.of(looked.model, looked.limits));
    looked.found.addAll(SeatPlausibility.of(looked.model, looked.limits));
    return List.copyOf(looked.found);
  }

  /** The findings for the boat as its file loads it. */
  public static List<PlausibilityFinding> of(BoatModel model, RuleSet rules) {
    return of(new Loading(model, model.aboard(), List.of(), 1), rules);
  }

  /** The findings of the shape alone, before anything else of the boat is known. */
  public static List<PlausibilityFinding> ofShape(
      HullMeasurements hull, RuleSet rules, UnitSystem units) {
    BoatModel bare = BoatModel.of(Boat.bare(hull).in(units), LocalDate.EPOCH);
    Plausibility looked = new Plausibility(new Loading(bare, List.of(), List.of(), 1), rules);
    looked.crossing();
    looked.breadth();
    looked.depth();
    looked.found.addAll(OutlinePlausibility.of(bare, looked.limits));
    return looked.found.stream().filter(PlausibilityFinding::withholds).toList();
  }

  private void hull() {
    block();
    twist();
    crossing();
    breadth();
    depth();
    weight();
    density();
  }

  private void block() {
    double volume = loading.mass() / model.waterDensity() - model.form().skeg().volume();
    OptionalDouble block = BlockCoefficient.of(model.form().outside(), volume);
    if (block.isPresent()) {
      Span span = new Span(limits.value("block-least"), limits.value("block-most"));
      add(
          PlausibilityTopic.BLOCK,
          shape(),
          new PlausibilityQuestion(
                  Measure.BLOCK_COEFFICIENT,
                  List.of(),
                  Unit.PERCENT,
                  LoadCase.AS_MEASURED.with(
                      List.of(LoadCaseStep.of(LoadCaseStep.Act.LEVEL_AS_LOADED))))
              .between(
                  block.getAsDouble(),
                  span,
                  limits.source("block-least"),
                  limits.source("block-most"),
                  MeasurementNote.of(Fact.FULLNESS)));
    }
  }

  // A mould has any shape; sheets and planks have not.
  private void twist() {
    if (hull.material().filter(m -> m == Material.GRP).isPresent()) {
      return;
    }
    PanelTwist.greatest(hull.stations())
        .ifPresent(
            twist ->
                add(
                    PlausibilityTopic.PANEL_TWIST,
                    PlausibilityQuestion.of(Measure.PANEL_TWIST, Unit.DEGREE_PER_METRE)
                        .atMost(
                            twist.perMetre(),
                            twistMost(),
                            limits.source("panel-twist-most"),
                            twisted(twist))));
  }

  private void crossing() {
    List<Span> crossings = model.form().crossings();
    if (crossings.isEmpty()) {
      return;
    }
    Span first = crossings.get(0);
    add(
        PlausibilityTopic.OUTLINE,
        PlausibilityQuestion.of(Measure.OUTLINE_CROSSING, Unit.METRE)
            .atMost(
                crossings.stream().mapToDouble(Span::length).sum(),
                0,
                "no hull does (judgement)",
                new MeasurementNote.CrossedOutline(first.from(), first.to())));
  }

  private MeasurementNote twisted(PanelTwist twist) {
    return new MeasurementNote.TwistedPanel(
        twist.line(),
        twist.points(),
        twist.side(),
        twist.aft(),
        twist.fore(),
        twist.perMetre() <= twistMost());
  }

  private double twistMost() {
    return Math.toRadians(limits.value("panel-twist-most"));
  }

  private void breadth() {
    double length = model.form().length();
    addIfDoubtful(
        PlausibilityTopic.PROPORTIONS,
        PlausibilityQuestion.of(Measure.BREADTH_OVER_LENGTH, Unit.PERCENT)
            .atMost(
                model.form().beam() / length,
                limits.breadthOverLength(length),
                limits.source("breadth-over-length-most"),
                MeasurementNote.of(Fact.BREADTH_FOR_LENGTH)));
  }

  /** The depth at the broadest place shows breadths and heights in different units. */
  private void depth() {
    Span span =
        new Span(limits.value("depth-over-breadth-least"), limits.value("depth-over-breadth-most"));
    addIfDoubtful(
        PlausibilityTopic.DEPTH,
        PlausibilityQuestion.of(Measure.DEPTH_OVER_BREADTH, Unit.PERCENT)
            .between(
                amidships() / model.form().beam(),
                span,
                limits.source("depth-over-breadth-least"),
                limits.source("depth-over-breadth-most"),
                MeasurementNote.of(Fact.DEPTH_FOR_BREADTH)));
  }

  /** The depth from the lowest point up to the lower rail at half the length. */
  private double amidships() {
    Span along = model.form().outside().extent(Vector3.of(1, 0, 0));
    double rail =
        Math.min(
            model.form().railAt(along.middle(), true).z(),
            model.form().railAt(along.middle(), false).z());
    return rail - model.form().outside().extent(Vector3.of(0, 0, 1)).from();
  }

  private void weight() {
    double area = model.form().shellArea();
    Span span = limits.hullMass(area, hull.thickness(), hull.density(), hull.material());
    double skin = area * hull.thickness() * hull.density();
    boolean half = hull.mass() < span.from() && span.contains(2 * hull.mass());
    add(
        PlausibilityTopic.HULL_MASS,
        PlausibilityQuestion.of(Measure.HULL_MASS, Unit.KILOGRAM)
            .between(
                hull.mass(),
                span,
                limits.source(PlausibleLimits.hullMassLeast(hull.material())),
                limits.source("hull-mass-most"),
                new MeasurementNote.SkinMass(area, skin, half)));
  }

  private void density() {
    addIfDoubtful(
        PlausibilityTopic.DENSITY,
        PlausibilityQuestion.of(Measure.SWAMPED_DENSITY, Unit.KILOGRAM_PER_CUBIC_METRE)
            .between(
                hull.density(),
                limits.density(),
                limits.source("density-least"),
                limits.source("density-most"),
                MeasurementNote.of(Fact.SWAMPED_DENSITY)));
  }

  /** A requirement of every boat is reported only where it is not met. */
  private void addIfDoubtful(PlausibilityTopic topic, PlausibilityQuestion.Answer answer) {
    if (!answer.met()) {
      add(topic, answer);
    }
  }

  private void add(PlausibilityTopic topic, String measured, PlausibilityQuestion.Answer answer) {
    found.add(
        answer.about(PlausibilityId.of(topic), model.boat().confirmedMeasurements(), measured));
  }

  /** A boat has the same shape whatever is aboard, so its findings are cached. */
  private String shape() {
    return String.format(
        Locale.ROOT, "%.2f m3, %.1f m2", model.form().outside().volume(), model.form().shellArea());
  }

  private void add(PlausibilityTopic topic, PlausibilityQuestion.Answer answer) {
    found.add(answer.about(PlausibilityId.of(topic), model.boat().confirmedMeasurements()));
  }
}
