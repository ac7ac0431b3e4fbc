package thwartwise.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** An outside answer without its source, status and tolerance is a rumour. */
class ReferenceTest {
  private static final Set<String> STATUSES = Set.of("READ", "FROM MEMORY", "DERIVED");

  /** Every kind has a test that feeds it through the program. */
  private static final Set<String> KINDS =
      Set.of(
          "box-at-rest",
          "wall-sided-arm",
          "least-km",
          "upright-prism",
          "triangular-prism",
          "square-log",
          "square-log-on-edge",
          "vertical-cylinder",
          "loll",
          "wigley",
          "ellipsoid",
          "sphere-cap",
          "bilged-amidships",
          "bilged-end",
          "shifted-weight",
          "shifted-along",
          "weights",
          "cfr-persons",
          "cfr-edge",
          "cfr-threshold",
          "cfr-motor",
          "offset-heel");

  @Test
  void every_row_names_its_source_status_and_tolerance() {
    List<Reference> rows = all().toList();
    assertThat(rows).hasSizeGreaterThan(60);
    for (Reference r : rows) {
      assertThat(r.id()).as("id of %s", r).isNotBlank();
      assertThat(r.source()).as("source of %s", r).isNotBlank();
      assertThat(r.status()).as("status of %s", r).isIn(STATUSES);
      assertThat(r.why()).as("reason for the tolerance of %s", r).isNotBlank();
      assertThat(r.expected()).as("expected values of %s", r).isNotEmpty();
      assertThat(r.tolerance().keySet()).as("tolerances of %s", r).isEqualTo(r.expected().keySet());
      assertThat(r.tolerance().values()).as("tolerances of %s", r).allMatch(t -> t >= 0);
    }
  }

  @Test
  void every_row_has_a_name_of_its_own() {
    assertThat(all().map(Reference::id)).doesNotHaveDuplicates();
  }

  @Test
  void every_row_is_of_a_kind_some_test_feeds_through_the_program() {
    assertThat(all().map(Reference::kind).distinct()).containsExactlyInAnyOrderElementsOf(KINDS);
  }

  @Test
  void answers_known_to_be_wrong_say_why() {
    List<Reference> shelf = Reference.read(Reference.KNOWN_WRONG);
    assertThat(shelf).hasSizeGreaterThan(4);
    for (Reference r : shelf) {
      assertThat(r.source()).as("source of %s", r).isNotBlank();
      assertThat(r.status()).as("status of %s", r).isEqualTo("READ");
      assertThat(r.why()).as("what is wrong with %s", r).hasSizeGreaterThan(20);
      assertThat(r.expected()).as("published value of %s", r).isNotEmpty();
    }
  }

  private static Stream<Reference> all() {
    return Reference.FILES.stream().flatMap(f -> Reference.read(f).stream());
  }
}
