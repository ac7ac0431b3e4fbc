package thwartwise.inspection;

import java.util.List;
import thwartwise.remedy.Prohibition;

/**
 * What could be done about the boat, best first.
 *
 * @param pieces ranked by what they buy
 * @param never what must never be done to this boat
 */
public record Advice(List<AdvicePiece> pieces, List<Prohibition> never) {
  public static final Advice NONE = new Advice(List.of(), List.of());

  public Advice {
    pieces = List.copyOf(pieces);
    never = List.copyOf(never);
  }
}
