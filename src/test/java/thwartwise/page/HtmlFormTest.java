package thwartwise.page;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.page.Block.Illustration;

class HtmlFormTest {
  private static final String CIRCLE =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"640\" height=\"80\""
          + " viewBox=\"0 0 640 80\"><circle cx=\"40\" cy=\"40\" r=\"30\"/></svg>";
  private static final Illustration DRAWN =
      new Illustration("Seen <from> aft", "A \"round\" boat", "It rolls & rolls.", CIRCLE);

  @Test
  void points_that_follow_each_other_are_one_list_and_numbers_another() {
    Page page =
        new Page()
            .point("a")
            .point("b")
            .numbered(1, "c")
            .numbered(2, "d")
            .paragraph("e")
            .point("f");
    assertThat(HtmlForm.of(page))
        .isEqualTo(
            """
            <ul>
            <li>A.</li>
            <li>B.</li>
            </ul>
            <ol>
            <li value="1">C.</li>
            <li value="2">D.</li>
            </ol>
            <p class="told">E.</p>
            <ul>
            <li>F.</li>
            </ul>
            """);
  }

  @Test
  void the_first_of_several_sentences_of_a_point_stands_out() {
    assertThat(HtmlForm.of(new Page().point("weigh it", "a guess is too light")))
        .contains("<li><strong>Weigh it.</strong> A guess is too light.</li>");
  }

  @Test
  void a_point_for_a_pen_has_a_box() {
    Page page = new Page().ticked("the bung is in", "an open one floods").point("a");
    assertThat(HtmlForm.of(page))
        .isEqualTo(
            """
            <ul class="ticks">
            <li><span class="box"></span><strong>The bung is in.</strong> An open one floods.</li>
            </ul>
            <ul>
            <li>A.</li>
            </ul>
            """);
    assertThat(page.toString()).isEqualTo("[ ] The bung is in. An open one floods.\n* A.\n");
  }

  @Test
  void a_drawn_picture_is_a_figure_with_its_title_alternative_and_caption() {
    assertThat(HtmlForm.of(new Page().drawn(DRAWN)))
        .isEqualTo(
            "<figure class=\"drawn\"><h3>Seen &lt;from&gt; aft</h3><div role=\"img\""
                + " aria-label=\"A &quot;round&quot; boat\">"
                + CIRCLE
                + "</div><figcaption>It rolls &amp; rolls.</figcaption></figure>\n");
  }

  @Test
  void the_text_page_does_without_a_drawn_picture() {
    assertThat(new Page().paragraph("a").drawn(DRAWN).paragraph("b").toString())
        .isEqualTo("A.\nB.\n");
  }

  @Test
  void a_picture_in_characters_keeps_its_blanks() {
    assertThat(HtmlForm.of(new Page().picture("[..<  ]"))).isEqualTo("<pre>[..&lt;  ]</pre>\n");
  }

  @Test
  void a_line_to_write_on_fills_the_line_of_text() {
    Page page = new Page().writtenOn("Owner");
    assertThat(page.toString()).isEqualTo("\nOwner: " + "_".repeat(73) + "\n");
    assertThat(HtmlForm.of(page)).isEqualTo("<p class=\"written\"><span>Owner</span></p>\n");
  }

  @Test
  void figures_and_banners_are_set_apart_in_text_too() {
    assertThat(new Page().banner("Launch held").figure("110 kg", "people in all").toString())
        .isEqualTo("*** Launch held\n110 kg    people in all\n");
  }

  @Test
  void a_table_names_its_columns_in_every_cell_and_a_last_cell_takes_the_room_left() {
    Table table =
        Table.of(
            List.of(
                new Table.Column("Boat", 9),
                new Table.Column("Crew", 6),
                new Table.Column("kg", 4)),
            List.of(List.of("<Egg>", "one", "90"), List.of("Tin", "not & known")));
    assertThat(HtmlForm.of(new Page().table(table)))
        .isEqualTo(
            """
            <table>
            <colgroup><col style="width: 47%"/><col style="width: 31%"/><col style="width: 21%"/></colgroup>
            <thead><tr><th scope="col">Boat</th><th scope="col">Crew</th><th scope="col">kg</th></tr></thead>
            <tbody>
            <tr><th scope="row">&lt;Egg&gt;</th><td data-head="Crew">one</td><td data-head="kg">90</td></tr>
            <tr><th scope="row">Tin</th><td colspan="2">not &amp; known</td></tr>
            </tbody>
            </table>
            """);
    assertThat(new Page().table(table).toString())
        .isEqualTo(
            """
            Boat      Crew   kg
            --------- ------ ----
            <Egg>     one    90

            Tin       not & known

            """);
  }

  @Test
  void a_bar_shows_a_share_in_every_form() {
    List<Table.Column> columns = List.of(new Table.Column("Heel", 6), new Table.Column("left", 8));
    Table table =
        new Table(
            columns,
            List.of(
                List.of(new Table.Words("12°"), new Table.Bar(0.5)),
                List.of(new Table.Words("30°"), new Table.Bar(-2))),
            true);
    assertThat(new Page().table(table).toString())
        .isEqualTo(
            """
            Heel   left
            ------ --------
            12°    ####....
            30°    ........
            """);
    assertThat(HtmlForm.of(new Page().table(table)))
        .contains(
            "<td data-head=\"left\"><span class=\"bar\" role=\"img\" aria-label=\"50%\"><span class=\"filled\" style=\"width: 50%\">")
        .contains("style=\"width: 0%\"");
  }

  @Test
  void details_fold_in_html_and_stand_open_in_text() {
    Page page = new Page().folded("How it was worked out", new Page().point("a").point("b"));
    assertThat(HtmlForm.of(page))
        .isEqualTo(
            """
            <details><summary>How it was worked out</summary>
            <ul>
            <li>A.</li>
            <li>B.</li>
            </ul>
            </details>
            """);
    assertThat(page.toString()).isEqualTo("\nHow it was worked out:\n* A.\n* B.\n");
  }

  @Test
  void the_contents_lead_to_every_heading() {
    Page page = new Page().contents().heading("One").paragraph("a").sheet("Two");
    assertThat(HtmlForm.of(page))
        .contains("<li><a href=\"#part-1\">One</a></li>", "<li><a href=\"#part-2\">Two</a></li>")
        .contains("<h2 id=\"part-1\">One</h2>", "<h2 class=\"part fresh\" id=\"part-2\">Two</h2>");
    assertThat(page.toString()).startsWith("\nOne\n---\n");
  }
}
