package thwartwise.spread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.checks.CheckQuestion;
import thwartwise.loadcase.Allowance;

/**
 * How sure the answer for a boat is: in how many of a hundred boats measured like this it holds.
 *
 * @param adult what an adult counts, kg
 * @param searched number of people that the search under the allowance found
 * @param searchedEach mass of each of those, kg
 * @param recommended no more than those, and sure enough: adults of the design mass, or one lighter
 *     person; zero for nobody
 * @param each mass of each of them, kg; for nobody, what an adult counts
 * @param chances by number of people of that mass, from one to one more than recommended at least
 * @param figures that limit the recommended crew, the least sure first
 * @param acts what that crew must not do, and may: the least sure first
 * @param asLoaded figures of the boat as its file loads it, the least sure first
 * @param again what is worth measuring again, the most useful first
 * @param inputs number of measurements that were moved
 * @param unsaid the spread of a measurement whose method nobody stated
 */
public record BoatSpread(
    double adult,
    int searched,
    double searchedEach,
    int recommended,
    double each,
    List<CrewChance> chances,
    List<FigureSpread> figures,
    List<FigureSpread> acts,
    List<FigureSpread> asLoaded,
    List<Remeasurement> again,
    int inputs,
    Allowance unsaid) {

  /** The share of boats in which a finding must be met to count as met. */
  public static final double ENOUGH = 0.95;

  public BoatSpread {
    chances = List.copyOf(chances);
    figures = List.copyOf(figures);
    acts = List.copyOf(acts);
    asLoaded = List.copyOf(asLoaded);
    again = List.copyOf(again);
  }

  /** The share for a number of people: one for nobody, zero for a crew that was not considered. */
  public double share(int people) {
    return chances.stream()
        .filter(c -> c.people() == people)
        .mapToDouble(CrewChance::share)
        .findFirst()
        .orElse(people == 0 ? 1 : 0);
  }

  /** Whether the recommended crew meets every limit in enough boats. */
  public boolean isSure() {
    return share(recommended) >= ENOUGH;
  }

  /** Whether the recommended people are adults of the design mass. */
  public boolean isAdults() {
    return each >= adult;
  }

  /** Whether the search alone would have allowed more. */
  public boolean isLowered() {
    return searched > recommended || searchedEach > each && searched == recommended;
  }

  /** A figure of the recommended crew, or of the boat as loaded. */
  public Optional<FigureSpread> figure(CheckQuestion question, boolean loaded) {
    return (loaded ? asLoaded.stream() : Stream.concat(figures.stream(), acts.stream()))
        .filter(f -> f.question().equals(question))
        .findFirst();
  }

  /** A copy with figures that decide nothing. */
  BoatSpread with(List<FigureSpread> ofActs, List<FigureSpread> more) {
    List<FigureSpread> loaded = Stream.concat(asLoaded.stream(), more.stream()).toList();
    return new BoatSpread(
        adult,
        searched,
        searchedEach,
        recommended,
        each,
        chances,
        figures,
        ofActs,
        loaded,
        again,
        inputs,
        unsaid);
  }

  /** The answer of the search alone, where this answer is of a narrower search. */
  public BoatSpread loweredFrom(BoatSpread first) {
    List<CrewChance> all = new ArrayList<>(chances);
    first.chances.stream().filter(c -> c.people() > mostLookedAt()).forEach(all::add);
    return new BoatSpread(
        adult,
        first.searched,
        first.searchedEach,
        recommended,
        each,
        all,
        figures,
        acts,
        asLoaded,
        again,
        inputs,
        unsaid);
  }

  private int mostLookedAt() {
    return chances.stream().map(CrewChance::people).max(Comparator.naturalOrder()).orElse(0);
  }
}
