package thwartwise.walk;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

/** All stations of a boat at once, in the shapes people bring them in. */
@Isolated("sets the locale of the process")
class TableInputTest {
  private static final String WHERE = "hull.stations";

  /**
   * A flat-bottomed boat without rocker: half-breadth of the chine 0.4 m, of the rail 0.6 m, 0.4 m
   * high, 2.4 m long, the same all along.
   */
  private static final String PRISM =
      """
      station, x, keel z, chine y, chine z, rail y, rail z
      aft, 0, 0, 0.4, 0, 0.6, 0.4
      middle, 1.2, 0, 0.4, 0, 0.6, 0.4
      fore, 2.4, 0, 0.4, 0, 0.6, 0.4
      """;

  /** DERIVED: trapezium (0.8 + 1.2) / 2 × 0.4 = 0.4 m² along 2.4 m. */
  private static final double PRISM_VOLUME = 0.96;

  private static Sheet measured(String length) {
    return Sheet.small().with("hull.length", length);
  }

  private static List<Answer> taken(Sheet sheet, String table) {
    Reply reply = Sheet.WALK.table(sheet.upTo(WHERE), table);
    assertThat(reply).isInstanceOf(Reply.Proposed.class);
    return ((Reply.Proposed) reply).answers();
  }

  private static String shown(Sheet sheet, String table) {
    Reply reply = Sheet.WALK.table(sheet.upTo(WHERE), table);
    assertThat(reply).isInstanceOf(Reply.Proposed.class);
    return String.join("\n", ((Reply.Proposed) reply).shown());
  }

  private static String refused(String table) {
    return ((Reply.Refused) Sheet.WALK.table(measured("2.4").upTo(WHERE), table)).reason();
  }

  /** The rest of the walk from the sheet, with nothing said against what looks unusual. */
  private static Boat finished(Sheet sheet, List<Answer> begun) {
    return Sheet.boat(sheet.toTheEnd(begun));
  }

  private static double volume(Sheet sheet, String table) {
    Boat boat = finished(sheet, taken(sheet, table));
    return BoatModel.of(boat, Sheet.TODAY).form().outside().volume();
  }

  @Test
  void commas_and_metres() {
    assertThat(volume(measured("2.4"), PRISM)).isCloseTo(PRISM_VOLUME, within(1e-9));
  }

  @Test
  void semicolons_and_decimal_commas() {
    String table = PRISM.replace(", ", "; ").replace('.', ',');
    assertThat(volume(measured("2.4"), table)).isCloseTo(PRISM_VOLUME, within(1e-9));
  }

  @Test
  void tabs_and_millimetres_from_a_spreadsheet() {
    String table =
        """
        station\tx (mm)\tkeel z\tchine y\tchine z\trail y\trail z
        aft\t0\t0\t400\t0\t600\t400
        middle\t1200\t0\t400\t0\t600\t400
        fore\t2400\t0\t400\t0\t600\t400
        """;
    assertThat(volume(measured("2.4"), table)).isCloseTo(PRISM_VOLUME, within(1e-9));
  }

  @Test
  void blanks_decimal_commas_and_no_heads() {
    String table =
        """
        the aft end 0   0 0,4 0 0,6 0,4
        middle      1,2 0 0,4 0 0,6 0,4
        bow         2,4 0 0,4 0 0,6 0,4
        """;
    assertThat(volume(measured("2.4"), table)).isCloseTo(PRISM_VOLUME, within(1e-9));
  }

  /** DERIVED: 8 ft long, trapezium (32 + 48) / 2 × 15 1/2 in, in cubic inches of 0.0254³ m³. */
  @Test
  void inches_with_fractions_and_blanks() {
    String table =
        """
        0  0 16 0 24 15 1/2
        48 0 16 0 24 15 1/2
        96 0 16 0 24 15 1/2
        """;
    double volume = 96 * 40 * 15.5 * Math.pow(0.0254, 3);
    assertThat(volume(measured("8 ft"), table)).isCloseTo(volume, within(1e-9));
  }

  @Test
  void a_row_for_each_point() {
    StringBuilder table = new StringBuilder("station,x,y,z\n");
    for (String at : List.of("a,0", "b,1200", "c,2400")) {
      table.append(at).append(",0,0\n").append(at).append(",400,0\n");
      table.append(at).append(",600,400\n");
    }
    assertThat(volume(measured("2.4"), table.toString())).isCloseTo(PRISM_VOLUME, within(1e-9));
  }

  private static final String WEDGE =
      """
      Station            1       2       3
      Forward            0-0-0   5-0-0   10-0-0
      Heights above base
      keel               0-0-0   0-0-0   0-0-0
      chine              0-0-0   0-0-0   0-0-0
      sheer              1-4-3+  1-4-3+  1-4-3+
      Half-breadths
      chine              2-0-0   1-6-0   1-0-0
      sheer              2-0-0   1-6-0   1-0-0
      """;

  /**
   * DERIVED: plumb sides 1 ft 4 7/16 in high over a flat bottom that narrows from 4 ft to 2 ft
   * along 10 ft, a trapezium of 30 square feet; a foot is 0.3048 m.
   */
  @Test
  void offsets_in_feet_inches_and_eighths_as_plans_give_them() {
    double high = (12 + 4 + 3 / 8.0 + 1 / 16.0) * 0.0254;
    assertThat(volume(measured("10 ft"), WEDGE))
        .isCloseTo(30 * 0.3048 * 0.3048 * high, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"From stem 10-0-0 5-0-0 0-0-0", "Spacing 5-0-0"})
  void stations_of_a_plan_may_be_told_from_the_stem_or_by_their_spacing(String row) {
    String table = WEDGE.replaceFirst("Forward .*", row);
    assertThat(taken(measured("10 ft"), table)).isEqualTo(taken(measured("10 ft"), WEDGE));
  }

  /** Plans number the stations between the ends, and give these a letter. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          Station A 1 2            | A, plan 1, plan 2
          Station AP 1 FP          | AP, plan 1, FP
          Station: T A B           | T, A, B
          Sta. No. A 1 2           | A, plan 1, plan 2
          A 1 2                    | A, plan 1, plan 2
          Station aft end 1 2      | aft end, plan 1, plan 2
          Stations                 | station 1, station 2, station 3
          Pram, 12 ft, drawn 2024  | station 1, station 2, station 3
          """)
  void the_headings_of_the_columns_are_the_names_of_the_stations(String row, String names) {
    List<Answer> answers = taken(measured("10 ft"), WEDGE.replaceFirst("Station .*", row));
    assertThat(answers)
        .filteredOn(answer -> answer.question().matches("hull\\.station\\.\\d\\.name"))
        .extracting(Answer::typed)
        .containsExactly(names.split(", "));
  }

  /** A comma in a title separates nothing, and a title is no row of the table. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Offsets of the pram, lines to the outside of the plank",
        "Table of offsets; sheet 2 of 5, 12 ft pram",
        "Flat keel, plumb sheer",
        "Pram | offsets"
      })
  void the_title_above_a_table_says_nothing_of_its_columns(String title) {
    assertThat(taken(measured("10 ft"), title + "\n" + WEDGE))
        .isEqualTo(taken(measured("10 ft"), WEDGE));
    assertThat(taken(measured("2.4"), title + "\n" + PRISM))
        .isEqualTo(taken(measured("2.4"), PRISM));
    String headless =
        PRISM.lines().skip(1).map(row -> row.replace(",", "")).reduce("", this::below);
    assertThat(taken(measured("2.4"), title + headless)).isEqualTo(taken(measured("2.4"), PRISM));
  }

  private String below(String above, String row) {
    return above + "\n" + row;
  }

  @Test
  void a_comma_in_the_label_of_a_row_separates_nothing_either() {
    String table = WEDGE.replace("chine              2", "chine, out         2");
    assertThat(taken(measured("10 ft"), table)).isEqualTo(taken(measured("10 ft"), WEDGE));
  }

  @Test
  void a_framed_table_of_a_text_page() {
    String framed =
        PRISM
            .replaceFirst("\n", "\n---|---|---|---|---|---|---\n")
            .lines()
            .map(row -> "| " + row.replace(", ", " | ") + " |")
            .reduce("", this::below);
    assertThat(volume(measured("2.4"), framed)).isCloseTo(PRISM_VOLUME, within(1e-9));
  }

  @Test
  void a_plan_whose_stations_begin_at_the_bow_is_turned_round() {
    String table = WEDGE.replaceFirst("Forward .*", "Forward 10-0-0 5-0-0 0-0-0");
    assertThat(volume(measured("10 ft"), table))
        .isCloseTo(volume(measured("10 ft"), WEDGE), within(1e-9));
  }

  @Test
  void lines_from_the_sheer_down_and_without_the_keel_make_the_same_boat() {
    String table =
        """
        Station            1       2       3
        Half-breadths
        sheer              2-0-0   1-6-0   1-0-0
        chine              2-0-0   1-6-0   1-0-0
        Heights above base
        sheer              1-4-3+  1-4-3+  1-4-3+
        chine              0-0-0   0-0-0   0-0-0
        From the aft end   0-0-0   5-0-0   10-0-0
        """;
    assertThat(volume(measured("10 ft"), table))
        .isCloseTo(volume(measured("10 ft"), WEDGE), within(1e-9));
  }

  /** A raked transom and stem: their points lie apart. DERIVED: base 1.8 m, rail 2.4 m. */
  @Test
  void raked_ends_give_the_distance_of_each_point() {
    String table =
        """
        station; keel x; keel z; chine x; chine y; chine z; rail x; rail y; rail z
        transom; 0.3; 0; 0.3; 0.5; 0; 0; 0.5; 0.4
        middle; 1.2; 0; 1.2; 0.5; 0; 1.2; 0.5; 0.4
        stem; 2.1; 0; 2.1; 0.5; 0; 2.4; 0.5; 0.4
        """;
    assertThat(volume(measured("2.4"), table)).isCloseTo(1.0 * 0.4 * (1.8 + 2.4) / 2, within(1e-6));
  }

  @Test
  void the_table_is_shown_as_it_was_understood_with_a_drawing() {
    assertThat(shown(measured("10 ft"), WEDGE))
        .isEqualTo(
            """
            Read in feet-inches-eighths: 3 stations of 3 points (keel, chine, sheer).
            in                forward  p1 out      up  p2 out      up  p3 out      up
              plan 1                0       0       0      24       0      24 16.4375
              plan 2               60       0       0      18       0      18 16.4375
              plan 3              120       0       0      12       0      12 16.4375

            From the side, aft end on the left:
              | o..................................o.................................o
              |
              |
              |
              |
              | o..................................o.................................o
              +-----------------------------------------------------------------------
            Half of it from above, middle line below:
              | o........
              |         .....................
              |                             .......o.............
              |                                                 .....................
              |                                                                     .o
              |
              |
              | o..................................o.................................o
              +-----------------------------------------------------------------------
            An end with one distance for all its points is taken as plumb; give a raked one
            the distance of each point."""
                .strip());
  }

  @Test
  void a_figure_of_it_can_be_changed_afterwards() {
    List<Answer> answers = taken(measured("2.4"), PRISM);
    assertThat(answers).contains(new Answer("hull.station.2.point.3.z", "0.4 m"));
    answers = Sheet.answer(answers, "yes");
    Reply.Listed list = (Reply.Listed) Sheet.WALK.take(answers, "list");
    assertThat(list.text()).contains("Station 2 \"middle\", rail, height: 0.40 m");
  }

  @Test
  void where_the_sides_differ_starboard_is_asked_afterwards() {
    List<Answer> answers = Sheet.answer(taken(measured("2.4"), PRISM), "no");
    assertThat(Sheet.open(answers).key()).isEqualTo("hull.station.1.starboard.2.y");
  }

  /** The same boat whatever the machine's own notation is. */
  @Test
  void it_reads_the_same_under_another_locale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(shown(measured("2.4"), PRISM)).contains("Read in metres: 3 stations of 3 points");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void an_unlikely_figure_is_said_at_once_and_asked_again() {
    String table = PRISM.replace("middle, 1.2, 0, 0.4, 0, 0.6", "middle, 1.2, 0, 0.4, 0, 1.1");
    Reply.Proposed proposed = (Reply.Proposed) Sheet.WALK.table(measured("2.4").upTo(WHERE), table);
    assertThat(String.join("\n", proposed.shown()))
        .contains("Looks unlikely, and is asked again if you take the table:");
    List<Answer> alike = Sheet.answer(proposed.answers(), "yes");
    assertThat(Sheet.open(alike).key()).isEqualTo("hull.station.2.point.3.y");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
      middle, 1.2, 0, 0.4, 0, 0.6, 0.4 > middle, 1.2, 0, wide, 0, 0.6, 0.4 | Line 3, column 4: "wide" is not a figure. Expected a number such as 0.44, 16 3/8 or 1-4-3 (feet-inches-eighths). Nothing of the table was taken.
      middle, 1.2, 0, 0.4, 0, 0.6, 0.4 > middle, 1.2, 0, 0.4, 0, 0.6 | Line 3: it has 6 columns. Expected 7: station, x, keel z, chine y, chine z, rail y, rail z. Nothing of the table was taken.
      middle, 1.2, 0, 0.4, 0, 0.6, 0.4 > middle, 1.2, 0, , 0, 0.6, 0.4 | Line 3, column 4: nothing stands there. Expected a figure, as in the lines above it. Nothing of the table was taken.
      0.6, 0.4 > 0.6, -0.4 | Line 2, column 7: -0.40 m is not between 0 and 1.5 m, the height of anything on such a hull. Measure it again. Nothing of the table was taken.
      chine y > chine | Line 1, column 4: "chine" does not say what is measured. Expected x, y (half-breadth) or z (height) behind it. Nothing of the table was taken.
      rail z > rail weight | Line 1, column 7: "rail weight" does not say what is measured. Expected x, y (half-breadth) or z (height) behind it. Nothing of the table was taken.
      rail z > colour | Line 1, column 7: "colour" is not known. Expected station, x, or a line with y or z, such as chine y. Nothing of the table was taken.
      fore, 2.4 > fore, 24 | The table ends at 24 forward, which is the length overall (2.40 m) in no unit. Expected a station at the fore end; or a first line that says the unit, such as mm or inches. Nothing of the table was taken.
      middle, 1.2 > middle, 2.4 | Line 4, column 2: Station 3 "fore": the keel (2.40 m) is not forward of the keel of station 2 "middle" (2.40 m). Measure both from the aft end, or go back. Nothing of the table was taken.
      aft, 0, > #aft, 0, | The table has 2 stations. Expected 3 to 21. Nothing of the table was taken.
      """)
  void a_wrong_table_is_told_by_line_and_column(String change, String message) {
    String[] parts = change.split(" > ");
    assertThat(refused(PRISM.replaceFirst(parts[0], parts[1]))).isEqualTo(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
      1-4-3\\+ > 1-4-9 | Line 6, column 2: "1-4-9" does not add up. Expected feet-inches-eighths, with inches up to 11 and eighths up to 7, such as 1-4-3. Nothing of the table was taken.
      1-4-3\\+ > 16.4 | Line 6, column 2: 16.4 has no dashes, and others are feet-inches-eighths. Expected one notation throughout, such as 1-4-3. Nothing of the table was taken.
      Forward > Backward | Line 2, column 1: "Backward" is not known. Expected station, forward, or a line of the hull such as keel, chine or sheer. Nothing of the table was taken.
      Heights above base > # | Line 4: are these heights or half-breadths? Expected a line before it that says so: Heights above base, or Half-breadths. Nothing of the table was taken.
      Station            1       2       3 > Station A 1 2 3 | Line 1: its stations are not as many as the columns of figures. Expected 3, each a number or one word, such as A, 1 and FP. Nothing of the table was taken.
      Station            1       2       3 > A 1 2 3 | Line 1, column 1: "A" is not known. Expected station, forward, or a line of the hull such as keel, chine or sheer. Nothing of the table was taken.
      Half-breadths > # | Line 8, column 1: "chine" stands twice under the same heading. Expected each line once, such as chine 1 and chine 2. Nothing of the table was taken.
      sheer              2 > buttock 6 in       2 | Line 9: "buttock" is no line along the hull. Expected rows such as keel, chine and sheer; leave out buttocks, waterlines and diagonals. Nothing of the table was taken.
      """)
  void a_wrong_table_of_offsets_likewise(String change, String message) {
    String[] parts = change.split(" > ");
    Reply.Refused reply =
        (Reply.Refused)
            Sheet.WALK.table(measured("10 ft").upTo(WHERE), WEDGE.replaceFirst(parts[0], parts[1]));
    assertThat(reply.reason()).isEqualTo(message);
  }

  @Test
  void a_unit_nobody_knows_is_told() {
    assertThat(refused("units: cubits\n" + PRISM))
        .isEqualTo(
            "Line 1: that unit is not known. Expected m, cm, mm, feet, inches or"
                + " feet-inches-eighths. Nothing of the table was taken.");
  }

  @Test
  void elsewhere_no_table_is_taken() {
    assertThat(((Reply.Refused) Sheet.WALK.table(List.of(), PRISM)).reason())
        .isEqualTo("A table of stations is taken where it is asked how many stations there are.");
  }
}
