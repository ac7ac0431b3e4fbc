package thwartwise.crew;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.ProofOutcome.SuspectedMeasurement;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckReading;
import thwartwise.checks.Margin;
import thwartwise.checks.Note;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;
import thwartwise.rules.ExcludedUse;

/**
 * Why a crew, or nobody, may go. Masses in kg. Records store the names of these types and of their
 * components for good.
 */
public sealed interface Refusal {

  /**
   * A check that is not met.
   *
   * @param afterAllowance whether it is only so once the allowance for tape and scales is taken off
   */
  record ByCheck(CheckQuestion question, Margin margin, Note note, boolean afterAllowance)
      implements Refusal {
    static ByCheck of(CheckReading reading, boolean afterAllowance) {
      return new ByCheck(reading.question(), reading.margin(), reading.note(), afterAllowance);
    }

    /** As measured comes before after the allowance, then the lesser margin. */
    ByCheck worse(ByCheck other) {
      if (afterAllowance != other.afterAllowance) {
        return afterAllowance ? other : this;
      }
      return other.margin.room() < margin.room() ? other : this;
    }
  }

  /** A published formula, or the available room. */
  record ByLimit(LimitingFactor factor) implements Refusal {}

  /** The empty boat does not meet a check. */
  record EmptyBoat(ByCheck check) implements Refusal {}

  /** When others get out, the remaining people do not meet a check; nobody is the empty boat. */
  record ThoseLeft(List<String> names, ByCheck check) implements Refusal {
    public ThoseLeft {
      names = List.copyOf(names);
    }
  }

  /** Only one lighter person may go. */
  record OnlyLighter(double adultKg, double upToKg) implements Refusal {}

  /** Nobody may go from an adult down. */
  record NotOnePerson(double adultKg, double lightestKg) implements Refusal {}

  /** The boat has no places. */
  record NoPlaces() implements Refusal {}

  /** More people than there are places for. */
  record MoreThanPlaces(int room) implements Refusal {}

  /** More people than a rule gives. */
  record MoreThanRule(LimitingFactor factor, int most, int people) implements Refusal {}

  /** Heavier together than a rule leaves room for. */
  record HeavierThanRule(LimitingFactor factor, double roomKg, double crewKg) implements Refusal {}

  /**
   * A measurement that looks wrong.
   *
   * @param confirmedOtherwise whether another value of the same thing was confirmed with a reason
   */
  record Implausible(PlausibilityId doubt, boolean confirmedOtherwise) implements Refusal {}

  /** A failed trial in knee-deep water; the date as in ISO 8601. */
  record FailedTrial(String date, String by, int people, boolean level, boolean headsClear)
      implements Refusal {}

  /**
   * A boat that did not float as it was measured; the date as in ISO 8601.
   *
   * @param suspect the measurement most likely wrong
   */
  record FailedProof(String date, String by, Optional<SuspectedMeasurement> suspect)
      implements Refusal {}

  /** A fault at a point of a checklist that holds the launch until it is corrected. */
  record LookedAt(String date, String by, String must) implements Refusal {}

  /** A boat, a load or waters that the program does not cover. */
  record OutsideUse(ExcludedUse use) implements Refusal {}

  /** Words, in an older record. */
  record Stated(String words) implements Refusal {}
}
