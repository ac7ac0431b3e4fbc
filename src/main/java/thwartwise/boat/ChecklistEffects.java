package thwartwise.boat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.electrics.Battery;

/**
 * The effects of the answers to checklists: a boat and its answers in, a boat out. An answer can
 * only take something from the boat; a good one, and a point nobody looked at, change nothing. Less
 * air does not always mean fewer people, because a tank on one side heels the swamped boat. So
 * nothing is recommended above the boat with fewer of its answers ({@link
 * BoatModel#withFewerAnswers()}).
 */
final class ChecklistEffects {
  /**
   * The number of answers of which every selection is computed. For each later answer, the boat is
   * computed with that one alone and with that one and all before it. With the earliest day first,
   * an answer of a later day never allows more people than without it.
   */
  private static final int MOST_COMBINED = 3;

  private ChecklistEffects() {}

  static Boat of(Boat boat) {
    return with(bad(boat), asStated(boat));
  }

  private static List<PointAnswer> bad(Boat boat) {
    return boat.pointAnswers().stream()
        .filter(answer -> answer.isFault() && answer.fact().isPresent())
        .sorted(Comparator.comparing(PointAnswer::date))
        .toList();
  }

  private static Boat with(List<PointAnswer> answers, Boat stated) {
    Boat found = stated;
    for (PointAnswer answer : answers) {
      found = answer.fact().orElseThrow().in(found, answer.item());
    }
    return found;
  }

  /** The boat without its answers. */
  private static Boat asStated(Boat boat) {
    return withBatteryAsHeld(boat);
  }

  /**
   * The boats with fewer of the faults found, the one without any first, and without those that
   * carry as much as the boat with all of them.
   */
  static List<Boat> withFewerAnswers(Boat boat) {
    Boat stated = asStated(boat);
    List<PointAnswer> changing =
        bad(boat).stream()
            .filter(answer -> isChanged(with(List.of(answer), stated), stated))
            .toList();
    Boat found = with(changing, stated);
    return selections(changing).stream()
        .map(answers -> with(answers, stated))
        .filter(fewer -> isChanged(found, fewer))
        .distinct()
        .toList();
  }

  private static List<List<PointAnswer>> selections(List<PointAnswer> answers) {
    List<List<PointAnswer>> all = new ArrayList<>();
    all.add(List.of());
    for (int i = 0; i < answers.size(); i++) {
      PointAnswer answer = answers.get(i);
      List<List<PointAnswer>> before =
          i < MOST_COMBINED ? List.copyOf(all) : List.of(List.of(), answers.subList(0, i));
      before.forEach(selection -> all.add(joined(selection, answer)));
    }
    return all;
  }

  private static List<PointAnswer> joined(List<PointAnswer> answers, PointAnswer more) {
    return Stream.concat(answers.stream(), Stream.of(more)).toList();
  }

  /**
   * A changed boat with fewer answers: what the change left as it was found is again as it is with
   * fewer of them.
   */
  static Boat withFewerAnswers(Boat changed, Boat found, Boat fewer) {
    Boat weighed = fewer.hull().equals(found.hull()) ? changed : changed.withHull(fewer.hull());
    return weighed
        .withChambers(withFewer(changed.chambers(), found.chambers(), fewer.chambers()))
        .withKit(withFewer(changed.kit(), found.kit(), fewer.kit()));
  }

  private static <T> List<T> withFewer(List<T> changed, List<T> found, List<T> fewer) {
    return changed.stream()
        .map(thing -> found.contains(thing) ? fewer.get(found.indexOf(thing)) : thing)
        .toList();
  }

  /** Whether the two boats may carry different loads. */
  static boolean isChanged(Boat found, Boat fewer) {
    return !found.chambers().equals(fewer.chambers())
        || !found.kit().equals(fewer.kit())
        || !found.hull().equals(fewer.hull());
  }

  /** A battery that is stated to lie without tray and strap is loose, whatever the kit says. */
  private static Boat withBatteryAsHeld(Boat boat) {
    return boat.electrics()
        .battery()
        .filter(Battery::isLoose)
        .map(battery -> BoatFact.KIT_LOOSE.in(boat, battery.kit()))
        .orElse(boat);
  }
}
