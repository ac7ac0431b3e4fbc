package thwartwise.advice;

import java.util.List;
import thwartwise.remedy.Changes.Prohibition;

/**
 * Possible changes to the boat, in the order in which to make them.
 *
 * @param pieces what corrects a fault before what gains more
 * @param prohibitions what must never be done to this boat
 */
public record Advice(List<AdvicePiece> pieces, List<Prohibition> prohibitions) {
  public static final Advice NONE = new Advice(List.of(), List.of());

  public Advice {
    pieces = List.copyOf(pieces);
    prohibitions = List.copyOf(prohibitions);
  }
}
