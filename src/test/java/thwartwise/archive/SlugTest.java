package thwartwise.archive;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SlugTest {
  private static final String HASH = "-[0-9a-f]{8}";

  @ParameterizedTest
  @CsvSource({"Soup Ladle,soup-ladle", "'  soup   LADLE ',soup-ladle", "No 7,no-7"})
  void a_plain_name_keeps_its_words(String name, String slug) {
    assertThat(Slug.of(name)).isEqualTo(slug);
  }

  @ParameterizedTest
  @CsvSource({
    "../x, x",
    "CON, con",
    "nul, nul",
    "Com1, com1",
    "Soup-Ladle, soup-ladle",
    "Crème brûlée, creme-brulee",
    "a/b\\c:d, a-b-c-d",
    ".hidden, hidden",
    "deadbeef, deadbeef",
    "Löffel 🥄, loffel",
    "🥄, boat",
    "スプーン, boat",
    "...., boat",
  })
  void a_name_that_loses_something_carries_a_hash(String name, String start) {
    assertThat(Slug.of(name)).matches(start + HASH);
  }

  @Test
  void an_endless_name_is_cut_and_carries_a_hash() {
    assertThat(Slug.of("long ".repeat(60))).hasSizeLessThan(60).matches("long(-long)+" + HASH);
  }

  static Stream<String> names() {
    return Stream.of(
        "Soup Ladle",
        "Soup-Ladle",
        "Soup/Ladle",
        "Söup Ladle",
        "Soup Ladle!",
        "soup.ladle",
        "x",
        "../x",
        "/x",
        "..\\x",
        "🥄",
        "🍴",
        "スプーン",
        "",
        "con",
        "boat",
        "boat ?",
        "long ".repeat(60),
        "long ".repeat(61),
        "a".repeat(300),
        "\u0000",
        "\u202ex");
  }

  @Test
  void different_names_never_meet() {
    List<String> slugs = names().map(Slug::of).toList();
    assertThat(slugs).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("names")
  void every_slug_is_a_safe_file_name(String name) {
    assertThat(Slug.of(name)).matches("[a-z0-9]+(-[a-z0-9]+)*").hasSizeLessThan(60);
  }

  @Test
  void a_name_made_to_look_hashed_does_not_meet_the_hashed_one() {
    String hashed = Slug.of("../x");
    assertThat(Slug.of(hashed.replace('-', ' '))).isNotEqualTo(hashed);
  }
}
