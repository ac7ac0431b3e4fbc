package thwartwise.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.RealMatrix;
import thwartwise.afloat.Pose;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.HullWeight;
import thwartwise.boat.Loading.Weight;
import thwartwise.boat.MethodEvidence;
import thwartwise.boat.ProofOutcome;
import thwartwise.boat.ProofOutcome.CorrectedHull;
import thwartwise.boat.ProofOutcome.SuspectedMeasurement;
import thwartwise.boat.ReadingLabel;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.proof.ProofComparison.LikelySlip;
import thwartwise.proof.ProofReading.HeelReading;
import thwartwise.rules.RuleSet;
import thwartwise.spread.InputKind;
import thwartwise.spread.PredictionSpread;
import thwartwise.spread.PredictionSpread.Source;

/**
 * A proof afloat held against what was worked out of the boat as measured: whether it agrees, and
 * then the bare hull that fits it best.
 *
 * @param labels of the readings, in the order of the comparison
 * @param predicted the readings as worked out, m
 * @param measured the bare hull as stated
 * @param mayBeOff how far that may be off, one standard deviation each
 * @param better kinds of measurement that were taken the better way
 * @param fit empty where the boat does not agree, or nothing fits
 */
public record ProofAssessment(
    AfloatProof proof,
    List<ReadingLabel> labels,
    List<Double> predicted,
    ProofComparison comparison,
    HullWeight measured,
    HullWeight mayBeOff,
    Set<InputKind> better,
    Optional<HullFit> fit,
    Optional<RollComparison> roll) {
  private static final Set<InputKind> FITTED =
      Set.of(
          InputKind.HULL_MASS,
          InputKind.SCALES,
          InputKind.HULL_CENTRE_ALONG,
          InputKind.HULL_CENTRE_HEIGHT);

  /** No zero of a level is farther off, rad. */
  private static final double ANY_ZERO = 0.2;

  public ProofAssessment {
    labels = List.copyOf(labels);
    predicted = List.copyOf(predicted);
  }

  /**
   * Empty where nothing was read, or the boat as measured comes to no rest in one of the states.
   *
   * @param rules whose allowances stand where nobody said how a thing was measured
   * @param spreads how far a measurement may be off, by how it was taken
   * @param better kinds of measurement that were taken the better way
   * @throws thwartwise.hull.UnusableBoat when the measurements contradict each other
   */
  public static Optional<ProofAssessment> of(
      Boat measured,
      AfloatProof proof,
      RuleSet rules,
      RuleSet spreads,
      Set<InputKind> better,
      LocalDate today) {
    if (!proof.hasReadings()) {
      return Optional.empty();
    }
    return Work.of(measured, proof, rules, spreads, better, today).assessment();
  }

  /** What may put the readings of a proof off, whatever was read. */
  static PredictionSpread spread(
      Boat measured, AfloatProof proof, RuleSet rules, RuleSet spreads, LocalDate today) {
    Work work = Work.of(measured, proof, rules, spreads, Set.of(), today);
    FloatedPrediction prediction = new FloatedPrediction(work.model, work.readings.conditions());
    return work.ofReadings(work.withHeight(prediction), prediction, prediction.readings().size());
  }

  /**
   * The same without what fits best: what was read before the boat was measured again or changed
   * says nothing of the weight of the hull there is now.
   */
  public ProofAssessment withoutFit() {
    return new ProofAssessment(
        proof, labels, predicted, comparison, measured, mayBeOff, better, Optional.empty(), roll);
  }

  /** The result to be saved. */
  public ProofOutcome outcome() {
    return new ProofOutcome(
        comparison.agrees(),
        measured,
        mayBeOff,
        better.stream().map(InputKind::name).sorted().toList(),
        fit.map(f -> new CorrectedHull(f.fitted(), f.spreads(), f.massHeld())),
        comparison.agrees() ? Optional.empty() : comparison.likeliest().map(this::suspect));
  }

  private SuspectedMeasurement suspect(LikelySlip slip) {
    return new SuspectedMeasurement(
        slip.kind().name(),
        slip.item(),
        slip.reading().stream().mapToObj(labels::get).findFirst(),
        slip.by(),
        slip.explains());
  }

  private record Work(
      Boat boat,
      BoatModel model,
      AfloatProof proof,
      ProofReadings readings,
      RuleSet rules,
      RuleSet spreads,
      Set<InputKind> better) {

    static Work of(
        Boat measured,
        AfloatProof proof,
        RuleSet rules,
        RuleSet spreads,
        Set<InputKind> better,
        LocalDate today) {
      Boat bare = measured.withProofs(List.of());
      Boat boat = proof.withKit() ? bare : bare.withKit(List.of());
      BoatModel model = BoatModel.of(boat, today);
      ProofReadings readings = ProofReadings.of(boat, proof, spreads);
      return new Work(boat, model, proof, readings, rules, spreads, better);
    }

    Optional<ProofAssessment> assessment() {
      FloatedPrediction prediction = new FloatedPrediction(model, readings.conditions());
      double[] predicted = prediction.values(model.hullWeight());
      if (Arrays.stream(predicted).anyMatch(Double::isNaN)) {
        return Optional.empty();
      }
      PredictionSpread withHeight = withHeight(prediction);
      PredictionSpread spread = ofReadings(withHeight, prediction, predicted.length);
      boolean unknown =
          spread.sources().stream().flatMap(s -> s.moves().stream()).anyMatch(m -> m.isNaN());
      return unknown
          ? Optional.empty()
          : Optional.of(
              assessment(
                  prediction, predicted, spread, roll(metacentricSpread(withHeight, predicted))));
    }

    private PredictionSpread withHeight(FloatedPrediction prediction) {
      return PredictionSpread.of(boat, model, rules, spreads, better, figures(prediction));
    }

    private ProofAssessment assessment(
        FloatedPrediction prediction,
        double[] predicted,
        PredictionSpread spread,
        Optional<RollComparison> roll) {
      ProofComparison comparison = ProofComparison.of(prediction, spread, spreads);
      HullWeight stated = stated(spread);
      return new ProofAssessment(
          proof,
          readings.labels(),
          Arrays.stream(predicted).boxed().toList(),
          comparison,
          model.hullWeight(),
          stated,
          better,
          comparison.agrees() ? fit(prediction, stated, spread) : Optional.empty(),
          roll);
    }

    /** The readings, and the metacentric height of the empty boat behind them. */
    private static Function<BoatModel, double[]> figures(FloatedPrediction prediction) {
      return other -> {
        double[] values = prediction.of(other).values(other.hullWeight());
        double[] all = Arrays.copyOf(values, values.length + 1);
        all[values.length] = metacentricHeight(other);
        return all;
      };
    }

    private static double metacentricHeight(BoatModel model) {
      return LoadedBoat.of(model, List.of())
          .atRest()
          .worst()
          .map(Pose::metacentricHeight)
          .orElse(Double.NaN);
    }

    private static double metacentricSpread(PredictionSpread spread, double[] predicted) {
      return Math.sqrt(
          spread.sources().stream()
              .mapToDouble(source -> source.moves().get(predicted.length))
              .map(moves -> moves * moves)
              .sum());
    }

    private Optional<RollComparison> roll(double spread) {
      double height = metacentricHeight(model);
      return proof
          .roll()
          .filter(timed -> height > 0)
          .map(
              timed ->
                  RollComparison.of(
                      timed.period(),
                      RollPeriod.factor(rules.value("roll-radius")),
                      model.form().beam(),
                      height,
                      spread));
    }

    /** Those of the boat, and those of the people and the weight in it. */
    private PredictionSpread ofReadings(
        PredictionSpread boats, FloatedPrediction prediction, int count) {
      List<Source> sources = new ArrayList<>();
      for (Source source : boats.sources()) {
        sources.add(
            new Source(
                source.kind(), source.item(), source.spread(), source.moves().subList(0, count)));
      }
      if (proof.seated().isPresent()) {
        proof.people().forEach(person -> sources.addAll(ofPerson(prediction, person.name())));
      }
      proof.moved().ifPresent(moved -> sources.add(ofWeight(prediction, moved.mass())));
      heelZero(prediction.readings()).ifPresent(sources::add);
      return new PredictionSpread(
          sources, boats.remainders().stream().map(r -> r.subList(0, count)).toList(), count);
    }

    /**
     * Where a plumb line hung, or what a level showed, before the weight: whatever it was, only
     * what lies between one side and the other tells of the boat.
     */
    private static Optional<Source> heelZero(List<ProofReading> readings) {
      List<Double> moves =
          readings.stream().map(r -> r instanceof HeelReading ? ANY_ZERO : 0.0).toList();
      return moves.contains(ANY_ZERO)
          ? Optional.of(new Source(InputKind.HEEL_ZERO, "", ANY_ZERO, moves))
          : Optional.empty();
    }

    private double weighing(InputKind kind) {
      double unsaid = Allowance.unsaid(rules, model).massFactor() - 1;
      return kind.kind()
          .flatMap(k -> new MethodEvidence(boat).way(k, ""))
          .or(() -> kind.betterWay().filter(way -> better.contains(kind)))
          .map(
              way ->
                  way.isGuessed()
                      ? unsaid * rules.value(way.limit())
                      : Math.min(unsaid, rules.value(way.limit())))
          .orElse(unsaid);
    }

    private List<Source> ofPerson(FloatedPrediction prediction, String name) {
      double sat = spreads.value("person-sat");
      double mass =
          proof.people().stream()
              .filter(person -> person.name().equals(name))
              .mapToDouble(person -> person.mass() * weighing(InputKind.PERSON_MASS))
              .sum();
      return List.of(
          source(
              InputKind.PERSON_MASS,
              name,
              mass,
              prediction,
              by -> person(name, body -> body.withMass(body.mass() + by))),
          source(
              InputKind.PERSON_ACROSS,
              name,
              sat,
              prediction,
              by -> person(name, body -> body.at(body.y() + by))),
          source(
              InputKind.PERSON_ALONG,
              name,
              sat,
              prediction,
              by -> person(name, body -> body.along(body.x() + by))));
    }

    private static UnaryOperator<FloatedCondition> person(String name, UnaryOperator<Body> change) {
      return condition ->
          new FloatedCondition(
              condition.people().stream()
                  .map(body -> body.name().equals(name) ? change.apply(body) : body)
                  .toList(),
              condition.weights(),
              condition.readings());
    }

    private Source ofWeight(FloatedPrediction prediction, double mass) {
      return source(
          InputKind.MOVED_WEIGHT,
          "",
          mass * weighing(InputKind.KIT_MASS),
          prediction,
          by -> condition -> heavier(condition, by));
    }

    private static FloatedCondition heavier(FloatedCondition condition, double by) {
      return new FloatedCondition(
          condition.people(),
          condition.weights().stream().map(w -> new Weight(w.mass() + by, w.at())).toList(),
          condition.readings());
    }

    /** The slopes by central differences. */
    private Source source(
        InputKind kind,
        String item,
        double spread,
        FloatedPrediction prediction,
        Function<Double, UnaryOperator<FloatedCondition>> moved) {
      HullWeight hull = model.hullWeight();
      double[] up = prediction.with(moved.apply(spread)).values(hull);
      double[] down = prediction.with(moved.apply(-spread)).values(hull);
      List<Double> moves = new ArrayList<>();
      for (int i = 0; i < up.length; i++) {
        moves.add((up[i] - down[i]) / 2);
      }
      return new Source(kind, item, spread, moves);
    }

    /** The spread of the mass: its own and that of the scales. */
    private HullWeight stated(PredictionSpread spread) {
      return new HullWeight(
          Math.hypot(
              of(spread, InputKind.HULL_MASS), of(spread, InputKind.SCALES) * boat.hull().mass()),
          of(spread, InputKind.HULL_CENTRE_ALONG),
          of(spread, InputKind.HULL_CENTRE_HEIGHT));
    }

    private static double of(PredictionSpread spread, InputKind kind) {
      return spread.sources().stream()
          .filter(source -> source.kind() == kind)
          .mapToDouble(Source::spread)
          .sum();
    }

    /** Other errors move the readings together, and are no reason to correct the hull. */
    private Optional<HullFit> fit(
        FloatedPrediction prediction, HullWeight stated, PredictionSpread spread) {
      try {
        return HullFit.of(prediction, stated, others(prediction, spread));
      } catch (MathRuntimeException nothingFits) {
        return Optional.empty();
      }
    }

    private static RealMatrix others(FloatedPrediction prediction, PredictionSpread spread) {
      return ProofComparison.covariance(
          prediction.readings(),
          new PredictionSpread(
              spread.sources().stream().filter(s -> !FITTED.contains(s.kind())).toList(),
              List.of(),
              spread.figures()));
    }
  }
}
