package thwartwise.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.inspection.Margin;

/** How far inside its limit the recommended crew stays in one check, before and after. */
public record MarginChange(String check, Optional<Margin> before, Optional<Margin> after) {

  /** Every margin that is not the same, in the order of the later record. */
  static List<MarginChange> between(List<Margin> before, List<Margin> after) {
    List<Margin> left = new ArrayList<>(before);
    List<MarginChange> changes = new ArrayList<>();
    for (Margin now : after) {
      Optional<Margin> was =
          left.stream().filter(old -> old.check().equals(now.check())).findFirst();
      was.ifPresent(left::remove);
      changes.add(new MarginChange(now.check(), was, Optional.of(now)));
    }
    left.forEach(
        old -> changes.add(new MarginChange(old.check(), Optional.of(old), Optional.empty())));
    return changes.stream().filter(change -> !change.before.equals(change.after)).toList();
  }
}
