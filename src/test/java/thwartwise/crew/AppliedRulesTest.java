package thwartwise.crew;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Waters;
import thwartwise.checks.FindingText;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Span;
import thwartwise.inspection.InspectedBoats;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.PlainHulls;
import thwartwise.inspection.QuickAnswer;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitText;
import thwartwise.report.FormulaNoteWords;
import thwartwise.report.LimitingFactorWords;
import thwartwise.rules.Applicability;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.CapacityFigure.FigureStatus;
import thwartwise.rules.Formula;
import thwartwise.rules.Formula.FormulaMethod;
import thwartwise.rules.FormulaNote;
import thwartwise.rules.FormulaResult;
import thwartwise.rules.Formulas;
import thwartwise.rules.Limit;
import thwartwise.rules.Limit.Basis;
import thwartwise.rules.Limit.StrictDirection;
import thwartwise.rules.Parameters;
import thwartwise.rules.Parameters.TableStep;
import thwartwise.rules.RatedBoat;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;
import thwartwise.rules.RuleSet.RuleSetFormula;

/** What other rule sets do to a recommendation: they may lower it, and nothing else. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AppliedRulesTest {
  private static final RuleSet OWN = RuleSetFile.cautiousDefault();
  private static final RuleBook ALONE = RuleBook.of(OWN);

  /** A boat with the equilibria found so far: no rule set changes how it floats. */
  private record KnownBoat(BoatModel model, BalanceCache balances) {
    static KnownBoat of(Boat boat) {
      return new KnownBoat(BoatModel.of(boat, PlainHulls.TODAY), new BalanceCache());
    }
  }

  private final Map<Boat, KnownBoat> known = new ConcurrentHashMap<>();

  private KnownBoat known(Boat boat) {
    return known.computeIfAbsent(boat, KnownBoat::of);
  }

  private Recommendation recommended(Boat boat, RuleBook book) {
    return QuickAnswer.recommended(known(boat).model(), book, known(boat).balances());
  }

  private QuickAnswer quick(Boat boat, RuleBook book) {
    return QuickAnswer.of(known(boat).model(), book, known(boat).balances());
  }

  private static Recommendation before(Boat boat) {
    return InspectedBoats.recommendedUnderOwn(boat);
  }

  static Stream<Arguments> randomSets() {
    Random random = new Random(20261125);
    return IntStream.range(0, 12)
        .mapToObj(
            i ->
                Arguments.of(
                    i % 2 == 0 ? PlainHulls.pram() : PlainHulls.skiff(), randomSet(i, random)));
  }

  /** Some of our limits, each moved at random to either side; some of the caps. */
  private static RuleSet randomSet(int number, Random random) {
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (String name : new TreeSet<>(OWN.limits().keySet())) {
      Limit ours = OWN.limit(name);
      if (ours.stricter() != StrictDirection.NEITHER && random.nextInt(4) == 0) {
        double value = ours.value() * (0.7 + 0.6 * random.nextDouble());
        limits.put(name, new Limit(value, ours.unit(), Basis.JUDGEMENT, "dice"));
      }
    }
    RuleSet caps =
        RuleSetFile.alternative(caps(1 + random.nextInt(4), 60 + random.nextInt(250)), "dice", OWN);
    return new RuleSet(
        "set " + number, "1", "", "all", caps.applies(), true, limits, caps.formulas());
  }

  private static String caps(int people, int kilograms) {
    return """
        { "format": "thwartwise/rules/1", "name": "caps", "edition": "1", "appliesTo": "all",
          "formulas": [
            { "formula": "people at most", "people": %d, "basis": "READ", "source": "a board" },
            { "formula": "kilograms of load at most", "kg": %d, "basis": "READ", "source": "a board" } ] }
        """
        .formatted(people, kilograms);
  }

  /** A litre in an hour: of 0.1 m³ and more a hundredth is gone by then, and twice that in two. */
  @Test
  void a_set_may_want_people_held_up_longer_and_a_leaking_chamber_counts_for_less() {
    BoxBoat box = BoxBoat.of(3, 1.2, 0.4).proven("fore locker", new Span(2.5, 3));
    SealTest leaked = new SealTest(BoxBoat.TODAY, "held under", 60, 1, "me", Optional.of(0.4));
    Boat boat =
        box.boat()
            .withChambers(
                box.boat().chambers().stream()
                    .map(c -> c.filledWith(new Filling.Air(Seal.PROVEN, Optional.of(leaked))))
                    .toList());
    BoatModel model = BoatModel.of(boat, BoxBoat.TODAY);
    double whole = box.model().spaces().get(0).counting().share();
    double hour = new AppliedRules(model, ALONE).model().spaces().get(0).counting().share();
    assertThat(hour).isEqualTo(model.spaces().get(0).counting().share()).isLessThan(whole);
    assertThat(lifting(model, 120)).isCloseTo(whole - 2 * (whole - hour), within(1e-9));
    assertThat(lifting(model, 30)).as("never laxer").isEqualTo(hour);
  }

  private static double lifting(BoatModel model, int minutes) {
    return new AppliedRules(model, HeldUpFor.minutes(minutes))
        .model()
        .spaces()
        .get(0)
        .counting()
        .share();
  }

  @ParameterizedTest
  @MethodSource("randomSets")
  void a_set_more_never_raises_people_crew_or_load_and_is_never_exceeded(Boat boat, RuleSet set) {
    RuleBook book = ALONE.and(List.of(set));
    Recommendation with = recommended(boat, book);
    assertThat(quick(boat, book))
        .isEqualTo(new QuickAnswer(with.people(), with.crew(), with.load()));
    assertThat(with.people()).isLessThanOrEqualTo(before(boat).people());
    assertThat(with.crew()).isLessThanOrEqualTo(before(boat).crew());
    assertThat(with.load()).isLessThanOrEqualTo(before(boat).load());
    noRowIsRaised(with, before(boat));
    RuleBook all = RuleSetFile.bundledRuleBook().and(List.of(set));
    QuickAnswer and = quick(boat, all);
    assertThat(and.crew()).isLessThanOrEqualTo(with.crew());
    assertThat(and.load()).isLessThanOrEqualTo(with.load());
    exceedsNothing(with, book.figures(BoatModel.of(boat, PlainHulls.TODAY)));
  }

  /** Besides fewer people more may lie; besides as many, never more than without the set. */
  private static void noRowIsRaised(Recommendation with, Recommendation before) {
    for (Recommendation.CrewLimit row : with.crewLimits()) {
      Recommendation.CrewLimit was =
          before.crewLimits().stream()
              .filter(limit -> limit.people() == row.people())
              .findFirst()
              .orElseThrow();
      assertThat(row.massLimit()).isLessThanOrEqualTo(was.massLimit());
      assertThat(row.extraMass()).isLessThanOrEqualTo(was.extraMass());
    }
  }

  // Two sets that tighten, one after the other.
  @Test
  void a_second_set_never_raises_what_the_first_has_left() {
    Random random = new Random(7);
    for (int i = 0; i < 3; i++) {
      RuleBook one = ALONE.and(List.of(randomSet(1, random)));
      RuleBook two = one.and(List.of(randomSet(2, random)));
      Recommendation first = recommended(PlainHulls.pram(), one);
      Recommendation second = recommended(PlainHulls.pram(), two);
      assertThat(second.people()).isLessThanOrEqualTo(first.people());
      assertThat(second.crew()).isLessThanOrEqualTo(first.crew());
      assertThat(second.load()).isLessThanOrEqualTo(first.load());
    }
  }

  // Whom a rule keeps ashore must not come back as cargo.
  @Test
  void a_cap_on_heads_alone_never_raises_the_load() {
    String heads =
        """
        { "format": "thwartwise/rules/1", "name": "caps", "edition": "1", "appliesTo": "all",
          "formulas": [
            { "formula": "people at most", "people": 1, "basis": "READ", "source": "a board" } ] }
        """;
    RuleBook book = ALONE.and(List.of(RuleSetFile.alternative(heads, "board", OWN)));
    Recommendation r = recommended(PlainHulls.skiff(), book);
    assertThat(r.load()).isLessThanOrEqualTo(before(PlainHulls.skiff()).load());
    assertThat(r.load()).isGreaterThanOrEqualTo(r.crew());
    assertThat(r.extra()).isGreaterThan(0);
  }

  private static void exceedsNothing(Recommendation r, List<CapacityFigure> figures) {
    for (CapacityFigure figure : figures) {
      if (figure.takesPart() && figure.caps() == CapKind.PEOPLE) {
        assertThat(r.crew()).isLessThanOrEqualTo(figure.value());
      }
      if (figure.takesPart() && figure.caps() == CapKind.LOAD) {
        assertThat(r.load()).isLessThanOrEqualTo(figure.value());
      }
      if (figure.takesPart() && figure.persons().isPresent()) {
        int most = figure.persons().getAsInt();
        assertThat(r.people()).isLessThanOrEqualTo(most);
        assertThat(r.crewLimits()).allMatch(limit -> limit.people() <= most);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("hulls")
  void no_shipped_rule_that_takes_part_is_exceeded(Boat boat) {
    Recommendation r = recommended(boat, RuleSetFile.bundledRuleBook());
    exceedsNothing(r, RuleSetFile.bundledRuleBook().figures(BoatModel.of(boat, PlainHulls.TODAY)));
  }

  static Stream<Boat> hulls() {
    return Stream.of(PlainHulls.pram(), PlainHulls.skiff());
  }

  @Test
  void a_cap_on_heads_governs_and_says_whose_it_is() {
    RuleSet one = RuleSetFile.alternative(caps(1, 900), "board", OWN);
    Recommendation r = recommended(PlainHulls.skiff(), ALONE.and(List.of(one)));
    assertThat(before(PlainHulls.skiff()).people()).isGreaterThan(1);
    assertThat(r.people()).isEqualTo(1);
    assertThat(r.governedBy().map(LimitingFactorWords::of)).contains("caps: people at most");
    assertThat(r.crewLimits()).extracting(Recommendation.CrewLimit::people).containsExactly(1);
  }

  // A rule's rounded count caps heads, and its kilograms cap kilograms: neither stands for the
  // other.
  @Test
  void a_count_of_people_is_never_turned_into_kilograms() {
    CapacityFigure rounded = figure(CapKind.PEOPLE, 150, 3, FigureStatus.TAKES_PART);
    FormulaCaps caps = new FormulaCaps(List.of(rounded), 0);
    assertThat(caps.room()).isEqualTo(150);
    assertThat(caps.people(75)).isEqualTo(2);
    assertThat(caps.heads()).isEqualTo(3);
  }

  @Test
  void what_stands_beside_or_does_not_apply_caps_nothing() {
    FormulaCaps caps =
        new FormulaCaps(
            List.of(
                figure(CapKind.PEOPLE, 10, 1, FigureStatus.BESIDE),
                figure(CapKind.LOAD, 10, 1, FigureStatus.DOES_NOT_APPLY)),
            0);
    assertThat(caps.room()).isInfinite();
    assertThat(caps.heads()).isEqualTo(Integer.MAX_VALUE);
    assertThat(caps.lowest(95)).isEmpty();
  }

  // Somebody's own set may call a formula whatever it likes; only the formula itself knows that it
  // stands in a regulation.
  @Test
  void a_title_that_sounds_like_a_regulation_does_not_hide_whose_rule_it_is() {
    assertThat(governing("33 CFR as our club reads it"))
        .hasValue(new LimitingFactor.ByFormula("Club", "33 CFR as our club reads it"));
    assertThat(governing(""))
        .hasValue(new LimitingFactor.ByFormula("", "33 CFR 183.37 maximum weight, manual"));
  }

  private static Optional<LimitingFactor.ByFormula> governing(String title) {
    RuleSetFormula formula =
        new RuleSetFormula(
            Formulas.named("33 CFR 183.37").orElseThrow(),
            title,
            new Parameters(Map.of(), Map.of()),
            true,
            Limit.Basis.JUDGEMENT,
            UnitText.of(""));
    RuleSet club =
        new RuleSet("Club", "1", "", "", Applicability.TO_ALL, true, Map.of(), List.of(formula));
    List<CapacityFigure> figures =
        new RuleBook(OWN, List.of(club))
            .figures(BoatModel.of(PlainHulls.skiff(), PlainHulls.TODAY));
    return new FormulaCaps(figures, 0).lowest(95);
  }

  private static CapacityFigure figure(
      CapKind caps, double value, int persons, FigureStatus standing) {
    return new CapacityFigure(
        "set",
        "formula",
        standing,
        caps,
        value,
        java.util.OptionalInt.of(persons),
        java.util.OptionalDouble.empty(),
        "",
        FormulaNote.NONE);
  }

  @Test
  void a_motor_stronger_than_the_rule_gives_must_not_run_at_full_power() {
    Boat strong =
        BoxBoat.of(3, 1.2, 0.5)
            .place("thwart", 1.5, 0.2, 0.3, 1)
            .driven(new Propulsion.Outboard(4000))
            .boat();
    AppliedRules applied =
        new AppliedRules(BoatModel.of(strong, BoxBoat.TODAY), RuleSetFile.bundledRuleBook());
    // 38.75 square feet, flat: 3 hp.
    assertThat(applied.findings())
        .singleElement()
        .satisfies(
            f -> assertThat(FindingText.check(f)).isEqualTo("running this motor at full power"))
        .satisfies(f -> assertThat(f.role()).isEqualTo(Role.FORBIDS_AN_ACT))
        .satisfies(f -> assertThat(f.outcome()).isEqualTo(Outcome.FALLS_SHORT))
        .satisfies(f -> assertThat(f.limit()).isCloseTo(3 * 745.7, within(1e-9)))
        .extracting(FindingText::note)
        .isEqualTo("before the launch, fit a weaker motor or limit the power of this one");
  }

  @Test
  void a_motor_the_rule_gives_is_no_finding() {
    Boat weak =
        BoxBoat.of(3, 1.2, 0.5)
            .place("thwart", 1.5, 0.2, 0.3, 1)
            .driven(new Propulsion.Outboard(2000))
            .boat();
    assertThat(
            new AppliedRules(BoatModel.of(weak, BoxBoat.TODAY), RuleSetFile.bundledRuleBook())
                .findings())
        .isEmpty();
  }

  @Test
  void a_boat_outside_our_set_is_not_covered_and_gets_nothing() {
    Boat barge = BoxBoat.of(6.4, 2, 0.6).place("thwart", 3, 0.2, 0.5, 2).boat();
    Recommendation r = recommended(barge, RuleSetFile.bundledRuleBook());
    assertThat(r.withheld()).isTrue();
    assertThat(r.people()).isZero();
    assertThat(r.load()).isZero();
    assertThat(FindingText.refusals(r.reasons()).get(0))
        .isEqualTo(
            "not covered by our own limits: the boat is 6.4 m long and it is written for 2 m to"
                + " under 6.1 m; so nothing is recommended. Why so: a boat under 2 m is a toy or a"
                + " tender of another kind, 20 ft is where 33 CFR 183 subpart C ends, and over"
                + " 15 hp a boat of this size planes, which is not worked out here (judgement)");
  }

  @Test
  void a_set_that_tightens_is_named_behind_our_own() {
    RuleSet pond =
        new RuleSet(
            "Pond",
            "2026",
            "boats",
            Map.of("freeboard-at-rest", new Limit(0.3, "m", Basis.READ, "board")));
    BoatModel model = BoatModel.of(PlainHulls.pram(), PlainHulls.TODAY);
    assertThat(new AppliedRules(model, ALONE.and(List.of(pond))).ruleSet())
        .isEqualTo(OWN.cited() + "; made stricter by Pond, 2026");
    assertThat(new AppliedRules(model, RuleSetFile.bundledRuleBook()).ruleSet())
        .startsWith(OWN.cited() + "; beside them ")
        .contains("United States, 33 CFR 183, motor weights of 2018")
        .contains("; Victoria, people by length, as read");
  }

  /** A name without a working would only be found out on the day somebody uses it. */
  @ParameterizedTest
  @MethodSource("formulas")
  void every_formula_by_name_has_a_working(String name) {
    Formula formula = Formulas.named(name).orElseThrow();
    FormulaMethod working = LoadTestRules.all().getOrDefault(name, formula.working());
    RatedBoat boat = RuleBook.rated(box().model(), OWN, List.of());
    assertThat(working.of(boat, usual(formula))).allMatch(w -> !w.title().isBlank());
  }

  static List<String> formulas() {
    return Formulas.names();
  }

  private static Parameters usual(Formula formula) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    Map<String, List<TableStep>> steps = new LinkedHashMap<>();
    formula.parameters().forEach(p -> numbers.put(p.name(), p.defaultValue().orElse(p.least())));
    formula.parameters().forEach(p -> steps.put(p.name(), List.of(new TableStep(5, 2))));
    return new Parameters(numbers, steps);
  }

  @Test
  void a_trial_that_ended_for_want_of_places_says_so() {
    BoxBoat tanks = box().proven("aft", new Span(0, 0.5)).proven("fore", new Span(2.5, 3));
    assertThat(
            FormulaNoteWords.of(
                LoadTestRules.all()
                    .get(Formulas.SWAMPED_WEIGHT)
                    .of(
                        RuleBook.rated(tanks.model(), OWN, List.of()),
                        new Parameters(Map.of("each", 6.0, "least", 15.0), Map.of()))
                    .get(0)
                    .note(),
                UnitFormat.METRIC))
        .isEqualTo(
            "a weight of 6 kg under water for each, at least 15 kg; it floats and stays upright;"
                + " there is no place for more");
  }

  // A box of 3 by 0.6 m with 105 kg at 0.10 m, a person of 75 kg at 0.20 m: 0.18 m³, a draught of
  // 0.1 m, BM = 3 x 0.6³/12/0.18 = 0.3 m, KB 0.05 m, KG = 25.5/180 = 0.142 m, GM 0.208 m. On the
  // middle seat hips move 0.15 m: (GM + BM/2 t²) t = 75 x 0.15/180 = 0.0625 m at t = 0.284, which
  // is
  // 15.9 degrees and leaves the bottom under water. Within 10 + 21³/600 = 25.4 degrees (t = 0.475)
  // at most (0.208 + 0.15 x 0.475²) x 0.475 = 0.115 m are righted, and 75 x 0.29/180 = 0.121 m
  // asked
  // for by whoever sits 0.29 m out. Both: 0.255 m³, GM 0.124 m, 0.070 m righted, 0.129 m asked for.
  @Test
  void one_poor_seat_does_not_hide_what_the_best_seating_carries() {
    Place side =
        new Place("side", new Span(1.5, 1.5), new Span(0.29, 0.29), 0.2, 1, Posture.SITTING);
    FormulaResult worked =
        hardToOneSide(
            BoxBoat.of(3, 0.6, 0.6)
                .hull(105, 0.1)
                .weightlessShell()
                .place("middle", 1.5, 0.2, 0, 1)
                .place(side));
    assertThat(worked.value()).isZero();
    assertThat(FormulaNoteWords.of(worked.note(), UnitFormat.METRIC))
        .isEqualTo(
            "75 kg each, in every seating; at most 25.4 degrees and no water aboard;"
                + " 1 in the best seating of each number");
  }

  @Test
  void where_every_seating_carries_as_many_no_best_one_is_told() {
    FormulaResult worked = hardToOneSide(box());
    assertThat(FormulaNoteWords.of(worked.note(), UnitFormat.METRIC))
        .startsWith("75 kg each, in every seating; at most 25.4 degrees and no water aboard")
        .doesNotContain("best");
  }

  private static FormulaResult hardToOneSide(BoxBoat boat) {
    return LoadTestRules.all()
        .get(Formulas.OFFSET_LOAD)
        .of(
            RuleBook.rated(boat.model(), OWN, List.of()),
            new Parameters(Map.of("each", 75.0, "heel-base", 10.0), Map.of()))
        .get(0);
  }

  // The whole run: the sets' figures are in the report, the beside ones with the crew aboard.
  @Test
  void the_report_holds_every_set_whether_it_applies_or_not() {
    Boat boat = new PlainDriven(PlainHulls.pram(), 5000).boat();
    Report report = Inspection.withoutAdvice(boat, RuleSetFile.bundledRuleBook(), PlainHulls.TODAY);
    assertThat(report.capacityFigures())
        .extracting(CapacityFigure::ruleSet)
        .contains(
            "United States, 33 CFR 183",
            "In the style of ISO 12217-3",
            "United Kingdom, inland small passenger boats",
            "Victoria, people by length",
            "What a person counts elsewhere");
    assertThat(report.findings())
        .extracting(FindingText::check)
        .contains("running this motor at full power");
    Report alone = Inspection.of(boat, OWN, PlainHulls.TODAY);
    assertThat(alone.capacityFigures()).isEmpty();
    assertThat(alone.ruleSet()).isEqualTo(OWN.cited());
  }

  /** The same boat with a motor of so many watts. */
  private record PlainDriven(Boat plain, double watts) {
    Boat boat() {
      return new Boat(
          plain.name(),
          plain.water(),
          plain.hull(),
          plain.openings(),
          plain.chambers(),
          plain.places(),
          plain.kit(),
          plain.aboard(),
          new Propulsion.Outboard(watts),
          List.of(),
          Optional.empty(),
          Waters.NOT_STATED,
          plain.measuredBy(),
          plain.assumptions());
    }
  }

  static Stream<Reference> heels() {
    return Reference.of("offset-heel");
  }

  @ParameterizedTest
  @MethodSource("heels")
  void the_offset_heel_is_that_of_the_worksheet(Reference r) {
    assertThat(Math.toDegrees(LoadTestRules.heel(10, r.in("L"))))
        .isCloseTo(r.wanted("deg"), within(r.near("deg")));
  }

  @Test
  void seats_further_out_take_no_more_people_by_the_offset_load() {
    int before = Integer.MAX_VALUE;
    List<Integer> counts = new ArrayList<>();
    for (double out : List.of(0.15, 0.35, 0.58)) {
      int people = offset(out);
      counts.add(people);
      assertThat(people).isLessThanOrEqualTo(before);
      before = people;
    }
    assertThat(counts.get(0)).isGreaterThan(counts.get(2));
  }

  private static int offset(double halfWidth) {
    BoatModel model =
        BoxBoat.of(3, 1.2, 0.5).hull(60, 0.15).place("thwart", 1.5, 0.2, halfWidth, 6).model();
    return LoadTestRules.all()
        .get("everyone hard to one side")
        .of(
            RuleBook.rated(model, OWN, List.of()),
            new Parameters(Map.of("each", 75.0, "heel-base", 10.0), Map.of()))
        .get(0)
        .persons()
        .getAsInt();
  }

  // Lift of both ends 2 x 0.4 x 1.2 x 0.5 m = 480 kg less 60 of hull carries any weight of 6 kg a
  // person; a shell without chambers, weighing nothing in water, sinks.
  @Test
  void the_weight_over_the_side_is_held_by_end_tanks_and_by_nothing_else() {
    BoxBoat tanks = box().proven("aft", new Span(0, 0.5)).proven("fore", new Span(2.5, 3));
    assertThat(swamped(tanks)).isEqualTo(4);
    assertThat(swamped(box())).isZero();
  }

  private static BoxBoat box() {
    return BoxBoat.of(3, 1.2, 0.5)
        .hull(60, 0.1)
        .weightlessShell()
        .place("thwart", 1.5, 0.2, 0.3, 4);
  }

  private static int swamped(BoxBoat boat) {
    return LoadTestRules.all()
        .get("weight over the side, swamped")
        .of(
            RuleBook.rated(boat.model(), OWN, List.of()),
            new Parameters(Map.of("each", 6.0, "least", 15.0), Map.of()))
        .get(0)
        .persons()
        .getAsInt();
  }
}
