package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.crew.Recommendation;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleRecords;
import thwartwise.today.TodayPage;

/**
 * One adult, or two people of 92 kg: a step of three kilograms is told as one wherever it shows.
 */
class NearlyOneMoreTest {
  private static final String TOLD = "Two people of up to 92 kg each, not of 95 kg";

  private static Stream<String> screens(Recommendation crew) {
    InspectionRecord record = SampleBoat.record(SampleRecords.report(crew, List.of()));
    return Stream.of(
            TextPage.of(record),
            CardPage.text(record, "1"),
            String.join(" ", Screen.of(record, Screen.ROWS)),
            TodayPage.opening(record))
        .map(text -> text.replaceAll("[\\s\u00a0]+", " "));
  }

  @Test
  void page_card_screen_and_today_tell_of_it() {
    assertThat(screens(SampleRecords.nearlyTwo())).hasSize(4).allMatch(s -> s.contains(TOLD));
  }

  @Test
  void a_wider_step_and_a_second_adult_are_not_told_of() {
    assertThat(screens(SampleRecords.recommendation())).noneMatch(s -> s.contains(", not of 95"));
    assertThat(SampleRecords.twoUpTo(92).nearlyOneMore()).isPresent();
    assertThat(SampleRecords.twoUpTo(91.9).nearlyOneMore()).isEmpty();
    assertThat(SampleRecords.twoUpTo(95).nearlyOneMore()).isEmpty();
  }
}
