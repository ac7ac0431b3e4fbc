package thwartwise.inspection;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.advice.Progress;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.boat.Filling;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.crew.Capacity;
import thwartwise.crew.Lazy;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.plausibility.Plausibility;
import thwartwise.plausibility.PlausibilityFinding;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;
import thwartwise.spread.CaseFigures;
import thwartwise.spread.MeasuringErrors;

/**
 * A boat is taken for the true one and measured many times with known errors; each time it is
 * inspected and judged by its spread. How often is more recommended than what the true boat
 * carries? At most 5 in 100 is wanted. Each boat but the plain ones falls just short of one more
 * adult, where that is likeliest. Draws are kept in a file, a line each, so that a run goes on
 * where the last one ended. Run by hand:
 *
 * <pre>
 * RecommendationCoverage FILE SECONDS TIMES [BOAT ...]
 * </pre>
 */
final class RecommendationCoverage {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final RuleSet SPREADS = RuleSetFile.measuringSpreads();
  private static final RuleBook BOOK = RuleBook.of(RULES);
  private static final long SEED = 2026;

  private RecommendationCoverage() {}

  /** A boat by its name. */
  enum Truth {
    BOX_FOR_NONE(() -> justShortOf(95, 0.22, 0.40, depth -> box(depth, 0.25, 1))),
    BOX_FOR_ONE(() -> justShortOf(190, 0.22, 0.45, depth -> box(depth, 0.25, 2))),
    BOX_FOR_A_LIGHT_PERSON(() -> justShortOf(70, 0.22, 0.40, depth -> box(depth, 0.25, 1))),
    BOX_FOR_A_HEAVY_PERSON(() -> justShortOf(125, 0.22, 0.40, depth -> box(depth, 0.25, 1))),
    BOX_HELD_UP_BY_LITTLE(() -> justShortOf(95, 0.002, 0.25, foam -> box(0.45, foam, 1))),
    PRAM_WITH_LOW_RAILS(() -> justShortOf(95, -0.2, 0, up -> railsRaised(PlainHulls.pram(), up)));

    private final Supplier<Boat> made;

    Truth(Supplier<Boat> made) {
      this.made = Lazy.of(() -> confirmed(made.get()));
    }

    Boat boat() {
      return made.get();
    }
  }

  /** The answer of a measured boat is not above that of the true one. */
  private static final class NotAbove extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final int people;

    NotAbove(int people) {
      this.people = people;
    }
  }

  /** What a boat carries: adults, what one person may weigh, people in all, load in all, kg. */
  record Answer(int people, double each, double crew, double load) {

    /**
     * Later searches are lower still, so the first one whose answer is not above the truth ends it:
     * -1 people where that is the one by the allowance alone, -2 after a judgement.
     */
    static Answer judged(Boat measured, Answer truth) {
      BoatModel model = BoatModel.of(measured, PlainHulls.TODAY);
      BalanceCache balances = new BalanceCache();
      try {
        SpreadJudgement judgement =
            new SpreadJudgement.Search(
                    (people, widenings) ->
                        truth.exceededBy(
                            new Inspection(model, BOOK, PlainHulls.TODAY, balances, widenings),
                            widenings.isEmpty() ? -1 : -2),
                    SPREADS,
                    Set.of(),
                    new CaseFigures(),
                    Progress.UNHEARD)
                .of(measured);
        return of(judgement.judgedByCrew().recommendation());
      } catch (NotAbove ended) {
        return new Answer(ended.people, 0, 0, 0);
      }
    }

    private Inspection exceededBy(Inspection inspection, int otherwise) {
      Capacity told = inspection.capacity();
      if (told.people() <= people && told.crew() <= crew && told.load() <= load) {
        throw new NotAbove(otherwise);
      }
      return inspection;
    }

    private static Answer of(Recommendation told) {
      return new Answer(told.people(), each(told), told.crew(), told.load());
    }

    static Answer truly(Boat truth) {
      return of(TrueAnswer.of(truth));
    }

    /** What one person may weigh. */
    private static double each(Recommendation told) {
      return told.crewLimits().stream()
          .filter(limit -> limit.people() == 1)
          .mapToDouble(Recommendation.CrewLimit::massLimit)
          .max()
          .orElse(0);
    }

    String line() {
      return String.format(Locale.ROOT, "%d %.1f %.1f %.1f", people, each, crew, load);
    }
  }

  /** An open box of 3 m by 1.2 m with a thwart aft of the middle and foam along both sides. */
  static Boat box(double depth, double foam, int people) {
    List<Station> stations =
        Stream.of(0.0, 0.75, 1.5, 2.25, 3.0).map(x -> station(x, depth)).toList();
    HullMeasurements hull =
        new HullMeasurements(
            60,
            Optional.of(Vector3.of(1.5, 0, 0.12)),
            Optional.of(Material.PLYWOOD),
            Material.PLYWOOD.swampedDensity(),
            0.006,
            0.006,
            stations,
            List.of());
    Box side = new Box(new Span(0.2, 2.8), new Span(0.6 - foam, 0.6), new Span(0.02, depth));
    return Boat.bare("box", Water.FRESH, hull, new Propulsion.Manual())
        .withChambers(
            List.of(
                new Chamber(
                    "side foam", side, new Filling.Foam(true, true), Optional.empty(), true)))
        .withPlaces(List.of(new Place("thwart", 1.2, 0.15, 0.3, people)));
  }

  private static Station station(double x, double depth) {
    return Station.mirrored(
        "at " + x, List.of(Vector3.of(x, 0, 0), Vector3.of(x, 0.6, 0), Vector3.of(x, 0.6, depth)));
  }

  /** The same with a reason for every measurement that looks wrong, or nothing would be told. */
  private static Boat confirmed(Boat boat) {
    return boat.withConfirmedMeasurements(
        doubtful(boat).map(id -> new ConfirmedMeasurement(id.text(), "measured twice")).toList());
  }

  private static Stream<PlausibilityId> doubtful(Boat boat) {
    return Plausibility.of(BoatModel.of(boat, PlainHulls.TODAY), RULES).stream()
        .filter(PlausibilityFinding::isDoubtful)
        .map(PlausibilityFinding::id);
  }

  private static Boat railsRaised(Boat boat, double up) {
    return boat.withHull(
        boat.hull()
            .withStations(
                boat.hull().stations().stream()
                    .map(
                        s -> {
                          List<Vector3> points = new ArrayList<>(s.port());
                          int rail = points.size() - 1;
                          points.set(rail, points.get(rail).plus(Vector3.of(0, 0, up)));
                          return Station.mirrored(s.name(), points);
                        })
                    .toList()));
  }

  /** The best of these boats whose people may not weigh so much together, kg. */
  private static Boat justShortOf(
      double kilograms, double poor, double good, DoubleFunction<Boat> boat) {
    RuleSet exact = TrueAnswer.exact();
    double low = poor;
    double high = good;
    while (high - low > 1e-5) {
      double middle = (low + high) / 2;
      if (QuickAnswer.of(confirmed(boat.apply(middle)), exact, PlainHulls.TODAY).crew()
          < kilograms) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return boat.apply(low);
  }

  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0]);
    long end = System.nanoTime() + Long.parseLong(args[1]) * 1_000_000_000L;
    int times = Integer.parseInt(args[2]);
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    List<Truth> wanted =
        args.length > 3
            ? Stream.of(args).skip(3).map(Truth::valueOf).toList()
            : List.of(Truth.values());
    for (Truth truth : wanted) {
      draw(truth, times, end, file);
    }
    for (Truth truth : Truth.values()) {
      table(truth, file, out);
    }
  }

  private static List<String> lines(Truth truth, Path file) throws IOException {
    return Files.exists(file)
        ? Files.readAllLines(file).stream().filter(l -> l.startsWith(truth.name() + " ")).toList()
        : List.of();
  }

  private static void draw(Truth truth, int times, long end, Path file) throws IOException {
    int done = lines(truth, file).size();
    if (done > times) {
      return;
    }
    Boat boat = truth.boat();
    Answer exact = Answer.truly(boat);
    if (done == 0) {
      add(file, truth.name() + " true " + exact.line());
      done = 1;
    }
    List<SplittableRandom> randoms = randoms(times);
    for (int i = done; i <= times && System.nanoTime() < end; i++) {
      Answer answer = Answer.judged(measured(boat, randoms.get(i - 1)), exact);
      add(file, truth.name() + " " + i + " " + answer.line());
    }
  }

  private static List<SplittableRandom> randoms(int times) {
    SplittableRandom root = new SplittableRandom(SEED);
    return IntStream.range(0, times).mapToObj(i -> root.split()).toList();
  }

  private static Boat measured(Boat truth, SplittableRandom random) {
    return confirmed(MeasuringErrors.measured(truth, random));
  }

  /** So many times measured and judged. */
  static List<Answer> answers(Truth truth, int times) {
    Boat boat = truth.boat();
    Answer exact = Answer.truly(boat);
    return randoms(times).stream().map(r -> Answer.judged(measured(boat, r), exact)).toList();
  }

  private static void add(Path file, String line) throws IOException {
    Files.writeString(file, line + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
  }

  private static Answer read(String line) {
    String[] words = line.split(" ");
    return new Answer(
        Integer.parseInt(words[2]),
        Double.parseDouble(words[3]),
        Double.parseDouble(words[4]),
        Double.parseDouble(words[5]));
  }

  private static void table(Truth truth, Path file, PrintStream out) throws IOException {
    List<Answer> all = lines(truth, file).stream().map(RecommendationCoverage::read).toList();
    if (all.size() < 2) {
      return;
    }
    Answer exact = all.get(0);
    List<Answer> told = all.subList(1, all.size());
    out.printf(
        Locale.ROOT,
        "%-22s true: %s; recommended above it of %4d: people %s, one person's kg %s, kg of people %s, kg in all %s%n",
        truth.name().toLowerCase(Locale.ROOT).replace('_', ' '),
        exact.line(),
        told.size(),
        above(told, exact, Answer::people),
        above(told, exact, Answer::each),
        above(told, exact, Answer::crew),
        above(told, exact, Answer::load));
  }

  private static String above(List<Answer> told, Answer exact, ToDoubleFunction<Answer> figure) {
    long above =
        told.stream().filter(a -> figure.applyAsDouble(a) > figure.applyAsDouble(exact)).count();
    return String.format(Locale.ROOT, "%5.1f %%", 100.0 * above / told.size());
  }
}
