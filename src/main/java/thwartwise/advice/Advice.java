package thwartwise.advice;

import java.util.List;
import thwartwise.remedy.Changes.Prohibition;

/**
 * What could be done about the boat, in the order it is to be done.
 *
 * @param pieces what puts the boat right before what buys more
 * @param prohibitions what must never be done to this boat
 */
public record Advice(List<AdvicePiece> pieces, List<Prohibition> prohibitions) {
  public static final Advice NONE = new Advice(List.of(), List.of());

  public Advice {
    pieces = List.copyOf(pieces);
    prohibitions = List.copyOf(prohibitions);
  }
}
