package thwartwise.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.rules.Basis;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

class RuleSetFileTest {
  private static final String TWO = WrongBoats.text("two-limits.json");

  @Test
  void every_limit_arrives_with_its_source_and_basis() {
    RuleSet rules = RuleSetFile.parse(TWO, "rules.json");
    assertThat(rules.name()).isEqualTo("Trial set");
    assertThat(rules.edition()).isEqualTo("2026");
    assertThat(rules.appliesTo()).isEqualTo("open boats on a pond");
    assertThat(rules.limits()).hasSize(2);
    assertThat(rules.limit("freeboard-at-rest"))
        .isEqualTo(new Limit(0.20, "m", Basis.JUDGEMENT, "small-craft practice"));
    assertThat(rules.limit("heel-swamped"))
        .isEqualTo(new Limit(10, "deg", Basis.READ, "33 CFR 183.235"));
  }

  @Test
  void a_set_that_came_with_the_program_is_read_from_its_resources() {
    assertThat(RuleSetFile.shipped("/thwartwise/files/two-limits.json"))
        .isEqualTo(RuleSetFile.parse(TWO, ""));
    assertThatThrownBy(() -> RuleSetFile.shipped("/thwartwise/files/none.json"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("The program came without its rule set /thwartwise/files/none.json");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      rules/1 | boat/1 | this is a boat file, wanted a rules file. Name another file.
      rules/1 | rules/7 | this is a rules file of version 7 and this program reads version 1. A newer program is needed.
      "edition" | "editon" | the key "editon" is not known here; the nearest known one is "edition". Correct it or take it out.
      "value": 0.20, | `` | limits, freeboard-at-rest: the key "value" is missing. Write the number as the source has it.
      0.20 | NaN | limits, freeboard-at-rest: "value" is NaN, which nobody measured. Write the number as the source has it.
      judgement | hearsay | limits, freeboard-at-rest: "basis" is "hearsay", wanted one of READ, FROM MEMORY, judgement. Write how well the number is founded.
      "33 CFR 183.235" | "" | limits, heel-swamped: "source" is empty. Write title and section, or what the judgement leans on.
      """)
  void a_wrong_rule_set_says_where_it_is_wrong(String replace, String by, String says) {
    String wrong = TWO.replace(replace, by == null ? "" : by);
    assertThatThrownBy(() -> RuleSetFile.parse(wrong, "rules.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage("rules.json: " + says);
  }

  @Test
  void a_set_without_limits_is_refused() {
    String empty = TWO.substring(0, TWO.indexOf("\"limits\"")) + "\"limits\": {} }";
    assertThatThrownBy(() -> RuleSetFile.parse(empty, "rules.json"))
        .hasMessage(
            "rules.json: limits: a rule set without limits limits nothing. Write at least one,"
                + " as in \"freeboard-at-rest\": { \"value\": 0.20, \"unit\": \"m\", ... }.");
  }
}
