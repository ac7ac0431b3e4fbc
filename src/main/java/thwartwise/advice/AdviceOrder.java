package thwartwise.advice;

import java.util.Comparator;
import thwartwise.crew.Capacity;
import thwartwise.remedy.Change.Effort;
import thwartwise.remedy.Deed;

/**
 * The order of advice. What corrects a fault comes first, the cheapest of it before the rest. Then
 * comes what gains most; of what gains as many adults the cheapest.
 */
public final class AdviceOrder {
  public static final Comparator<AdviceCandidate> FIRST_TOLD_FIRST =
      Comparator.comparing((AdviceCandidate c) -> c.piece().worsensALimit())
          .thenComparing(c -> !c.corrects())
          .thenComparingInt(c -> c.corrects() ? ease(c.piece()) : 0)
          .thenComparing(Comparator.comparingInt((AdviceCandidate c) -> people(c)).reversed())
          .thenComparingInt(c -> people(c) > 0 ? ease(c.piece()) : 0)
          .thenComparing(
              Comparator.comparingDouble((AdviceCandidate c) -> c.piece().crew()).reversed())
          .thenComparing(
              Comparator.comparingDouble((AdviceCandidate c) -> c.piece().load()).reversed())
          .thenComparingInt(c -> ease(c.piece()))
          .thenComparing(c -> c.piece().deed(), Deed.IN_ORDER);

  private AdviceOrder() {}

  private static int people(AdviceCandidate candidate) {
    return candidate.piece().people();
  }

  private static int ease(AdvicePiece piece) {
    return ease(piece.deed(), piece.effort());
  }

  /**
   * How easily somebody would do it; less is easier (judgement). Of what takes as long, foam is
   * bought and glued in for good, and comes last. Leaving ashore what drives the boat takes no time
   * and costs a day of rowing.
   */
  static int ease(Deed deed, Effort effort) {
    int time = 3 * effort.ordinal();
    if (deed instanceof Deed.LeaveKit left && left.drive().stops()) {
      return 3 * Effort.AN_AFTERNOON.ordinal();
    }
    if (deed instanceof Deed.StayAshore) {
      return time + 1;
    }
    return hasFoam(deed) ? time + 2 : time + (deed instanceof Deed.DeedPair ? 1 : 0);
  }

  private static boolean hasFoam(Deed deed) {
    return deed instanceof Deed.AddFoam
        || deed instanceof Deed.DeedPair two && (hasFoam(two.one()) || hasFoam(two.other()));
  }

  /**
   * A piece of advice with the boat after it.
   *
   * @param corrects whether it lets somebody go where nobody may, or the crew of today as it is
   *     loaded
   */
  public record AdviceCandidate(AdvicePiece piece, InspectedBoat after, boolean corrects) {
    Capacity capacity() {
      return after.capacity();
    }
  }
}
