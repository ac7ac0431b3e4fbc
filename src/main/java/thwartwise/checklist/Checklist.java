package thwartwise.checklist;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Boat;

/**
 * Points to be looked at on one occasion, or at one system of the boat.
 *
 * @param when the occasion, in words
 * @param source where the points are from and how well they are founded
 * @param use whether it is printed to be ticked, or asked one by one
 */
public record Checklist(
    String name, String when, String source, ChecklistUse use, List<ChecklistPoint> points) {
  public Checklist {
    points = List.copyOf(points);
  }

  /** One that is both printed and asked. */
  public Checklist(String name, String when, String source, List<ChecklistPoint> points) {
    this(name, when, source, ChecklistUse.BOTH, points);
  }

  /** Those asked of this boat, in their order. */
  public List<ChecklistPoint> askedOf(Boat boat) {
    return points.stream().filter(point -> point.isAskedOf(boat)).toList();
  }

  /**
   * Lists with others added: a point of theirs stands in the place of the point of its id, and
   * whatever is left of them follows as a list of its own.
   *
   * @param others no two points of which have the same id
   */
  public static List<Checklist> replaced(List<Checklist> lists, List<Checklist> others) {
    Map<String, ChecklistPoint> instead =
        others.stream()
            .flatMap(list -> list.points.stream())
            .collect(Collectors.toMap(ChecklistPoint::id, point -> point));
    List<String> known =
        lists.stream().flatMap(list -> list.points.stream()).map(ChecklistPoint::id).toList();
    return Stream.concat(
            lists.stream()
                .map(
                    list ->
                        list.with(
                            list.points.stream()
                                .map(p -> instead.getOrDefault(p.id(), p))
                                .toList())),
            others.stream()
                .map(
                    list ->
                        list.with(
                            list.points.stream().filter(p -> !known.contains(p.id())).toList())))
        .filter(list -> !list.points.isEmpty())
        .toList();
  }

  private Checklist with(List<ChecklistPoint> others) {
    return new Checklist(name, when, source, use, others);
  }

  /** What is done with a checklist. */
  public enum ChecklistUse {
    /** Printed with the page, to be ticked with a pen on its occasion. */
    ON_PAPER("on paper"),
    /** Asked one by one, each answer kept with the boat. */
    ASKED("asked"),
    BOTH("asked and on paper");

    private final String word;

    ChecklistUse(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    public boolean isAsked() {
      return this != ON_PAPER;
    }

    public boolean isPrinted() {
      return this != ASKED;
    }
  }
}
