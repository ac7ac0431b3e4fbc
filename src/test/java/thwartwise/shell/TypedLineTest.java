package thwartwise.shell;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.shell.CommandLineParser.TypedLine;

class TypedLineTest {

  @Test
  void spaces_part_the_words() {
    assertThat(TypedLine.words("  inspect   --boat\tskiff.json "))
        .containsExactly("inspect", "--boat", "skiff.json");
  }

  @Test
  void a_line_of_spaces_has_no_words() {
    assertThat(TypedLine.words("   ")).isEmpty();
  }

  @Test
  void quotation_marks_keep_a_word_with_spaces_whole() {
    assertThat(TypedLine.words("inspect --by \"Ann Lee\" --boat 'my boat.json'"))
        .containsExactly("inspect", "--by", "Ann Lee", "--boat", "my boat.json");
  }

  @Test
  void a_quotation_mark_may_follow_the_equals_sign() {
    assertThat(TypedLine.words("--boat=\"my boat.json\"")).containsExactly("--boat=my boat.json");
  }

  @Test
  void an_empty_quotation_is_an_empty_word() {
    assertThat(TypedLine.words("--by \"\"")).containsExactly("--by", "");
  }

  @Test
  void an_apostrophe_and_a_backslash_inside_a_word_are_letters() {
    assertThat(TypedLine.words("O'Dell C:\\boats\\new.json"))
        .containsExactly("O'Dell", "C:\\boats\\new.json");
  }

  @Test
  void a_quotation_that_never_ends_is_refused() {
    assertThatThrownBy(() -> TypedLine.words("inspect --by \"Ann"))
        .hasMessage("A quotation mark (\") is opened and never closed. Close it, or leave it out.");
  }
}
