package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.boat.CrewWhenSwamped;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Kit;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/** Only what has changed on a boat that was measured before. */
class ChangedWalkTest {
  private static final Boat BEFORE = Sheet.full(true).boat();

  private static Walk walk(LocalDate today) {
    return Sheet.walk(today, new PreviousBoats(List.of(Sheet.small().boat(), BEFORE)));
  }

  /** Answers by question; whatever is not named is left at Enter. */
  private static Boat changed(LocalDate today, String... typed) {
    Map<String, String> sheet = new LinkedHashMap<>();
    sheet.put("way", "changed");
    sheet.put("changed.boat", "gravy");
    sheet.put("units", "metric");
    for (int i = 0; i < typed.length; i += 2) {
      sheet.put(typed[i], typed[i + 1]);
    }
    List<Answer> answers = new ArrayList<>();
    while (walk(today).next(answers) instanceof Step.Ask ask) {
      String line = sheet.getOrDefault(ask.question().key(), "");
      answers = new ArrayList<>(((Reply.Accepted) walk(today).take(answers, line)).answers());
    }
    return ((Step.Done) walk(today).next(answers)).boat();
  }

  @Test
  void nothing_changed_leaves_the_boat_as_it_was() {
    assertThat(changed(Sheet.TODAY)).isEqualTo(BEFORE);
  }

  /** A hand-written file does not say for which mass the reason was given. */
  @Test
  void a_reason_kept_before_stands_only_while_its_measurement_does() {
    Boat balsa =
        BEFORE
            .withHullMass(20)
            .withConfirmedMeasurements(
                List.of(new ConfirmedMeasurement("hull-mass", "balsa, weighed twice")));
    assertThat(changed(balsa).confirmedMeasurements())
        .containsExactly(
            new ConfirmedMeasurement("hull-mass", "balsa, weighed twice", Optional.of("20 kg")));
    assertThat(changed(balsa, "changed.1", "people").confirmedMeasurements()).hasSize(1);
    assertThat(
            changed(balsa, "changed.1", "weight", "changed.1.mass", "18 indeed")
                .confirmedMeasurements())
        .isEmpty();
  }

  private static Boat changed(Boat before, String... typed) {
    Walk walk = Sheet.walk(Sheet.TODAY, new PreviousBoats(List.of(before)));
    Map<String, String> sheet = new LinkedHashMap<>();
    sheet.put("way", "changed");
    sheet.put("changed.boat", "gravy");
    sheet.put("units", "metric");
    for (int i = 0; i < typed.length; i += 2) {
      sheet.put(typed[i], typed[i + 1]);
    }
    List<Answer> answers = new ArrayList<>();
    while (walk.next(answers) instanceof Step.Ask ask) {
      String key = ask.question().key();
      String line = sheet.getOrDefault(key, Sheet.unnoted(key));
      answers = new ArrayList<>(((Reply.Accepted) walk.take(answers, line)).answers());
    }
    return ((Step.Done) walk.next(answers)).boat();
  }

  /** Weighed again it is doubted at once, as it was when it was first weighed. */
  @Test
  void a_hull_weighed_again_far_too_light_is_doubted_at_its_question() {
    Walk walk = Sheet.walk(Sheet.TODAY, new PreviousBoats(List.of(BEFORE)));
    List<Answer> answers =
        List.of(
            new Answer("way", "changed"),
            new Answer("changed.boat", "gravy"),
            new Answer("units", "metric"),
            new Answer("changed.1", "weight"));
    assertThat(((Reply.Refused) walk.take(answers, "9")).reason())
        .matches(
            "9 kg is too light for such a hull: its skin alone, \\d\\.\\d m2, comes to about"
                + " \\d\\d\\.\\d\\d kg\\. Did you mean 90 kg\\?");
  }

  @Test
  void it_is_not_offered_before_any_boat_was_measured() {
    Reply.Refused refused = (Reply.Refused) Sheet.WALK.take(List.of(), "changed");
    assertThat(refused.reason()).doesNotContain("changed,");
    assertThat(((Step.Ask) Sheet.WALK.next(List.of())).question().prompt())
        .isEqualTo("Your own boat, or a borrowed one (own, borrowed) [Enter: own]:");
  }

  @Test
  void kit_is_added_moved_and_removed_one_after_the_other() {
    Boat after =
        changed(
            Sheet.TODAY,
            "changed.1",
            "added",
            "changed.1.name",
            "second battery",
            "changed.1.mass",
            "22",
            "changed.1.x",
            "0.5",
            "changed.1.y",
            "0",
            "changed.1.z",
            "0.2",
            "changed.1.fastened",
            "yes",
            "changed.1.in",
            "none",
            "changed.2",
            "moved",
            "changed.2.which",
            "motor",
            "changed.2.x",
            "0.1",
            "changed.2.y",
            "0",
            "changed.2.z",
            "0.4",
            "changed.3",
            "removed",
            "changed.3.which",
            "battery");
    assertThat(after.kit()).extracting(Kit::name).containsExactly("motor", "second battery");
    assertThat(after.kit().get(0).at().x()).isEqualTo(0.1);
    assertThat(after.kit().get(1).mass()).isEqualTo(22);
    assertThat(after.withKit(BEFORE.kit())).isEqualTo(BEFORE);
  }

  @Test
  void a_claimed_chamber_is_tested_and_the_hull_is_weighed_again() {
    Boat after =
        changed(
            Sheet.TODAY,
            "changed.1",
            "chamber",
            "changed.1.which",
            "midships",
            "changed.1.filling",
            "air",
            "changed.1.seal",
            "proven",
            "changed.1.test.date",
            "2026-05-08",
            "changed.1.test.how",
            "held under",
            "changed.1.test.minutes",
            "15",
            "changed.1.test.litresIn",
            "0",
            "changed.1.test.by",
            "me",
            "changed.2",
            "painted",
            "changed.2.mass",
            "72");
    assertThat(test(after, 1)).isEqualTo(LocalDate.of(2026, 5, 8));
    assertThat(after.hull().mass()).isEqualTo(72);
    assertThat(after.chambers().get(1).measuredVolume())
        .isEqualTo(BEFORE.chambers().get(1).measuredVolume());
  }

  private static LocalDate test(Boat boat, int chamber) {
    Chamber one = boat.chambers().get(chamber);
    return ((Filling.Air) one.filling()).test().orElseThrow().date();
  }

  @Test
  void a_boat_that_is_held_on_to_from_now_on_says_so() {
    assertThat(changed(Sheet.TODAY, "changed.1", "swamped").whenSwamped())
        .contains(CrewWhenSwamped.SIT_IN_IT);
    Boat held =
        changed(Sheet.TODAY, "changed.1", "swamped", "changed.1.whenSwamped", "hold on to it");
    assertThat(held).isEqualTo(BEFORE.whenSwamped(CrewWhenSwamped.HOLD_ON));
  }

  @Test
  void a_new_cut_in_the_transom_joins_the_openings() {
    Boat after =
        changed(
            Sheet.TODAY,
            "changed.1",
            "cut",
            "changed.1.kind",
            "cable hole",
            "changed.1.into",
            "boat",
            "changed.1.x",
            "0",
            "changed.1.y",
            "0.1",
            "changed.1.z",
            "0.3",
            "changed.1.diameter",
            "0.02");
    assertThat(after.openings()).hasSize(BEFORE.openings().size() + 1);
    assertThat(after.openings().get(2).name()).isEqualTo("cable hole");
  }

  /** The fore locker was tested on 2 May 2026. */
  @Test
  void a_test_that_has_grown_old_is_asked_for_again() {
    LocalDate later = LocalDate.of(2027, 5, 3);
    assertThat(changed(later)).isEqualTo(BEFORE);
    Boat again =
        changed(
            later,
            "old.fore locker",
            "yes",
            "old.fore locker.filling",
            "air",
            "old.fore locker.seal",
            "proven",
            "old.fore locker.test.date",
            "2027-05-02",
            "old.fore locker.test.how",
            "held under",
            "old.fore locker.test.minutes",
            "15",
            "old.fore locker.test.litresIn",
            "0",
            "old.fore locker.test.by",
            "me");
    assertThat(test(again, 0)).isEqualTo(LocalDate.of(2027, 5, 2));
  }

  /** A hatch in a chamber: what was tested was another chamber, until somebody tests this one. */
  @Test
  void a_hole_cut_into_a_proven_chamber_makes_its_test_count_for_nothing() {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("changed.1", "cut");
    typed.put("changed.1.kind", "deck hatch");
    typed.put("changed.1.name", "hatch");
    typed.put("changed.1.into", "fore locker");
    typed.put("changed.1.x", "3");
    typed.put("changed.1.y", "0");
    typed.put("changed.1.z", "0.35");
    typed.put("changed.1.width", "0.2");
    typed.put("changed.1.closedBy", "lid");
    Boat cut = changed(BEFORE, Sheet.TODAY, typed);
    assertThat(BoatModel.of(BEFORE, Sheet.TODAY).spaces().get(0).counting().share()).isPositive();
    assertThat(((Filling.Air) cut.chambers().get(0).filling()).repaired()).contains(Sheet.TODAY);
    assertThat(BoatModel.of(cut, Sheet.TODAY).spaces().get(0).counting().share()).isZero();
    typed.put("old.fore locker", "yes");
    typed.putAll(test("old.fore locker", "2026-05-08"));
    Boat tested = changed(BEFORE, Sheet.TODAY, typed);
    assertThat(BoatModel.of(tested, Sheet.TODAY).spaces().get(0).counting().share()).isPositive();
  }

  /** The boat of the sheet, the foam along its sides cut out and seats of air in its place. */
  private static Boat withSideSeats() {
    SealTest test = new SealTest(LocalDate.of(2026, 5, 2), "held under", 15, 0, "me");
    return BEFORE.withChambers(
        List.of(
            BEFORE.chambers().get(0),
            BEFORE.chambers().get(1),
            BEFORE.chambers().get(2).filledWith(new Filling.Air(Seal.PROVEN, Optional.of(test)))));
  }

  private static Boat changed(Boat before, LocalDate today, Map<String, String> typed) {
    Walk walk = Sheet.walk(today, new PreviousBoats(List.of(before)));
    Map<String, String> sheet = new LinkedHashMap<>(typed);
    sheet.put("way", "changed");
    sheet.put("changed.boat", "gravy");
    sheet.put("units", "metric");
    List<Answer> answers = new ArrayList<>();
    while (walk.next(answers) instanceof Step.Ask ask) {
      String line = sheet.getOrDefault(ask.question().key(), "");
      answers = new ArrayList<>(((Reply.Accepted) walk.take(answers, line)).answers());
    }
    return ((Step.Done) walk.next(answers)).boat();
  }

  private static Map<String, String> test(String key, String day) {
    return Map.of(
        key + ".filling", "air",
        key + ".seal", "proven",
        key + ".test.date", day,
        key + ".test.how", "held under",
        key + ".test.minutes", "15",
        key + ".test.litresIn", "0",
        key + ".test.by", "me");
  }

  @Test
  void of_twins_only_the_side_that_is_named_was_tested() {
    Boat seats = withSideSeats();
    Map<String, String> typed = new LinkedHashMap<>(test("changed.1", "2026-05-08"));
    typed.put("changed.1", "chamber");
    typed.put("changed.1.which", "side foam, starboard");
    List<ChamberPart> parts = changed(seats, Sheet.TODAY, typed).chambers().get(2).parts();
    assertThat(parts.get(0).test().orElseThrow().date()).isEqualTo("2026-05-02");
    assertThat(parts.get(1).test().orElseThrow().date()).isEqualTo("2026-05-08");
    assertThat(parts).noneMatch(ChamberPart::sharesSeal);
  }

  @Test
  void a_test_that_does_not_say_of_which_side_is_asked() {
    Walk walk = Sheet.walk(Sheet.TODAY, new PreviousBoats(List.of(withSideSeats())));
    List<Answer> answers = List.of();
    for (String line : List.of("changed", "gravy", "metric", "chamber")) {
      answers = ((Reply.Accepted) walk.take(answers, line)).answers();
    }
    assertThat(((Reply.Refused) walk.take(answers, "side foam")).reason())
        .isEqualTo(
            "\"side foam\" is not one of these. Type one of: fore locker; midships thwart; side foam,"
                + " port; side foam, starboard.");
  }

  @Test
  void each_side_is_asked_about_by_itself_when_the_test_for_both_has_grown_old() {
    LocalDate later = LocalDate.of(2027, 5, 3);
    Map<String, String> typed = new LinkedHashMap<>(test("old.side foam, starboard", "2027-05-02"));
    typed.put("old.side foam, starboard", "yes");
    List<ChamberPart> parts = changed(withSideSeats(), later, typed).chambers().get(2).parts();
    assertThat(parts.get(0).test().orElseThrow().date()).isEqualTo("2026-05-02");
    assertThat(parts.get(1).test().orElseThrow().date()).isEqualTo("2027-05-02");
  }
}
