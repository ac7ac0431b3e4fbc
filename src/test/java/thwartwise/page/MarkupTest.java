package thwartwise.page;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MarkupTest {
  @Test
  void what_could_be_taken_for_markup_is_written_out() {
    assertThat(Markup.of("<b a=\"1\" c='2'>&"))
        .isEqualTo("&lt;b a=&quot;1&quot; c=&#39;2&#39;&gt;&amp;");
    assertThat(Markup.bare("\"><script>")).isEqualTo("&quot;&gt;&lt;script&gt;");
  }

  @Test
  void what_cannot_be_printed_is_shown_as_a_question_mark_and_lines_become_blanks() {
    assertThat(Markup.of(" a\n\tb\u0007\u202e\ud800\uffff ")).isEqualTo("a b????");
  }

  @Test
  void the_blank_that_ties_a_figure_to_its_unit_stays() {
    assertThat(Markup.of("110\u00a0kg")).isEqualTo("110\u00a0kg");
  }

  @Test
  void words_from_right_to_left_are_kept_apart_from_the_figures_beside_them() {
    assertThat(Markup.of("helm שלום עולם! 80 kg")).isEqualTo("helm <bdi>שלום עולם</bdi>! 80 kg");
    assertThat(Markup.of("שלום and سلام")).isEqualTo("<bdi>שלום</bdi> and <bdi>سلام</bdi>");
    assertThat(Markup.of("שָׁלוֹם 80")).isEqualTo("<bdi>שָׁלוֹם</bdi> 80");
    assertThat(Markup.bare("שלום")).isEqualTo("שלום");
  }
}
