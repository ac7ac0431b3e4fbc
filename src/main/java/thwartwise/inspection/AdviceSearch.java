package thwartwise.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thwartwise.boat.UnusableBoat;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.crew.Capacity;
import thwartwise.crew.Recommendation;
import thwartwise.inspection.Progress.Stage;
import thwartwise.remedy.Change;
import thwartwise.remedy.Changes;
import thwartwise.remedy.Deed;

/**
 * Tries real changes on the boat and ranks them by what they buy. Changes that bring no crew nearer
 * and put nothing right are left out by a quick look; the rest are inspected as a whole, by the
 * same search as the boat itself.
 */
final class AdviceSearch {
  /** As many changes to the boat as get a search of their own. */
  private static final int MOST_SEARCHED = 8;

  /** As many of them as are told; more is not read. */
  private static final int MOST_TOLD = 4;

  /** As many ways to load it otherwise as are told. */
  private static final int MOST_TODAY = 1;

  /** A lesser gain of the quick look is noise. */
  private static final double NOISE = 1e-4;

  private static final Comparator<AdvicePiece> BEST_FIRST =
      Comparator.comparing(AdvicePiece::worsensALimit)
          .thenComparing(Comparator.comparingInt(AdvicePiece::people).reversed())
          .thenComparing(Comparator.comparingDouble(AdvicePiece::crew).reversed())
          .thenComparing(Comparator.comparingDouble(AdvicePiece::load).reversed())
          .thenComparing(
              Comparator.comparingInt((AdvicePiece p) -> p.putsRight().size()).reversed())
          .thenComparing(AdvicePiece::effort)
          .thenComparing(AdvicePiece::deed, Deed.IN_ORDER);

  private final Inspection today;
  private final AdviceProbe probe;
  private final boolean heldBack;
  private final Progress progress;

  private AdviceSearch(Inspection today, Progress progress) {
    this.today = today;
    this.progress = progress;
    this.probe = AdviceProbe.of(today, today.recommendation().adult());
    this.heldBack = today.limitingAsLoaded().stream().anyMatch(Finding::holdsBack);
  }

  /** A change that was looked at: the boat after it, and how far the quick look saw it help. */
  private record Tried(Change change, Inspection after, double gain, int putRight) {
    static final Comparator<Tried> BEST_FIRST =
        Comparator.comparingDouble(Tried::gain)
            .thenComparingInt(Tried::putRight)
            .reversed()
            .thenComparing(t -> t.change().effort());

    boolean helps() {
      return gain > NOISE || putRight > 0;
    }
  }

  /**
   * A boat outside what is worked out here gets no advice: none would bring it inside. Neither does
   * one that was hardly measured right: what is found for it is found for another boat.
   */
  static Advice of(Inspection today, Progress progress) {
    return today.nothingBecause().isEmpty()
        ? new AdviceSearch(today, progress).advice()
        : Advice.NONE;
  }

  private Advice advice() {
    List<AdvicePiece> pieces = new ArrayList<>();
    pieces.addAll(pieces(worthASearch()));
    if (heldBack) {
      pieces.addAll(pieces(otherwiseToday()));
    }
    AdviceAnchoring.of(today.findings()).ifPresent(pieces::add);
    pieces.sort(BEST_FIRST);
    return new Advice(pieces, Changes.never(today.craft().boat()));
  }

  /** What a piece costs is looked for only where it is told. */
  private List<AdvicePiece> pieces(List<Tried> tried) {
    List<Bought> best = best(tried);
    Runnable done = progress.counting(Stage.COSTS, best.size());
    return best.parallelStream().map(b -> after(costing(b), done)).toList();
  }

  /** The best of them; what cannot be among them is not inspected to the end. */
  private List<Bought> best(List<Tried> tried) {
    List<Bought> best = new ArrayList<>();
    Runnable done = progress.counting(Stage.GAINS, tried.size());
    // These are wanted whatever the others come to: worked out side by side, then looked up.
    tried.subList(0, Math.min(tried.size(), MOST_TOLD)).parallelStream()
        .forEach(t -> t.after().amounts());
    for (Tried next : tried) {
      if (best.size() < MOST_TOLD || next.after().mayReach(best.get(MOST_TOLD - 1).amounts())) {
        bought(next).ifPresent(best::add);
        best.sort(Comparator.comparing(Bought::piece, BEST_FIRST));
        best.subList(Math.min(best.size(), MOST_TOLD), best.size()).clear();
      }
      done.run();
    }
    return best;
  }

  private record Bought(AdvicePiece piece, Inspection after) {
    Capacity amounts() {
      return after.amounts();
    }
  }

  private AdvicePiece costing(Bought bought) {
    Inspection after = bought.after();
    return bought
        .piece()
        .costing(
            AdviceComparison.of(today.comparable(today), after.comparable(today)).worse(),
            bought.piece().people() > 0 ? after.nobodyDoes(today) : List.of());
  }

  private List<Tried> worthASearch() {
    Map<String, Tried> byTopic = new LinkedHashMap<>();
    tried(Changes.toTheBoat(today.craft(), today.date()))
        .forEach(t -> byTopic.merge(t.change().topic(), t, AdviceSearch::better));
    return byTopic.values().stream().sorted(Tried.BEST_FIRST).limit(MOST_SEARCHED).toList();
  }

  private static <T> T after(T result, Runnable done) {
    done.run();
    return result;
  }

  private static Tried better(Tried a, Tried b) {
    return Tried.BEST_FIRST.compare(b, a) < 0 ? b : a;
  }

  private List<Tried> otherwiseToday() {
    return tried(Changes.toToday(today.craft().boat())).stream()
        .sorted(Tried.BEST_FIRST)
        .limit(MOST_TODAY)
        .toList();
  }

  private List<Tried> tried(List<Change> changes) {
    Runnable done = progress.counting(Stage.CHANGES, changes.size());
    return changes.parallelStream()
        .flatMap(c -> after(tried(c), done).stream())
        .filter(Tried::helps)
        .toList();
  }

  /** Empty when the change cannot be made to this boat. */
  private Optional<Tried> tried(Change change) {
    try {
      Inspection after = today.after(change);
      return Optional.of(
          new Tried(
              change,
              after,
              change.onlyToday() ? 0 : probe.gain(after),
              heldBack ? putRight(after).size() : 0));
    } catch (UnusableBoat notHere) {
      return Optional.empty();
    }
  }

  private List<CheckQuestion> putRight(Inspection after) {
    return AdviceComparison.of(today.limitingAsLoaded(), after.limitingAsLoaded()).putRight();
  }

  private Optional<Bought> bought(Tried tried) {
    Capacity now = tried.after().amounts();
    Recommendation then = today.recommendation();
    int people = now.people() - then.people();
    double crew = now.crew() - then.crew();
    if (people < 0 || people == 0 && crew < 0) {
      return Optional.empty();
    }
    Optional<AdviceReading> moved =
        tried.change().onlyToday() ? Optional.empty() : probe.moved(tried.after());
    Change change = tried.change();
    AdvicePiece piece =
        new AdvicePiece(
            change.deed(),
            change.effort(),
            people,
            crew,
            now.load() - then.load(),
            moved.filter(AdviceReading::isBetter),
            putRight(tried.after()),
            List.of(),
            List.of());
    return Optional.of(new Bought(piece, tried.after()))
        .filter(b -> piece.buys() || piece.moved().isPresent());
  }
}
