package thwartwise.checklist;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Boat;

/**
 * Points to look at on one occasion or at one system of the boat.
 *
 * @param when the occasion, in words
 * @param source the origin of the points and how well they are founded
 * @param use whether it is printed to be ticked, or asked point by point
 */
public record Checklist(
    String name, String when, String source, ChecklistUse use, List<ChecklistPoint> points) {
  public Checklist {
    points = List.copyOf(points);
  }

  /** A list that is both printed and asked. */
  public Checklist(String name, String when, String source, List<ChecklistPoint> points) {
    this(name, when, source, ChecklistUse.BOTH, points);
  }

  /** The points that concern this boat, in their order. */
  public List<ChecklistPoint> askedOf(Boat boat) {
    return points.stream().filter(point -> point.isAskedOf(boat)).toList();
  }

  /**
   * These lists with others added. A point of the others replaces the point with the same id; their
   * remaining points follow as lists of their own.
   *
   * @param others lists in which no id occurs twice
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

  /** The use of a checklist. */
  public enum ChecklistUse {
    /** Printed with the page, to be ticked with a pen on its occasion. */
    ON_PAPER("on paper"),
    /** Asked point by point; the answers are stored with the boat. */
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
