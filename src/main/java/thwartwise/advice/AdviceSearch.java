package thwartwise.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.advice.AdviceOrder.AdviceCandidate;
import thwartwise.advice.AdvicePiece.AdviceReading;
import thwartwise.advice.Progress.Stage;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.crew.Capacity;
import thwartwise.crew.Recommendation;
import thwartwise.hull.UnusableBoat;
import thwartwise.remedy.Change;
import thwartwise.remedy.Changes;
import thwartwise.remedy.Deed;

/**
 * The search for real changes to the boat, ranked by their gain. A quick look excludes changes that
 * bring no crew nearer and correct nothing; the rest are inspected in full, by the same search as
 * the boat itself.
 */
public final class AdviceSearch {
  /** The number of changes to the boat that get a search of their own. */
  private static final int MOST_SEARCHED = 8;

  /** The number of them that are reported; more is not read. */
  private static final int MOST_TOLD = 4;

  /** The number of other ways to load it that are reported. */
  private static final int MOST_TODAY = 1;

  /** A smaller gain of the quick look is noise. */
  private static final double NOISE = 1e-4;

  /** Pairs are made of no more than these, the best by the quick look. */
  private static final int MOST_PAIRED = 5;

  /** The number of pairs that get a search of their own. */
  private static final int MOST_PAIRS_SEARCHED = 3;

  private final InspectedBoat today;
  private final AdviceProbe probe;
  private final boolean heldBack;
  private final boolean nobodyMayGo;
  private final Progress progress;

  private AdviceSearch(InspectedBoat today, Progress progress) {
    this.today = today;
    this.progress = progress;
    this.probe = AdviceProbe.of(today, today.recommendation().adult());
    this.heldBack = isHeldBack(today);
    this.nobodyMayGo = !(today.recommendation().crew() > 0);
  }

  private static boolean isHeldBack(InspectedBoat inspection) {
    return inspection.limitingAsLoaded().stream().anyMatch(Finding::holdsBack);
  }

  /**
   * A change that was considered.
   *
   * @param after the boat after it
   * @param nearer how far the quick look saw it help
   * @param mayPutRight whether the quick look saw a crew let go, or the loading of today
   */
  private record Tried(Change change, InspectedBoat after, double nearer, boolean mayPutRight) {
    static final Comparator<Tried> BEST_FIRST =
        Comparator.comparing(Tried::mayPutRight)
            .thenComparingDouble(Tried::nearer)
            .reversed()
            .thenComparingInt(Tried::ease);

    boolean helps() {
      return nearer > NOISE || mayPutRight;
    }

    int ease() {
      return AdviceOrder.ease(change.deed(), change.effort());
    }
  }

  /**
   * A boat that the program does not cover gets no advice, because no change would bring it inside.
   * Neither does one with an implausible measurement, because its advice would be for another boat.
   */
  public static Advice of(InspectedBoat today, Progress progress) {
    return today.refusals().isEmpty() ? new AdviceSearch(today, progress).advice() : Advice.NONE;
  }

  private Advice advice() {
    List<Tried> changes = byTopic(tried(Changes.toTheBoat(today.model(), today.date())));
    List<Tried> loadings = heldBack && !nobodyMayGo ? otherwiseToday() : List.of();
    List<AdviceCandidate> listed =
        new ArrayList<>(best(changes.stream().filter(Tried::helps).limit(MOST_SEARCHED).toList()));
    listed.addAll(best(loadings.stream().filter(Tried::helps).limit(MOST_TODAY).toList()));
    if ((heldBack || nobodyMayGo) && listed.stream().noneMatch(AdviceCandidate::corrects)) {
      listed.addAll(pairs(changes, loadings));
    }
    return new Advice(
        sorted(costing(worthTelling(listed))), Changes.prohibitions(today.model().boat()));
  }

  /** Where nobody may go, a change that lets nobody go is reported only if there is none better. */
  private List<AdviceCandidate> worthTelling(List<AdviceCandidate> listed) {
    List<AdviceCandidate> right = listed.stream().filter(AdviceCandidate::corrects).toList();
    return nobodyMayGo && !right.isEmpty() ? right : listed;
  }

  private List<AdvicePiece> sorted(List<AdviceCandidate> listed) {
    List<AdvicePiece> pieces = new ArrayList<>();
    listed.stream()
        .sorted(AdviceOrder.FIRST_TOLD_FIRST)
        .map(AdviceCandidate::piece)
        .forEach(pieces::add);
    if (!nobodyMayGo) {
      AdviceAnchoring.of(today.findings()).ifPresent(pieces::add);
    }
    return pieces;
  }

  /** The costs of a piece are searched only where it is reported. */
  private List<AdviceCandidate> costing(List<AdviceCandidate> listed) {
    Runnable done = progress.counting(Stage.COSTS, listed.size());
    return listed.parallelStream().map(c -> after(costing(c), done)).toList();
  }

  /** The best changes; one that cannot be among them is not inspected to the end. */
  private List<AdviceCandidate> best(List<Tried> tried) {
    List<AdviceCandidate> best = new ArrayList<>();
    Runnable done = progress.counting(Stage.GAINS, tried.size());
    // These are needed whatever the others are: computed in parallel, then looked up.
    List<Tried> first = tried.subList(0, Math.min(tried.size(), MOST_TOLD));
    first.parallelStream().forEach(t -> after(t.after().capacity(), done));
    for (int i = 0; i < tried.size(); i++) {
      Tried next = tried.get(i);
      if (best.size() < MOST_TOLD || mayComeBefore(next, best.get(MOST_TOLD - 1))) {
        candidate(next).ifPresent(best::add);
        best.sort(AdviceOrder.FIRST_TOLD_FIRST);
        best.subList(Math.min(best.size(), MOST_TOLD), best.size()).clear();
      }
      if (i >= first.size()) {
        done.run();
      }
    }
    return best;
  }

  /** False proves that it does not. */
  private static boolean mayComeBefore(Tried next, AdviceCandidate last) {
    if (next.mayPutRight() || last.capacity().crew() == 0) {
      return true;
    }
    if (last.corrects()) {
      return false;
    }
    boolean cheaper =
        last.piece().people() > 0
            && next.ease() < AdviceOrder.ease(last.piece().deed(), last.piece().effort());
    return next.after().mayReach(cheaper ? last.capacity().withAnyCrew() : last.capacity());
  }

  /** Two changes together that correct what neither does alone. */
  private List<AdviceCandidate> pairs(List<Tried> changes, List<Tried> loadings) {
    List<Tried> few =
        Stream.concat(changes.stream().limit(MOST_PAIRED), loadings.stream().limit(MOST_TODAY))
            .toList();
    List<Tried> pairs = new ArrayList<>();
    for (int i = 0; i < few.size(); i++) {
      for (int j = i + 1; j < few.size(); j++) {
        pairs.addAll(pair(few.get(i), few.get(j)));
      }
    }
    return pairs.stream()
        .sorted(Comparator.comparingInt(Tried::ease))
        .limit(MOST_PAIRS_SEARCHED)
        .flatMap(p -> candidate(p).stream())
        .filter(AdviceCandidate::corrects)
        .toList();
  }

  /** The best combinations that the quick look sees correct it. */
  private List<Tried> pair(Tried one, Tried other) {
    return tried(Changes.then(one.change(), one.after().model(), other.change(), today.date()))
        .stream()
        .filter(Tried::mayPutRight)
        .sorted(Tried.BEST_FIRST)
        .limit(1)
        .toList();
  }

  private AdviceCandidate costing(AdviceCandidate bought) {
    InspectedBoat after = bought.after();
    AdvicePiece piece =
        bought
            .piece()
            .costing(
                AdviceComparison.of(today.comparable(today), after.comparable(today)).worse(),
                bought.piece().people() > 0 ? after.forbiddenActs(today) : List.of());
    return new AdviceCandidate(piece, after, bought.corrects());
  }

  /** The best change about each topic, the best topic first. */
  private static List<Tried> byTopic(List<Tried> tried) {
    Map<String, Tried> byTopic = new LinkedHashMap<>();
    tried.forEach(t -> byTopic.merge(t.change().topic(), t, AdviceSearch::better));
    return byTopic.values().stream().sorted(Tried.BEST_FIRST).toList();
  }

  private static <T> T after(T result, Runnable done) {
    done.run();
    return result;
  }

  private static Tried better(Tried a, Tried b) {
    return Tried.BEST_FIRST.compare(b, a) < 0 ? b : a;
  }

  private List<Tried> otherwiseToday() {
    return tried(Changes.toToday(today.model().boat())).stream().sorted(Tried.BEST_FIRST).toList();
  }

  private List<Tried> tried(List<Change> changes) {
    Runnable done = progress.counting(Stage.CHANGES, changes.size());
    return changes.parallelStream().flatMap(c -> after(tried(c), done).stream()).toList();
  }

  /** Empty when the change cannot be made to this boat. */
  private Optional<Tried> tried(Change change) {
    try {
      InspectedBoat after = today.after(change);
      AdviceProbe.Gain gain = change.onlyToday() ? AdviceProbe.Gain.NONE : probe.gain(after);
      boolean mayPutRight = nobodyMayGo ? gain.anyFits() : heldBack && !isHeldBack(after);
      return Optional.of(new Tried(change, after, gain.nearer(), mayPutRight));
    } catch (UnusableBoat notHere) {
      return Optional.empty();
    }
  }

  private Optional<AdviceCandidate> candidate(Tried tried) {
    Capacity now = tried.after().capacity();
    Recommendation then = today.recommendation();
    int people = now.people() - then.people();
    double crew = now.crew() - then.crew();
    boolean nobody = !(now.crew() > 0);
    if (people < 0 || people == 0 && crew < 0 || nobody && leavesAshore(tried.change().deed())) {
      return Optional.empty();
    }
    Change change = tried.change();
    Optional<AdviceReading> moved =
        change.onlyToday() ? Optional.empty() : probe.moved(tried.after());
    boolean loadingRight = heldBack && !nobody && !isHeldBack(tried.after());
    AdvicePiece piece =
        new AdvicePiece(
            change.deed(),
            change.effort(),
            people,
            crew,
            now.load() - then.load(),
            moved.filter(AdviceReading::isBetter),
            loadingRight ? putRight(tried.after()) : List.of(),
            List.of(),
            List.of());
    boolean right = nobodyMayGo ? !nobody : loadingRight;
    return Optional.of(new AdviceCandidate(piece, tried.after(), right))
        .filter(c -> piece.buys() || piece.moved().isPresent());
  }

  private List<CheckQuestion> putRight(InspectedBoat after) {
    return AdviceComparison.of(today.limitingAsLoaded(), after.limitingAsLoaded()).corrected();
  }

  /** Nobody leaves anything ashore while nobody may go. */
  private static boolean leavesAshore(Deed deed) {
    return deed instanceof Deed.LeaveKit || deed instanceof Deed.StayAshore;
  }
}
