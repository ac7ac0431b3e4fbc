package thwartwise.geometry;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** An outside answer without its source, status and tolerance is a rumour. */
class ReferenceTest {
  private static final Set<String> STATUSES = Set.of("READ", "FROM MEMORY", "DERIVED");

  /** Kinds of states in which a swimmer's or a leader's life hangs on the sums. */
  private static final Set<String> HARD_KINDS =
      Set.of(
          "bilged-amidships",
          "bilged-end",
          "swamped-rest",
          "free-surface",
          "loose-arm",
          "loose-rest",
          "bay-trim",
          "lopsided-rest",
          "lopsided-arm",
          "shifted-weight",
          "shifted-along",
          "couple-rest",
          "pulled-rest",
          "swing");

  /** Every kind, these or those, has a test that feeds it through the program. */
  private static final Set<String> OTHER_KINDS =
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
          "weights",
          "loaded-ship",
          "cylinder-upright",
          "bay-capacity",
          "hold-capacity",
          "hold-depth",
          "flooding",
          "submerged-weight",
          "air-that-holds-up",
          "body-centre",
          "body-legs",
          "rail-moment",
          "weight-for-age",
          "weight-score",
          "water-density",
          "wind-limit",
          "beaufort",
          "wind-pressure",
          "wind-on-hull",
          "wind-on-person",
          "cfr-persons",
          "cfr-edge",
          "cfr-threshold",
          "cfr-motor",
          "cfr-power",
          "cfr-power-sizes",
          "cfr-hull-flotation",
          "cfr-motor-flotation",
          "cfr-people-flotation",
          "cfr-basic-flotation",
          "load-by-sizes",
          "iron-weights",
          "gross-load",
          "people-by-length",
          "person-elsewhere",
          "offset-heel",
          "persons-carried",
          "peukert-one-ampere",
          "peukert-rated",
          "wire-gauge",
          "wire-resistance",
          "wire-for-drop",
          "voltage-drop",
          "fuse-over-wire",
          "ampacity",
          "fuse-by-rule",
          "fuse-distance",
          "motor-current",
          "hull-speed",
          "sun-outside-air",
          "sun-of-month",
          "sum-of-normal",
          "sum-of-rectangular",
          "logarithm",
          "viscometer",
          "end-gauge",
          "mass-calibration",
          "one-standard",
          "inclining",
          "roll-period",
          "roll-factor");

  @Test
  void every_row_names_its_source_status_and_tolerance() {
    for (Reference r : all().toList()) {
      assertThat(r.id()).as("id of %s", r).isNotBlank();
      assertThat(r.source()).as("source of %s", r).isNotBlank();
      assertThat(r.source()).as("source of %s", r).isNotEqualTo("the same");
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
    Set<String> kinds = new HashSet<>(HARD_KINDS);
    kinds.addAll(OTHER_KINDS);
    assertThat(all().map(Reference::kind).distinct()).containsExactlyInAnyOrderElementsOf(kinds);
  }

  @Test
  void there_are_enough_rows_from_enough_places() {
    assertThat(all()).hasSizeGreaterThanOrEqualTo(60);
    assertThat(all().map(ReferenceTest::place).distinct()).hasSizeGreaterThanOrEqualTo(12);
  }

  /**
   * The book, paper or page of what was read, whatever part of it; what was derived is no place.
   */
  private static String place(Reference r) {
    return r.status().equals("READ")
        ? r.source().split("[,:(]| p\\.| Ex| Ch\\.")[0].strip()
        : "here";
  }

  @Test
  void enough_rows_are_swamped_lopsided_free_in_trim_or_with_loose_water() {
    assertThat(all().filter(r -> HARD_KINDS.contains(r.kind()))).hasSizeGreaterThanOrEqualTo(50);
    for (String kind : HARD_KINDS) {
      assertThat(all().filter(r -> r.kind().equals(kind))).as(kind).isNotEmpty();
    }
  }

  /** The sections of the list of outside answers and how many entries each has. */
  private static Stream<String> entries() {
    return Stream.of(numbered("A", 25), numbered("B", 5), numbered("C", 4), numbered("D", 4))
        .flatMap(s -> s);
  }

  private static Stream<String> numbered(String section, int last) {
    return IntStream.rangeClosed(1, last).mapToObj(i -> section + i);
  }

  @Test
  void every_entry_of_the_list_is_a_row_or_says_why_not() {
    Set<String> used = new HashSet<>();
    Pattern entry = Pattern.compile("([A-D]\\d+)(-.*)?");
    for (Reference r : all().toList()) {
      Matcher id = entry.matcher(r.id());
      if (id.matches()) {
        used.add(id.group(1));
      }
    }
    List<String> listed = new ArrayList<>(used);
    Reference.notUsed().forEach(n -> listed.add(n.id()));
    assertThat(listed).containsExactlyInAnyOrderElementsOf(entries().toList());
  }

  @Test
  void an_entry_that_is_not_used_says_what_the_program_does_not_compute() {
    for (Reference.NotUsed entry : Reference.notUsed()) {
      assertThat(entry.what()).as("what %s is", entry.id()).isNotBlank();
      assertThat(entry.why()).as(entry.id()).startsWith("the program does not compute ");
    }
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
