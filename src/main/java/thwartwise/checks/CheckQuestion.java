package thwartwise.checks;

import java.util.Comparator;
import java.util.List;

/**
 * One figure that is asked of the boat.
 *
 * @param things the names of its things, as somebody typed them: a chamber, a hatch, a cleat; empty
 *     where it is about the boat
 */
public record CheckQuestion(CheckId check, Measure measure, List<String> things)
    implements Comparable<CheckQuestion> {
  private static final Comparator<CheckQuestion> ORDER =
      Comparator.comparing(CheckQuestion::check)
          .thenComparing(q -> q.things, CheckQuestion::compare)
          .thenComparing(CheckQuestion::measure);

  public CheckQuestion {
    things = List.copyOf(things);
  }

  public static CheckQuestion of(CheckId check, Measure measure, String... things) {
    return new CheckQuestion(check, measure, List.of(things));
  }

  /** Its subject, whichever of its figures it is. */
  public Subject subject() {
    return check.subject() == check
        ? new Subject(check, things)
        : new Subject(check.subject(), List.of());
  }

  public boolean asks(CheckId wanted, Measure figure) {
    return check == wanted && measure == figure;
  }

  @Override
  public int compareTo(CheckQuestion other) {
    return ORDER.compare(this, other);
  }

  private static int compare(List<String> a, List<String> b) {
    for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
      int difference = a.get(i).compareTo(b.get(i));
      if (difference != 0) {
        return difference;
      }
    }
    return Integer.compare(a.size(), b.size());
  }

  /**
   * The subject of several figures.
   *
   * @param check the first of those that share it
   */
  public record Subject(CheckId check, List<String> names) implements Comparable<Subject> {
    public Subject {
      names = List.copyOf(names);
    }

    @Override
    public int compareTo(Subject other) {
      int difference = check.compareTo(other.check);
      return difference != 0 ? difference : compare(names, other.names);
    }
  }
}
