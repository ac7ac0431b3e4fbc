package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import thwartwise.afloat.WaterLimits;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.UnmeasuredThing;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.CountedBuoyancy;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.hull.HullMeasurements;
import thwartwise.loadcase.Allowance;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.RuleSet;

/** The assumptions behind the figures that hold for every boat. */
final class Assumptions {
  private Assumptions() {}

  static List<Assumption> of(BoatModel model, RuleSet rules) {
    Boat boat = model.boat();
    UnitFormat units = new UnitFormat(boat.units());
    List<Assumption> all = new ArrayList<>(ofThisBoat(boat));
    all.add(
        stated(
            String.format(
                Locale.ROOT,
                "People sit still, seated, at their places; an unnamed adult counts %s dressed."
                    + " Nobody lighter than %s was looked at.",
                kilograms(rules.value("design-person"), units),
                kilograms(rules.value("lightest-person"), units))));
    all.addAll(figures(model, rules, units));
    all.add(stated(forces(rules, units, boat.outfit().isAnchorLineKnown())));
    all.add(stated(water(rules, units)));
    all.add(stated(WaterLimits.figures()));
    AssumedWaters.texts(rules, boat.waters(), units).forEach(text -> all.add(stated(text)));
    return all;
  }

  private static List<Assumption> ofThisBoat(Boat boat) {
    List<Assumption> all = new ArrayList<>();
    if (boat.hull().centre().isEmpty()) {
      all.add(new Assumption.Unmeasured(UnmeasuredThing.CENTRE_OF_BARE_HULL));
    }
    if (boat.propulsion() instanceof Propulsion.NotStated) {
      all.add(new Assumption.Unmeasured(UnmeasuredThing.PROPULSION));
    }
    boat.kit().stream()
        .filter(k -> k.volume().isPresent() && !k.fastened())
        .map(kit -> new Assumption.LooseKit(kit.name()))
        .forEach(all::add);
    boat.places().stream()
        .filter(p -> sitting(boat, p) > p.people())
        .map(place -> new Assumption.CrowdedPlace(place.name()))
        .forEach(all::add);
    if (!boat.kit().isEmpty()) {
      all.add(new Assumption.Unmeasured(UnmeasuredThing.KIT_STAYS_WHERE_LISTED));
    }
    return all;
  }

  private static Assumption stated(String words) {
    return new Assumption.Stated(words);
  }

  /** Figures that every answer uses and no single finding names. */
  private static List<Assumption> figures(BoatModel model, RuleSet rules, UnitFormat units) {
    List<Assumption> all = new ArrayList<>();
    all.add(stated(allowance(model, rules, units)));
    StationRefinement.of(model, rules).ifPresent(all::add);
    all.add(
        stated(
            String.format(
                Locale.ROOT,
                "Everyone to one side means %.1f of the way out: %s.",
                rules.value("offset-share"),
                rules.limit("offset-share").cited())));
    all.add(
        stated(
            String.format(
                Locale.ROOT,
                "The shell is counted at %s when swamped (%s).",
                density(model.boat().hull().density(), units),
                model.boat().hull().material().isPresent() ? "judgement" : "as given")));
    all.add(stated(CountedBuoyancy.figures(units)));
    Body.figures(units).forEach(text -> all.add(stated(text)));
    return all;
  }

  private static String allowance(BoatModel model, RuleSet rules, UnitFormat units) {
    Allowance taken = Allowance.of(rules, model);
    return String.format(
            Locale.ROOT,
            "Before anything meets a limit, %.0f %% is added to every mass, %.0f %% taken off every"
                + " counted volume and %s off every height above the water (judgement)",
            100 * (taken.massFactor() - 1),
            Math.ceil(100 * (1 - taken.volumeFactor()) - 1e-9),
            off(taken, units))
        + (Allowance.isGuessed(rules, model) ? enough(model, rules, units) : ".");
  }

  private static String enough(BoatModel model, RuleSet rules, UnitFormat units) {
    Allowance enough = Allowance.withEnoughStations(rules);
    HullMeasurements hull = model.boat().hull();
    boolean few = hull.stations().size() <= rules.value("few-stations");
    return String.format(
            Locale.ROOT,
            few
                ? ": only %.0f stations were measured, and much of the shape between them is guessed."
                    + " With %.0f"
                : ": %.0f %% of the length lie between two stations, and much of the shape there is"
                    + " guessed. With no more than %.0f %%",
            few ? hull.stations().size() : Math.ceil(100 * hull.longestStretch() - 1e-9),
            few ? 1 + rules.value("few-stations") : 100 * rules.value("stretch-measured"))
        + String.format(
            Locale.ROOT,
            " it would be %.0f %% of volumes and %s.",
            100 * (1 - enough.volumeFactor()),
            off(enough, units));
  }

  /** Figures behind the pulls on the boat. */
  private static String forces(RuleSet rules, UnitFormat units, boolean anchorLineKnown) {
    return "Pulls are reckoned from "
        + format(
            rules,
            "a current of %s",
            "current",
            own("%.1f m/s", units, v -> units.speed(v, Side.UP)))
        + format(
            rules, ", a wind of %s", "wind", own("%.1f m/s", units, v -> units.speed(v, Side.UP)))
        + format(rules, ", drag coefficients of %.2f in water", "drag-water")
        + format(rules, ", %.2f for the hull in air", "drag-hull")
        + format(rules, ", %.2f for people in air", "drag-person")
        + format(
            rules, " of %s each", "person-area", own("%.2f m2", units, v -> units.area(v, Side.UP)))
        + format(rules, ", times %.0f when a line snatches", "snatch")
        + format(rules, ", a line leading %.0f degrees down", "line-angle")
        + (anchorLineKnown ? ", more where the stated anchor line must" : "")
        + format(
            rules,
            ", a motor's push of %s to the two thirds",
            "motor-thrust",
            own("%.2f N times its watts", units, v -> thrust(v, units)))
        + format(
            rules,
            ", its propeller %s under the foot of the transom",
            "motor-depth",
            own("%.2f m", units, units::mark))
        + format(rules, ", %.0f degrees hard over", "motor-over")
        + ".";
  }

  /** Figures behind bailing, drains and people in the water. */
  private static String water(RuleSet rules, UnitFormat units) {
    return "Water in and out is reckoned from "
        + format(rules, "a discharge coefficient of %.1f for a hole", "drain-coefficient")
        + format(
            rules,
            ", a bailer of %s where none was named",
            "bailer",
            own("%.0f litres", units, v -> units.jug(v / 1000)))
        + format(rules, ", %.1f full at each stroke", "bailer-fill")
        + format(rules, ", %.0f strokes a minute", "bailer-strokes")
        + format(
            rules,
            ", and hands in the water from %s on the rail for each person",
            "hanging",
            own("%.0f N", units, v -> units.force(v, Side.DOWN)))
        + ".";
  }

  private static String format(RuleSet rules, String words, String limit) {
    return String.format(Locale.ROOT, words, rules.value(limit))
        + " ("
        + rules.limit(limit).basis().word()
        + ")";
  }

  private static String format(
      RuleSet rules, String words, String limit, DoubleFunction<String> figure) {
    return String.format(words, figure.apply(rules.value(limit)))
        + " ("
        + rules.limit(limit).basis().word()
        + ")";
  }

  /** In metric words as reports have always said it. */
  private static DoubleFunction<String> own(
      String metric, UnitFormat units, DoubleFunction<String> own) {
    return value -> units.either(String.format(Locale.ROOT, metric, value), () -> own.apply(value));
  }

  /** The push of one horsepower is so many times that of one watt to the two thirds. */
  private static String thrust(double newtons, UnitFormat units) {
    double ofOne = newtons * Math.pow(UnitFormat.HORSEPOWER, 2.0 / 3);
    return units.force(ofOne, Side.UP) + " times its horsepower";
  }

  private static String kilograms(double mass, UnitFormat units) {
    return own("%.0f kg", units, v -> units.mass(v, Side.UP)).apply(mass);
  }

  private static String density(double value, UnitFormat units) {
    return own("%.0f kg/m3", units, units::density).apply(value);
  }

  private static String off(Allowance allowance, UnitFormat units) {
    return own("%.2f m", units, units::tape).apply(allowance.freeboardLoss());
  }

  private static long sitting(Boat boat, Place place) {
    return boat.aboard().stream().filter(p -> p.place().equals(place.name())).count();
  }
}
