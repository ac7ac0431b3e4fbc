package thwartwise.report;

import static java.util.Map.entry;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import thwartwise.boat.MethodAssumption;
import thwartwise.boat.MethodAssumption.GuessedShape;
import thwartwise.boat.MethodAssumption.RuleFigure;
import thwartwise.boat.MethodAssumption.ShelteredWater;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/** The assumptions of the method for every boat, each in a sentence. */
record MethodAssumptionWords(UnitFormat units) {
  /** The figures in words, by their keys in the rule set. */
  private static final Map<String, BiFunction<MethodAssumptionWords, Double, String>> FIGURES =
      Map.ofEntries(
          entry("current", (w, v) -> "a current of " + w.inUnits(v, "%.1f m/s", w::speedUp)),
          entry("wind", (w, v) -> ", a wind of " + w.inUnits(v, "%.1f m/s", w::speedUp)),
          entry("drag-water", (w, v) -> number(", drag coefficients of %.2f in water", v)),
          entry("drag-hull", (w, v) -> number(", %.2f for the hull in air", v)),
          entry("drag-person", (w, v) -> number(", %.2f for people in air", v)),
          entry(
              "person-area",
              (w, v) -> " of " + w.inUnits(v, "%.2f m2", a -> w.units.area(a, Side.UP)) + " each"),
          entry("snatch", (w, v) -> number(", times %.0f when a line snatches", v)),
          entry("line-angle", (w, v) -> number(", a line leading %.0f degrees down", v)),
          entry(
              "motor-thrust",
              (w, v) ->
                  ", a motor's push of "
                      + w.inUnits(v, "%.2f N times its watts", w::thrust)
                      + " to the two thirds"),
          entry(
              "motor-depth",
              (w, v) ->
                  ", its propeller "
                      + w.inUnits(v, "%.2f m", w.units::mark)
                      + " under the foot of the transom"),
          entry("motor-over", (w, v) -> number(", %.0f degrees hard over", v)),
          entry(
              "drain-coefficient",
              (w, v) -> number("a discharge coefficient of %.1f for a hole", v)),
          entry(
              "bailer",
              (w, v) ->
                  ", a bailer of "
                      + w.inUnits(v, "%.0f litres", l -> w.units.jug(l / 1000))
                      + " where none was named"),
          entry("bailer-fill", (w, v) -> number(", %.1f full at each stroke", v)),
          entry("bailer-strokes", (w, v) -> number(", %.0f strokes a minute", v)),
          entry(
              "hanging",
              (w, v) ->
                  ", and hands in the water from "
                      + w.inUnits(v, "%.0f N", f -> w.units.force(f, Side.DOWN))
                      + " on the rail for each person"));

  private static final String LINE_ANGLE = "line-angle";

  String of(MethodAssumption assumption) {
    if (assumption instanceof MethodAssumption.SeatedCrew crew) {
      return "People sit still, seated, at their places; an unnamed adult counts "
          + kilograms(crew.adult())
          + " dressed. Nobody lighter than "
          + kilograms(crew.lightest())
          + " was looked at.";
    }
    if (assumption instanceof MethodAssumption.MeasurementAllowance allowance) {
      return allowance(allowance);
    }
    if (assumption instanceof MethodAssumption.MeasuringWays ways) {
      return number("To hull and kit %.0f %% is added", percent(ways.listedMass()))
          + ways.ways().stream()
              .map(way -> MethodWords.accuracy(way, units))
              .collect(
                  Collectors.joining("; ", ", as it was said how things were measured: ", "."));
    }
    if (assumption instanceof MethodAssumption.MovedShare moved) {
      return number("Everyone to one side means %.1f of the way out: ", moved.share())
          + moved.source()
          + ".";
    }
    if (assumption instanceof MethodAssumption.SwampedShell shell) {
      return "The shell is counted at "
          + inUnits(shell.density(), "%.0f kg/m3", units::density)
          + " when swamped ("
          + (shell.stated() ? "as given" : "judgement")
          + ").";
    }
    if (assumption instanceof MethodAssumption.ChamberRule rule) {
      return String.format(
          Locale.ROOT,
          "A chamber of air counts when a test of at least %.0f minutes (judgement) let in at most"
              + " %s (a youth dinghy class, READ) within the last %d months; of fastened"
              + " closed-cell foam %.0f %% counts (judgement).",
          rule.leastMinutes(),
          BuoyancyReasonWords.mostLitres(rule.mostLitres(), units),
          rule.freshMonths(),
          100 * rule.foamShare());
    }
    if (assumption instanceof MethodAssumption.LeakingChambers leak) {
      return number(
              "Of a chamber that let water in, what is left after %.0f minutes", leak.minutes())
          + " counts: "
          + leak.source()
          + ". It fills as in its test, faster by the head of water up to the rail, as through a"
          + " hole or a seep, whichever is worse; the leak is taken to lie halfway up (judgement).";
    }
    return ofPeople(assumption);
  }

  private String ofPeople(MethodAssumption assumption) {
    if (assumption instanceof MethodAssumption.StillPerson still) {
      return "A person who sits still or moves slowly keeps the trunk upright, so the weight acts"
          + " where it is carried (a weight that hangs acts at its point of suspension, READ in"
          + " textbooks of stability; 33 CFR 183.41 puts its weights at seat height, READ): at"
          + " the seat, and "
          + length(still.kneeling())
          + " above the floor kneeling (judgement).";
    }
    if (assumption instanceof MethodAssumption.StiffPerson stiff) {
      return "Stiff, asleep, frightened or moving suddenly, a person leans with the boat: the weight"
          + " acts at the centre of gravity, %s above the seat, %s above the floor standing"
              .formatted(length(stiff.seated()), length(stiff.standing()))
          + " (IMO Res. A.749(18) 3.5.2.7, READ), never under %s above the floor, as when"
              .formatted(length(stiff.kneeling()))
          + " kneeling, and %s above and over the rail leaning out (judgement)."
              .formatted(length(stiff.leaning()));
    }
    if (assumption instanceof MethodAssumption.MovingPerson moving) {
      return "People move: at least %s out from the middle line whatever the seat allows, and %s to"
              .formatted(length(moving.leastReach()), length(moving.sway()))
          + " one side in standing up (judgement).";
    }
    if (assumption instanceof MethodAssumption.BodyInWater body) {
      return "In the water a body is "
          + inUnits(body.density(), "%.0f kg to the cubic metre", units::density)
          + number(", %.0f %% of it legs (Winter 2005 as quoted, READ) on the", 100 * body.legs())
          + " floor, before a seat that is a chamber, the rest "
          + length(body.height())
          + " high above the seat (judgement); a life jacket lifts nothing here.";
    }
    return ofWater(assumption);
  }

  private String ofWater(MethodAssumption assumption) {
    if (assumption instanceof MethodAssumption.PullFigures pulls) {
      return "Pulls are reckoned from "
          + figures(
              pulls.figures(),
              pulls.anchorLineKnown() ? ", more where the stated anchor line must" : "")
          + ".";
    }
    if (assumption instanceof MethodAssumption.FlowFigures flow) {
      return "Water in and out is reckoned from " + figures(flow.figures(), "") + ".";
    }
    if (assumption instanceof MethodAssumption.NoReturn no) {
      return number(
          "Water in the boat that lays it over by more than %.0f degrees counts as no return"
              + " (judgement).",
          Math.toDegrees(no.heel()));
    }
    if (assumption instanceof MethodAssumption.UnstatedWaters waters) {
      return waters.taken().stream()
          .map(this::sheltered)
          .collect(Collectors.joining("; ", "Not stated, so taken as sheltered: ", "."));
    }
    MethodAssumption.WaveAsFreeboard wave = (MethodAssumption.WaveAsFreeboard) assumption;
    return number(
            "A wave counts only as freeboard: at rest its whole height must be left, with everyone"
                + " to one side %.1f of it",
            wave.heeledShare())
        + based(wave.basis())
        + ". How the boat moves in it is not worked out.";
  }

  private String allowance(MethodAssumption.MeasurementAllowance taken) {
    return String.format(
            Locale.ROOT,
            "Before anything meets a limit, %.0f %% is added to every mass, %.0f %% taken off every"
                + " counted volume and %s off every height above the water (judgement)",
            100 * taken.mass(),
            percent(taken.volume()),
            height(taken.height()))
        + taken.guessed().map(this::guessed).orElse(".");
  }

  private String guessed(GuessedShape shape) {
    return String.format(
            Locale.ROOT,
            shape.fewStations()
                ? ": only %.0f stations were measured, and much of the shape between them is guessed."
                    + " With %.0f"
                : ": %.0f %% of the length lie between two stations, and much of the shape there is"
                    + " guessed. With no more than %.0f %%",
            shape.fewStations() ? shape.measured() : percent(shape.measured()),
            shape.fewStations() ? shape.enough() : 100 * shape.enough())
        + String.format(
            Locale.ROOT,
            " it would be %.0f %% of volumes and %s.",
            100 * shape.volume(),
            height(shape.height()));
  }

  /** A percentage rounded up, for a deduction. */
  private static double percent(double share) {
    return Math.ceil(100 * share - 1e-9);
  }

  private String figures(List<RuleFigure> figures, String ofAnchorLine) {
    return figures.stream()
        .map(f -> figure(f) + (LINE_ANGLE.equals(f.limit()) ? ofAnchorLine : ""))
        .collect(Collectors.joining());
  }

  private String figure(RuleFigure figure) {
    return FIGURES
            .getOrDefault(figure.limit(), (w, v) -> ", " + figure.limit() + " " + v)
            .apply(this, figure.value())
        + based(figure.basis());
  }

  private String sheltered(ShelteredWater water) {
    double figure = water.figure().orElse(Double.NaN);
    String words =
        switch (water.property()) {
          case WAVES ->
              "waves of " + inUnits(figure, "%.2f m", v -> units.height(v, Side.DOWN)) + " at most";
          case BREAKING -> "no wave breaks";
          case WIND -> "wind of " + inUnits(figure, "%.1f m/s", this::speedDown) + " at most";
          case CURRENT ->
              "a current of " + inUnits(figure, "%.1f m/s", this::speedDown) + " at most";
          case WEIR -> "no weir in reach";
          case WASH -> "no wash of passing boats";
          case TEMPERATURE ->
              "water of "
                  + inUnits(figure, "%.0f degrees Celsius", v -> units.temperature(v, Side.UP))
                  + " or warmer";
          case OFFSHORE ->
              "within "
                  + inUnits(figure, "%.0f m", v -> units.distance(v, Side.DOWN))
                  + " of the shore";
        };
    return words + (water.figure().isPresent() ? based(water.basis()) : "");
  }

  private static String based(String basis) {
    return " (" + basis + ")";
  }

  /** Metric words in the form that reports have always had. */
  private String inUnits(double value, String metric, DoubleFunction<String> own) {
    return units.either(number(metric, value), () -> own.apply(value));
  }

  private static String number(String words, double value) {
    return String.format(Locale.ROOT, words, value);
  }

  /**
   * The thrust of one horsepower, from that of one watt: thrust goes with the power to the two
   * thirds.
   */
  private String thrust(double newtons) {
    double ofOne = newtons * Math.pow(UnitFormat.HORSEPOWER, 2.0 / 3);
    return units.force(ofOne, Side.UP) + " times its horsepower";
  }

  private String speedUp(double speed) {
    return units.speed(speed, Side.UP);
  }

  private String speedDown(double speed) {
    return units.speed(speed, Side.DOWN);
  }

  private String kilograms(double mass) {
    return inUnits(mass, "%.0f kg", v -> units.mass(v, Side.UP));
  }

  private String height(double loss) {
    return inUnits(loss, "%.2f m", units::tape);
  }

  private String length(double metres) {
    return inUnits(metres, "%.2f m", units::step);
  }
}
