package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Person;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.NamedPerson;
import thwartwise.inspection.JudgedBoat;
import thwartwise.inspection.Report;
import thwartwise.record.SampleBoats;

class JudgedBoatsTest {
  private static final Boat EMPTY = SampleBoats.plain().withAboard(List.of());

  private final List<Boat> fromTheStart = new ArrayList<>();
  private final JudgedBoats judged = new JudgedBoats();

  private JudgedBoat judged(Boat boat) {
    return judged.of(
        boat,
        () -> {
          fromTheStart.add(boat);
          return new NamedBoat(boat);
        });
  }

  private record NamedBoat(Boat boat) implements JudgedBoat {
    @Override
    public Report report() {
      throw new UnsupportedOperationException();
    }

    @Override
    public JudgedBoat withAboard(List<Person> people) {
      return new NamedBoat(boat.withAboard(people));
    }

    @Override
    public CrewAnswer seats(List<NamedPerson> members) {
      throw new UnsupportedOperationException();
    }
  }

  private static Boat with(String name, double mass) {
    return EMPTY.withAboard(List.of(new Person(name, mass, EMPTY.places().get(0).name(), 0)));
  }

  @Test
  void a_boat_with_other_people_aboard_is_not_judged_from_the_start() {
    for (Boat boat : List.of(with("Ann", 60), with("Ann", 80), with("Bo", 80), EMPTY)) {
      assertThat(judged(boat)).isEqualTo(new NamedBoat(boat));
      assertThat(judged(boat)).isSameAs(judged(boat));
    }
    assertThat(fromTheStart).containsExactly(with("Ann", 60));
  }

  @Test
  void a_boat_with_other_kit_is() {
    Boat bare = EMPTY.withKit(List.of());
    assertThat(judged(EMPTY)).isEqualTo(new NamedBoat(EMPTY));
    assertThat(judged(bare)).isEqualTo(new NamedBoat(bare));
    assertThat(fromTheStart).containsExactly(EMPTY, bare);
  }
}
