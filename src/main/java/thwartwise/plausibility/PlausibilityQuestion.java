package thwartwise.plausibility;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.geometry.Span;
import thwartwise.loadcase.LoadCase;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;

/**
 * The question about a measurement, before it is answered.
 *
 * @param names of the things that were measured; none for the hull
 */
record PlausibilityQuestion(Measure measure, List<String> names, Unit unit, LoadCase loadCase) {
  /** A question about the hull as measured. */
  static PlausibilityQuestion of(Measure measure, Unit unit) {
    return new PlausibilityQuestion(measure, List.of(), unit, LoadCase.AS_MEASURED);
  }

  /** A question about the thing of that name, in metres. */
  static PlausibilityQuestion metres(Measure measure, String... names) {
    return of(measure, Unit.METRE).about(names);
  }

  PlausibilityQuestion about(String... names) {
    return new PlausibilityQuestion(measure, List.of(names), unit, loadCase);
  }

  private static final MathContext THREE = new MathContext(3);

  /** The answer for a range; the end that is nearer, or exceeded, is the limit. */
  Answer between(double value, Span span, String least, String most, MeasurementNote note) {
    boolean low = value * value < span.from() * span.to();
    boolean met = span.contains(value);
    return new Answer(
        this, value, low ? span.from() : span.to(), low, met, low ? least : most, note);
  }

  Answer atMost(double value, double most, String source, MeasurementNote note) {
    boolean met = value <= most;
    return new Answer(this, value, most, false, met, source, note);
  }

  Answer atLeast(double value, double least, String source, MeasurementNote note) {
    boolean met = value >= least;
    return new Answer(this, value, least, true, met, source, note);
  }

  /**
   * The answer, before its doubt is known and whether somebody confirmed it.
   *
   * @param note what to measure again where it is not met
   */
  record Answer(
      PlausibilityQuestion asked,
      double value,
      double limit,
      boolean atLeast,
      boolean met,
      String source,
      MeasurementNote note) {

    /**
     * The finding. One that is not met limits the crew to nobody until it is confirmed with a
     * reason.
     */
    PlausibilityFinding about(PlausibilityId id, List<ConfirmedMeasurement> all) {
      return about(id, all, figure());
    }

    private Note note(Optional<String> kept) {
      if (met) {
        return note instanceof MeasurementNote.TwistedPanel
            ? new Note.OfMeasurement(note)
            : Note.NONE;
      }
      return kept.<Note>map(Note.Confirmed::new).orElse(new Note.OfMeasurement(note));
    }

    /** The value to three figures; a reason given for it counts for no other. */
    private String figure() {
      double shown = asked.unit().shown(value);
      return Double.isFinite(shown)
          ? new BigDecimal(shown).round(THREE).stripTrailingZeros().toPlainString()
              + " "
              + asked.unit().symbol()
          : "";
    }

    /** The same, of a thing of which more is measured than is reported. */
    PlausibilityFinding about(PlausibilityId id, List<ConfirmedMeasurement> all, String measured) {
      List<ConfirmedMeasurement> about =
          all.stream().filter(k -> k.about().equals(id.text())).toList();
      Optional<String> kept =
          about.stream()
              .filter(k -> k.standsFor(measured))
              .map(ConfirmedMeasurement::reason)
              .findFirst();
      Finding finding =
          new Finding(
              new CheckQuestion(CheckId.PLAUSIBILITY, asked.measure(), asked.names()),
              met || kept.isPresent() ? Role.INFORMATION : Role.LIMITS_CREW,
              met ? Outcome.MEETS : Outcome.FALLS_SHORT,
              new Margin(OptionalDouble.of(value), limit, atLeast, asked.unit()),
              source,
              asked.loadCase(),
              note(kept));
      boolean forAnother = kept.isEmpty() && !about.isEmpty();
      return new PlausibilityFinding(id, finding, kept, measured, forAnother);
    }
  }
}
