package thwartwise.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Place;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/**
 * The search for seats of named people. A crew may go only when it and every smaller crew left of
 * it, down to the empty boat, find a seating that meets every check that limits the crew, as
 * measured and after the allowance, for every mixture of their possible masses. The answer says
 * where those who stay aboard would have to move when somebody gets out.
 *
 * <p>When not all may go, the largest crew goes; of several as large the one whose people were
 * named first. The seats are those with the greatest least margin, as a share of the limit; of
 * several alike the one whose weight lies nearest the middle of the boat, then the first in the
 * order of people and places.
 */
public final class CrewSeating {
  static final String OWN_LIMIT = "the load limit";

  private final AssignmentSearch search;
  private final CrewAssessment assessment;
  private final List<Place> places;
  private final FormulaCaps caps;
  private final Map<List<NamedPerson.Range>, Boolean> known = new ConcurrentHashMap<>();

  private CrewSeating(CrewAssessment assessment, FormulaCaps caps) {
    this.assessment = assessment;
    this.caps = caps;
    this.search = new AssignmentSearch(assessment);
    this.places = assessment.model().boat().places();
  }

  /** The seats under our own set alone, whatever the boat's load limit is. */
  public static CrewAnswer of(BoatModel model, RuleSet rules, List<NamedPerson> members) {
    return of(
        new AppliedRules(model, RuleBook.of(rules)), members, limits -> Double.POSITIVE_INFINITY);
  }

  /**
   * The answer under our own limits and every rule set that applies and takes part, and never above
   * the load limit of the boat, because a reader of that number must be able to rely on it.
   */
  public static CrewAnswer of(BoatModel model, RuleBook book, List<NamedPerson> members) {
    AppliedRules applied = new AppliedRules(model, book);
    return of(applied, members, limits -> applied.capacity(limits).load());
  }

  /**
   * The same, also judged by the share of boats measured like this in which the seated people would
   * meet every limit. A seating that is not sure enough gets a larger allowance, and they are
   * seated again.
   *
   * @param assessment with the allowances of the seatings of unnamed people
   * @param load the load limit that is reported for the boat, kg
   * @param unsure selects the loaded boats that are not sure enough
   */
  public static CrewAnswer of(
      AppliedRules applied,
      CrewAssessment assessment,
      List<NamedPerson> members,
      DoubleSupplier load,
      Function<List<LoadedBoat>, List<LoadedBoat>> unsure) {
    return of(applied, assessment, members, limits -> load.getAsDouble(), unsure);
  }

  private static CrewAnswer of(
      AppliedRules applied, List<NamedPerson> members, ToDoubleFunction<Limits> load) {
    return of(
        applied,
        new CrewAssessment(applied.model(), applied.inForce()),
        members,
        load,
        loaded -> List.of());
  }

  private static CrewAnswer of(
      AppliedRules applied,
      CrewAssessment assessment,
      List<NamedPerson> members,
      ToDoubleFunction<Limits> load,
      Function<List<LoadedBoat>, List<LoadedBoat>> unsure) {
    BoatModel model = assessment.model();
    if (members.stream().map(NamedPerson::name).distinct().count() < members.size()) {
      throw new IllegalArgumentException("Two people of one name: " + members);
    }
    List<Refusal> outside = applied.loadRefusals();
    if (!outside.isEmpty()) {
      return CrewAnswer.refused(members, outside);
    }
    Optional<LimitingFactor> tooMany = SeatingCount.tooMany(model, members.size());
    if (tooMany.isPresent()) {
      return CrewAnswer.refused(members, List.of(new Refusal.ByLimit(tooMany.get())));
    }
    Limits limits = new Limits(assessment, applied.inForce(), applied.caps());
    List<Refusal> nobody = applied.crewRefusals(limits);
    if (!nobody.isEmpty()) {
      return CrewAnswer.refused(members, nobody);
    }
    FormulaCaps caps = new FormulaCaps(applied.caps(), model.boat().kitMass());
    double own = load.applyAsDouble(limits);
    FormulaCaps all = own < Double.POSITIVE_INFINITY ? caps.and(OWN_LIMIT, own) : caps;
    return new CrewSeating(assessment, all).sure(List.copyOf(members), unsure);
  }

  private CrewAnswer sure(
      List<NamedPerson> members, Function<List<LoadedBoat>, List<LoadedBoat>> unsure) {
    CrewSeating seating = this;
    for (int round = 1; true; round++) {
      CrewAnswer answer = seating.answer(members);
      List<LoadedBoat> refused = unsure.apply(seating.loadedBoats(answer));
      if (refused.isEmpty()) {
        return answer;
      }
      WidenedSeatings wider = new WidenedSeatings(seating.assessment);
      boolean all = round > WidenedSeatings.BY_SEATING;
      seating = new CrewSeating(wider.refusing(refused, all), caps);
    }
  }

  /**
   * The boat with those who go, and with those who remain when one of them gets out, for every
   * mixture of their possible masses.
   */
  private List<LoadedBoat> loadedBoats(CrewAnswer answer) {
    List<NamedPerson> going = answer.seats().stream().map(CrewAnswer.Seat::member).toList();
    if (going.isEmpty()) {
      return List.of();
    }
    Assignment seats = assignment(answer.seats());
    List<LoadedBoat> all = new ArrayList<>(search.loadedBoats(going, seats));
    for (int i = 0; i < going.size() && going.size() > 1; i++) {
      NamedPerson leaving = going.get(i);
      Assignment left =
          answer.moves().stream()
              .filter(move -> move.leaving().equals(leaving))
              .findFirst()
              .map(move -> assignment(move.seats()))
              .orElse(seats.without(i));
      all.addAll(search.loadedBoats(without(going, i), left));
    }
    return all;
  }

  private Assignment assignment(List<CrewAnswer.Seat> seats) {
    List<String> names = places.stream().map(Place::name).toList();
    return new Assignment(seats.stream().map(seat -> names.indexOf(seat.place())).toList());
  }

  private CrewAnswer answer(List<NamedPerson> members) {
    List<NamedPerson> crew = largest(members);
    Optional<AssignmentSearch.Rated> best = crew.isEmpty() ? Optional.empty() : search.best(crew);
    List<NamedPerson> going = best.isPresent() ? crew : List.of();
    Assignment seats =
        best.map(AssignmentSearch.Rated::assignment).orElse(new Assignment(List.of()));
    List<NamedPerson> ashore = members.stream().filter(m -> !going.contains(m)).toList();
    List<Refusal> stops = ashore.isEmpty() ? List.of() : stops(members);
    return new CrewAnswer(
        seats(going, seats),
        ashore,
        stops,
        assessment.margins(going.isEmpty() ? List.of() : search.loadedBoats(going, seats)),
        notAlone(going),
        moves(going, seats));
  }

  /** The first of the largest crews that may go. */
  private List<NamedPerson> largest(List<NamedPerson> members) {
    for (int size = Math.min(members.size(), room()); size > 0; size--) {
      Optional<List<NamedPerson>> crew =
          choices(members, size).stream().filter(this::mayGo).findFirst();
      if (crew.isPresent()) {
        return crew.get();
      }
    }
    return List.of();
  }

  private int room() {
    return places.stream().mapToInt(Place::people).sum();
  }

  /** Every choice of this number of people, those named first coming first. */
  private static List<List<NamedPerson>> choices(List<NamedPerson> members, int size) {
    List<List<NamedPerson>> all = new ArrayList<>();
    choose(members, size, 0, new ArrayList<>(), all);
    return all;
  }

  private static void choose(
      List<NamedPerson> members,
      int size,
      int from,
      List<NamedPerson> sofar,
      List<List<NamedPerson>> all) {
    if (sofar.size() == size) {
      all.add(List.copyOf(sofar));
      return;
    }
    for (int i = from; i < members.size(); i++) {
      sofar.add(members.get(i));
      choose(members, size, i + 1, sofar, all);
      sofar.remove(sofar.size() - 1);
    }
  }

  // What needs no seating is tried first, then the smaller crews, which have fewer seatings.
  private boolean mayGo(List<NamedPerson> crew) {
    Boolean before = known.get(NamedPerson.ranges(crew));
    if (before != null) {
      return before;
    }
    boolean may =
        crew.isEmpty()
            ? assessment.meetsAll(Seating.of(0, places).get(0), 0)
            : isWithinRules(crew)
                && search.mayBeLifted(crew)
                && IntStream.range(0, crew.size()).allMatch(i -> mayGo(without(crew, i)))
                && search.any(crew).isPresent();
    known.put(NamedPerson.ranges(crew), may);
    return may;
  }

  /** Whether the published formulas that apply allow them. */
  private boolean isWithinRules(List<NamedPerson> crew) {
    return crew.size() <= caps.heads() && mass(crew) <= caps.room();
  }

  private static double mass(List<NamedPerson> crew) {
    return crew.stream().mapToDouble(NamedPerson::heaviest).sum();
  }

  private static List<NamedPerson> without(List<NamedPerson> crew, int member) {
    List<NamedPerson> left = new ArrayList<>(crew);
    left.remove(member);
    return List.copyOf(left);
  }

  /** Why the whole crew stays: its own failures, or those of the smallest crew left that fails. */
  private List<Refusal> stops(List<NamedPerson> members) {
    if (members.size() > room()) {
      return List.of(new Refusal.MoreThanPlaces(room()));
    }
    if (!isWithinRules(members)) {
      return overTheRules(members).stream().toList();
    }
    if (search.any(members).isEmpty()) {
      return List.copyOf(breaks(members));
    }
    for (int size = 0; size < members.size(); size++) {
      for (List<NamedPerson> crew : choices(members, size)) {
        if (!known.getOrDefault(NamedPerson.ranges(crew), true)) {
          List<String> names = crew.stream().map(NamedPerson::name).toList();
          return breaks(crew).stream()
              .<Refusal>map(check -> new Refusal.ThoseLeft(names, check))
              .toList();
        }
      }
    }
    return List.of();
  }

  private Optional<Refusal> overTheRules(List<NamedPerson> members) {
    double mass = mass(members);
    return caps.lowest(mass / members.size())
        .map(
            rule ->
                members.size() > caps.heads()
                    ? new Refusal.MoreThanRule(rule, caps.heads(), members.size())
                    : new Refusal.HeavierThanRule(rule, caps.room(), mass));
  }

  private List<Refusal.ByCheck> breaks(List<NamedPerson> crew) {
    return search.breaks(crew).map(FailedChecks::breaches).orElse(List.of());
  }

  private List<CrewAnswer.Seat> seats(List<NamedPerson> members, Assignment assignment) {
    return IntStream.range(0, members.size())
        .mapToObj(
            i -> new CrewAnswer.Seat(members.get(i), places.get(assignment.places().get(i)).name()))
        .toList();
  }

  private List<CrewAnswer.NotAlone> notAlone(List<NamedPerson> going) {
    List<CrewAnswer.NotAlone> not = new ArrayList<>();
    for (NamedPerson member : going) {
      for (int p = 0; p < places.size(); p++) {
        if (!search.meets(List.of(member), new Assignment(List.of(p)))) {
          not.add(new CrewAnswer.NotAlone(member, places.get(p).name()));
        }
      }
    }
    return not;
  }

  private List<CrewAnswer.Move> moves(List<NamedPerson> going, Assignment seats) {
    List<CrewAnswer.Move> moves = new ArrayList<>();
    for (int i = 0; i < going.size() && going.size() > 1; i++) {
      List<NamedPerson> left = without(going, i);
      if (!search.meets(left, seats.without(i))) {
        Assignment then = search.best(left).orElseThrow().assignment();
        moves.add(new CrewAnswer.Move(going.get(i), seats(left, then)));
      }
    }
    return moves;
  }
}
