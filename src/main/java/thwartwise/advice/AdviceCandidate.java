package thwartwise.advice;

import thwartwise.crew.Capacity;

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
