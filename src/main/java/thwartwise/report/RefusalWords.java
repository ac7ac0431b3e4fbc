package thwartwise.report;

import java.util.List;
import java.util.Locale;
import thwartwise.checks.Margin;
import thwartwise.crew.Refusal;
import thwartwise.measure.QuantityText;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/** Why a crew may not go, in words. */
public final class RefusalWords {
  private final UnitFormat units;

  private RefusalWords(UnitFormat units) {
    this.units = units;
  }

  public static List<String> of(List<Refusal> refusals, UnitFormat units) {
    return refusals.stream().map(refusal -> of(refusal, units)).toList();
  }

  /** The reasons; if the empty boat falls short already, the first is enough. */
  static List<String> brief(List<Refusal> refusals, UnitFormat units) {
    List<Refusal> empty = refusals.stream().filter(Refusal.EmptyBoat.class::isInstance).toList();
    return of(refusals.stream().filter(r -> empty.indexOf(r) < 1).toList(), units);
  }

  public static String of(Refusal refusal, UnitFormat units) {
    return new RefusalWords(units).words(refusal);
  }

  private String words(Refusal refusal) {
    if (refusal instanceof Refusal.ByCheck check) {
      return check(check);
    }
    if (refusal instanceof Refusal.ByLimit limit) {
      return LimitingFactorWords.of(limit.factor());
    }
    if (refusal instanceof Refusal.EmptyBoat empty) {
      return "with nobody aboard it falls short: " + check(empty.check());
    }
    if (refusal instanceof Refusal.ThoseLeft left) {
      return left(left.names()) + "; " + check(left.check());
    }
    if (refusal instanceof Refusal.Implausible doubt) {
      return implausible(doubt);
    }
    if (refusal instanceof Refusal.FailedTrial trial) {
      return failed(trial);
    }
    if (refusal instanceof Refusal.FailedProof proof) {
      return ProofWords.held(proof.date(), proof.by(), proof.suspect(), units);
    }
    if (refusal instanceof Refusal.LookedAt looked) {
      return looked.by()
          + " looked on "
          + looked.date()
          + " and found this not as it should be, so nothing is recommended: "
          + looked.must();
    }
    if (refusal instanceof Refusal.OutsideUse outside) {
      return ExcludedUseWords.of(outside.use(), units);
    }
    return refusal instanceof Refusal.Stated stated ? stated.words() : numbers(refusal);
  }

  private String numbers(Refusal refusal) {
    if (refusal instanceof Refusal.OnlyLighter lighter) {
      return String.format(
          "no adult of %s, but one person up to %s",
          kilograms(lighter.adultKg(), Side.UP), kilograms(lighter.upToKg(), Side.DOWN));
    }
    if (refusal instanceof Refusal.NotOnePerson nobody) {
      return String.format(
          "not one person meets every check, from an adult of %s down to %s",
          kilograms(nobody.adultKg(), Side.UP), kilograms(nobody.lightestKg(), Side.DOWN));
    }
    if (refusal instanceof Refusal.MoreThanPlaces more) {
      return "no place for so many: the boat has room for " + more.room();
    }
    if (refusal instanceof Refusal.MoreThanRule more) {
      return String.format(
          Locale.ROOT,
          "%s gives at most %d people, and these are %d",
          LimitingFactorWords.of(more.factor()),
          more.most(),
          more.people());
    }
    if (refusal instanceof Refusal.HeavierThanRule heavier) {
      return String.format(
          "%s leaves %s for people, and these may come to %s",
          LimitingFactorWords.of(heavier.factor()),
          kilograms(Math.floor(heavier.roomKg()), Side.DOWN),
          kilograms(Math.ceil(heavier.crewKg() - 1e-9), Side.UP));
    }
    return "no place to sit was given, so nobody can be placed";
  }

  private String check(Refusal.ByCheck check) {
    return figures(check)
        + (check.afterAllowance() ? " (after the allowance for tape and scales)" : "");
  }

  /** The question, the figure and the requirement. */
  private String figures(Refusal.ByCheck check) {
    Margin margin = check.margin();
    String asked = CheckWords.of(check.question());
    if (margin.value().isEmpty()) {
      String note = NoteWords.of(check.note(), units);
      return asked + ": " + (note.isBlank() ? "no steady rest" : note);
    }
    return asked
        + ": "
        + (margin.turnsOver() ? "it rolls over" : FigureWords.withLimit(margin, units));
  }

  private static String left(List<String> names) {
    return names.isEmpty() ? "the empty boat" : String.join(" and ", names) + " alone";
  }

  private static String implausible(Refusal.Implausible implausible) {
    return "a measurement looks wrong: "
        + PlausibilityWords.of(implausible.doubt())
        + (implausible.confirmedOtherwise()
            ? " (what it was before was kept with a reason; it was measured anew since)"
            : "")
        + ". Measure it again; if it is right, keep it with a reason (\"kept\", about \""
        + implausible.doubt().text()
        + "\")";
  }

  private static String failed(Refusal.FailedTrial trial) {
    return String.format(
        Locale.ROOT,
        "in the trial in knee-deep water on %s, %s saw that full of water, with %s in it, %s, so"
            + " nothing is recommended",
        trial.date(),
        trial.by(),
        QuantityText.people(trial.people()),
        observed(trial));
  }

  private static String observed(Refusal.FailedTrial trial) {
    if (trial.headsClear()) {
      return "it did not float level";
    }
    return trial.level()
        ? "a head did not stay clear"
        : "it did not float level and a head did not stay clear";
  }

  private String kilograms(double mass, Side side) {
    return units.either(String.format(Locale.ROOT, "%.0f kg", mass), () -> units.mass(mass, side));
  }
}
