package thwartwise.advice;

import java.util.List;
import java.util.Optional;
import thwartwise.checks.CheckId;
import thwartwise.checks.Finding;
import thwartwise.checks.Measure;
import thwartwise.checks.Outcome;
import thwartwise.remedy.Change.Effort;
import thwartwise.remedy.Deed;

/**
 * Anchoring by the bow alone. It gains nobody a seat; it is reported where the freeboard by the
 * stern is less than by the bow.
 */
final class AdviceAnchoring {
  private AdviceAnchoring() {}

  static Optional<AdvicePiece> of(List<Finding> findings) {
    Optional<Finding> stern = worst(findings, CheckId.ANCHORING_BY_THE_STERN);
    Optional<Finding> bow = worst(findings, CheckId.ANCHORING_BY_THE_BOW);
    return stern.flatMap(s -> bow.filter(b -> standsMore(b, s)).map(b -> piece(s, b)));
  }

  private static Optional<Finding> worst(List<Finding> findings, CheckId check) {
    return findings.stream()
        .filter(f -> f.question().asks(check, Measure.FREEBOARD))
        .reduce(Finding::worse);
  }

  private static boolean standsMore(Finding bow, Finding stern) {
    return bow.value().isPresent()
        && bow.value().getAsDouble() > stern.value().orElse(Double.NEGATIVE_INFINITY);
  }

  private static AdvicePiece piece(Finding stern, Finding bow) {
    return new AdvicePiece(
        new Deed.AnchorByTheBow(bow.value(), stern.value(), stern.outcome() != Outcome.MEETS),
        Effort.NONE,
        0,
        0,
        0,
        Optional.empty(),
        List.of(),
        List.of(),
        List.of());
  }
}
