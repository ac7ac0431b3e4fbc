package thwartwise.record;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;

class OverdueItemTest {
  private static final LocalDate TESTED = LocalDate.of(2026, 5, 2);
  private final Boat boat = SampleBoats.plain();

  @Test
  void a_boat_inspected_and_tested_within_the_year_owes_nothing() {
    assertThat(due(TESTED, TESTED.plusMonths(12))).isEmpty();
  }

  @Test
  void a_leak_test_is_due_on_the_day_it_no_longer_counts() {
    LocalDate stale = TESTED.plusMonths(12).plusDays(1);
    assertThat(due(stale, stale))
        .containsExactly(new OverdueItem.LeakTest("fore locker", LocalDate.of(2026, 5, 2)));
    // The inspection itself counts the chamber on the day before and no longer on this one.
    assertThat(counted(stale.minusDays(1))).isTrue();
    assertThat(counted(stale)).isFalse();
  }

  @Test
  void an_inspection_over_a_year_old_is_due() {
    LocalDate today = LocalDate.of(2026, 6, 1);
    assertThat(due(LocalDate.of(2025, 6, 1), today)).isEmpty();
    assertThat(due(LocalDate.of(2025, 5, 31), today))
        .containsExactly(new OverdueItem.Inspection(LocalDate.of(2025, 5, 31)));
  }

  @Test
  void a_boat_never_inspected_says_so() {
    assertThat(FleetRow.overdueItems(boat, Optional.empty(), false, TESTED))
        .containsExactly(new OverdueItem.FirstInspection());
  }

  @Test
  void a_file_changed_since_is_due() {
    assertThat(FleetRow.overdueItems(boat, Optional.of(TESTED), true, TESTED))
        .containsExactly(new OverdueItem.ChangedFile());
  }

  private java.util.List<OverdueItem> due(LocalDate inspected, LocalDate today) {
    return FleetRow.overdueItems(boat, Optional.of(inspected), false, today);
  }

  private boolean counted(LocalDate today) {
    return BoatModel.of(boat, today).spaces().stream()
        .filter(space -> space.name().equals("fore locker"))
        .anyMatch(space -> space.counting().share() > 0);
  }
}
