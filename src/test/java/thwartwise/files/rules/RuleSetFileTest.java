package thwartwise.files.rules;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.files.boat.WrongBoats;
import thwartwise.geometry.Span;
import thwartwise.json.UnusableInput;
import thwartwise.rules.Applicability;
import thwartwise.rules.DriveKind;
import thwartwise.rules.Limit;
import thwartwise.rules.Limit.Basis;
import thwartwise.rules.Parameters.TableStep;
import thwartwise.rules.RatedBoat.HullKind;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

class RuleSetFileTest {
  private static final String WHOLE = WrongBoats.text("pond-rules.json");
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
    assertThat(RuleSetFile.bundled("/thwartwise/files/two-limits.json"))
        .isEqualTo(RuleSetFile.parse(TWO, ""));
    assertThatThrownBy(() -> RuleSetFile.bundled("/thwartwise/files/none.json"))
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
            "rules.json: a rule set without limits and formulas says nothing. Write at least one,"
                + " as in \"freeboard-at-rest\": { \"value\": 0.20, \"unit\": \"m\", ... }.");
  }

  @Test
  void every_set_that_comes_with_the_program_reads_and_says_its_source() {
    RuleBook book = RuleSetFile.bundledRuleBook();
    assertThat(book.others()).hasSize(5);
    for (RuleSet set : book.others()) {
      assertThat(set.formulas()).as(set.name()).isNotEmpty();
      assertThat(set.formulas()).allMatch(f -> !f.source().words().isBlank());
    }
    assertThat(book.others()).filteredOn(RuleSet::takesPart).hasSize(1);
    assertThat(book.base().applies().length()).isEqualTo(new Span(2.0, 6.1));
  }

  @Test
  void a_file_of_before_formulas_and_conditions_still_reads() {
    RuleSet older = RuleSetFile.parse(TWO, "rules.json");
    assertThat(older.applies()).isEqualTo(Applicability.TO_ALL);
    assertThat(older.takesPart()).isTrue();
    assertThat(older.formulas()).isEmpty();
  }

  @Test
  void every_key_of_a_set_arrives() {
    RuleSet set = beside(WHOLE);
    assertThat(set.source()).isEqualTo("a board at the slipway (READ)");
    assertThat(set.applies())
        .isEqualTo(
            new Applicability(
                new Span(2, 5),
                new Span(1, 3),
                Set.of(HullKind.OPEN_BOAT),
                Set.of(DriveKind.MANUAL, DriveKind.OUTBOARD),
                new Span(0, 3000)));
    assertThat(set.formulas()).hasSize(3);
    assertThat(set.formulas().get(0).parameters().number("people")).isEqualTo(3);
    assertThat(set.formulas().get(1).parameters().number("remote-steering")).isEqualTo(1);
    assertThat(set.formulas().get(2).parameters().steps().get("table"))
        .containsExactly(new TableStep(3, 2), new TableStep(5, 4));
    assertThat(set.formulas().get(2).title()).isEqualTo("by the board");
    assertThat(set.formulas().get(2).takesPart()).isFalse();
  }

  @Test
  void a_parameter_left_out_has_its_usual_value() {
    RuleSet set = beside(WHOLE.replace("\"remote-steering\": true, ", ""));
    assertThat(set.formulas().get(1).parameters().number("remote-steering")).isZero();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      "freeboard-at-rest" | "freebord-at-rest" | limits: there is no limit "freebord-at-rest"; the nearest is "freeboard-at-rest". Correct the name or take the limit out.
      "freeboard-at-rest" | "canoe-beam" | limits, canoe-beam: this figure has no stricter side, so no other set may state it. Take it out.
      "unit": "m" | "unit": "cm" | limits, freeboard-at-rest: "unit" is "cm", wanted "m". Turn the value into that unit.
      "unit": "m" | "unit": "m", "stricter": "lower" | limits, freeboard-at-rest: "stricter" is "lower", but this limit gets stricter the other way: "higher". Correct it or leave the key out.
      "people at most" | "persons at most" | formula 1: there is no formula "persons at most"; the nearest is "people at most". Correct the name or take the formula out.
      "people": 3 | "poeple": 3 | formula 1: the key "poeple" is not known here; the nearest known one is "people". Correct it or take it out.
      "people": 3, | `` | formula 1: the key "people" is missing. Write how many people at most.
      "people": 3 | "people": 2.5 | formula 1: "people" is 2.5, wanted a whole number. Write how many people at most.
      "people": 3 | "people": 300 | formula 1: "people" is 300, outside the believable 1 to 20. Write how many people at most.
      "remote-steering": true | "remote-steering": "yes" | formula 2: "remote-steering" is the text "yes", wanted true or false without quotes.
      [3, 2] | [3] | formula 3: "table" has a row of 1 numbers, wanted two. Write pairs of a length in metres, up to which, and so many people.
      [3, 2] | [6, 2] | formula 3: "table" does not rise at 5. Write the rows from the least to the greatest.
      "people at most", "people": 3 | "kilograms a person", "each": 80 | formula 1: "kilograms a person" limits nothing, it can only be shown beside the answer. Add "takesPart": false to it.
      "hull": ["open boat"] | "hull": ["open boats"] | applies: "hull" is "open boats", wanted one of canoe, open boat; the nearest is "open boat". Write the kinds of hull, or leave the key out.
      "manual", | "oars", | applies: "propulsion" is "oars", wanted one of manual, outboard, sail, tow. Write how such boats are driven, or leave the key out.
      "length": [2, 5] | "length": [200, 500] | applies: "length" is 200 m, outside the believable 0 to 30 m for the boats of a rule. If that was centimetres, write 2.
      "length": [2, 5] | "length": [5, 2] | applies: "length" runs from 5 to 2. Write two different numbers, the lesser first.
      "power": [0, 3000] | "power": 3000 | applies: "power" is the number 3000, wanted a list in square brackets.
      "takesPart": true | "takesPart": "yes" | "takesPart" is the text "yes", wanted true or false without quotes.
      "applies" | "apply" | the key "apply" is not known here; the nearest known one is "applies". Correct it or take it out.
      "basis": "READ", "source": "line 1" | "basis": "heard", "source": "line 1" | formula 1: "basis" is "heard", wanted one of READ, FROM MEMORY, judgement. Write how well the number is founded.
      """)
  void a_wrong_local_set_says_where_it_is_wrong_and_what_to_do(
      String replace, String by, String says) {
    assertThat(WHOLE).contains(replace);
    String wrong = WHOLE.replaceFirst(Pattern.quote(replace), by == null ? "" : by);
    assertThatThrownBy(() -> beside(wrong))
        .isInstanceOf(UnusableInput.class)
        .hasMessage("pond.json: " + says);
  }

  private static RuleSet beside(String json) {
    return RuleSetFile.alternative(json, "pond.json", RuleSetFile.cautiousDefault());
  }
}
