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
 * Why a crew may not go, or nobody. Masses in kg. Records keep the names of these types and of
 * their parts for good.
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

    /** As measured before after the allowance, then the lesser margin. */
    ByCheck worse(ByCheck other) {
      if (afterAllowance != other.afterAllowance) {
        return afterAllowance ? other : this;
      }
      return other.margin.room() < margin.room() ? other : this;
    }
  }

  /** A published formula, or the room there is. */
  record ByLimit(LimitingFactor factor) implements Refusal {}

  /** The empty boat does not meet a check. */
  record EmptyBoat(ByCheck check) implements Refusal {}

  /** When others get out, those who are left do not meet a check; nobody is the empty boat. */
  record ThoseLeft(List<String> names, ByCheck check) implements Refusal {
    public ThoseLeft {
      names = List.copyOf(names);
    }
  }

  /** One lighter person only. */
  record OnlyLighter(double adultKg, double upToKg) implements Refusal {}

  /** Nobody from an adult down. */
  record NotOnePerson(double adultKg, double lightestKg) implements Refusal {}

  /** No place was given. */
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
   * @param confirmedOtherwise whether another measurement of the same thing was kept with a reason
   */
  record Implausible(PlausibilityId doubt, boolean confirmedOtherwise) implements Refusal {}

  /** A trial in knee-deep water that was seen to go badly; the date as in ISO 8601. */
  record FailedTrial(String date, String by, int people, boolean level, boolean headsClear)
      implements Refusal {}

  /**
   * A boat that did not float as it was measured; the date as in ISO 8601.
   *
   * @param suspect the measurement most likely wrong
   */
  record FailedProof(String date, String by, Optional<SuspectedMeasurement> suspect)
      implements Refusal {}

  /** A point of a checklist that holds the launch until it is as it should be. */
  record LookedAt(String date, String by, String must) implements Refusal {}

  /** A boat, a load or waters outside what is worked out. */
  record OutsideUse(ExcludedUse use) implements Refusal {}

  /** In words, as an older record has it. */
  record Stated(String words) implements Refusal {}
}
