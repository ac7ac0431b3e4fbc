package thwartwise.crew;

import java.util.ArrayList;
import java.util.List;

/**
 * The masses some members are tried with: everyone as heavy as may be, then every mixture of
 * heaviest and lightest, then everyone a third and two thirds of the way between. Each list has one
 * mass a member; whoever was weighed has only one.
 */
public final class MassMixtures {
  private MassMixtures() {}

  static List<List<Double>> of(List<NamedPerson> members) {
    List<List<Double>> all = new ArrayList<>();
    mix(members, new ArrayList<>(), all);
    for (double share : List.of(1.0 / 3, 2.0 / 3)) {
      all.add(
          members.stream().map(m -> m.lightest() + share * (m.heaviest() - m.lightest())).toList());
    }
    return all.stream().distinct().toList();
  }

  private static void mix(List<NamedPerson> members, List<Double> sofar, List<List<Double>> all) {
    if (sofar.size() == members.size()) {
      all.add(List.copyOf(sofar));
      return;
    }
    NamedPerson next = members.get(sofar.size());
    for (double mass : List.of(next.heaviest(), next.lightest())) {
      List<Double> more = new ArrayList<>(sofar);
      more.add(mass);
      mix(members, more, all);
      if (next.heaviest() == next.lightest()) {
        return;
      }
    }
  }
}
