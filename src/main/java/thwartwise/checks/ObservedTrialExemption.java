package thwartwise.checks;

import java.util.List;
import thwartwise.boat.Loading;
import thwartwise.boat.ObservedTrial;
import thwartwise.loadcase.LoadedBoat;

/**
 * A check about the swamped boat that asks nothing of people who were seen in it full of water:
 * with the kit as listed and nothing else aboard, what was seen comes before what is worked out.
 */
record ObservedTrialExemption(Check check, ObservedTrial seen) implements Check {
  @Override
  public Role role() {
    return check.role();
  }

  @Override
  public boolean aboutSwamped() {
    return check.aboutSwamped();
  }

  @Override
  public boolean byVolumesAlone() {
    return check.byVolumesAlone();
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    Loading loading = boat.loading();
    return loading.extra().isEmpty() && seen.covers(loading.people())
        ? List.of()
        : check.readings(boat);
  }
}
