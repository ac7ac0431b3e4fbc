package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;

/** The sections of a walk, and how far a replay has come in them. */
final class Itinerary {
  private List<WalkSection> sections = List.of();
  private int at;
  private int givenBefore;
  private int expected;

  void plan(List<WalkSection> planned) {
    sections = List.copyOf(planned);
  }

  /**
   * @param given answers before it
   */
  void begin(WalkSection section, int given) {
    at = Math.max(at, sections.indexOf(section));
    givenBefore = given;
    expected = section.questions();
  }

  /** Once it is known how many questions the section has. */
  void expect(int questions) {
    expected = questions;
  }

  Optional<WalkPosition> position(int given) {
    if (sections.isEmpty()) {
      return Optional.empty();
    }
    int here = Math.max(1, expected - (given - givenBefore));
    int later =
        sections.subList(at + 1, sections.size()).stream().mapToInt(WalkSection::questions).sum();
    return Optional.of(
        new WalkPosition(sections.get(at).name(), at + 1, sections.size(), here + later));
  }
}
