package thwartwise.crew;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thwartwise.crew.Recommendation.QuestionMargin;

/**
 * The answer for named people: whether they may go, who stays ashore, and who sits where. A
 * recommendation, not a capacity plate.
 *
 * @param seats who goes and where they sit; empty when nobody may
 * @param ashore who stays, in the order they were named
 * @param breaks empty when all may go; otherwise every check that the whole crew fails in the
 *     seating that fails the fewest
 * @param margins each check's margin with these people in these seats, after the allowance
 * @param notAlone places where one of these people alone must not sit
 * @param moves who must move first when somebody gets out
 */
public record CrewAnswer(
    List<Seat> seats,
    List<NamedPerson> ashore,
    List<Refusal> breaks,
    List<QuestionMargin> margins,
    List<NotAlone> notAlone,
    List<Move> moves) {

  public CrewAnswer {
    seats = List.copyOf(seats);
    ashore = List.copyOf(ashore);
    breaks = List.copyOf(breaks);
    margins = List.copyOf(margins);
    notAlone = List.copyOf(notAlone);
    moves = List.copyOf(moves);
  }

  /** The answer when everybody stays for reasons of the boat itself. */
  static CrewAnswer refused(List<NamedPerson> members, List<Refusal> reasons) {
    return new CrewAnswer(List.of(), members, reasons, List.of(), List.of(), List.of());
  }

  public boolean allMayGo() {
    return !seats.isEmpty() && ashore.isEmpty();
  }

  /** The margin that is the least share of its limit. */
  public Optional<QuestionMargin> governing() {
    return margins.stream().min(Comparator.comparingDouble(m -> m.margin().share()));
  }

  /** A person at a place. */
  public record Seat(NamedPerson member, String place) {}

  /** A place where a person must not sit after the others got out. */
  public record NotAlone(NamedPerson member, String place) {}

  /**
   * When somebody gets out, the others cannot stay in their seats.
   *
   * @param seats where they sit then
   */
  public record Move(NamedPerson leaving, List<Seat> seats) {
    public Move {
      seats = List.copyOf(seats);
    }
  }
}
