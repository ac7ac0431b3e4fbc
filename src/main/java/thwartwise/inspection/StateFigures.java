package thwartwise.inspection;

import java.util.Optional;

/**
 * One loading of the boat: afloat, heeled and swamped.
 *
 * @param loading in words: who is aboard and where
 * @param afloat empty when no such pose exists; {@code note} says why
 */
public record StateFigures(
    String loading,
    Optional<AfloatFigures> afloat,
    Optional<RightingFigures> righting,
    SwampedFigures swamped,
    String note) {}
