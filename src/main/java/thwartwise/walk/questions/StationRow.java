package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import thwartwise.hull.LineName;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.QuestionDefinition;

/**
 * The contents of a row about one station, in the order of its questions.
 *
 * @param stations number of stations
 * @param points from keel to rail
 */
record StationRow(int number, int stations, int points) {
  private static final String FORWARD = "forward";
  private static final String OUT = "out";
  private static final String FROM = "from the aftmost point of the boat";
  private static final String UP = "up";

  /** A row for a whole station; Enter alone asks for its values one by one. */
  <T> QuestionDefinition<T> entry(QuestionDefinition<T> name) {
    List<String> order = new ArrayList<>();
    if (isEnd()) {
      order.add("upright: yes or no");
    }
    if (number > 1) {
      order.add(FORWARD);
    }
    order.add("keel " + UP);
    order.addAll(side());
    return name.rowOrEnter("Station " + number, order);
  }

  private boolean isEnd() {
    return number == 1 || number == stations;
  }

  /** The title of a raked end; a station between the ends has none. */
  List<String> ofRakedEnd() {
    if (!isEnd()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    lines.add("upright: yes if a plumb line touches the whole end; then the row as prompted.");
    lines.addAll(
        Question.wrapped(
            "A raked end: no; " + String.join("; ", rakedOrder()) + ". Forward is " + FROM + "."));
    return lines;
  }

  /** The rest of a row for a raked end: the x of each point. */
  <T> QuestionDefinition<T> ofRaked(QuestionDefinition<T> first) {
    return first.row("Station " + number, rakedOrder());
  }

  private List<String> rakedOrder() {
    List<String> order = new ArrayList<>();
    for (int point = 0; point < points; point++) {
      order.add(LineName.of(point, points) + " " + FORWARD);
      if (point > 0) {
        order.add(OUT);
      }
      order.add(UP);
    }
    return order;
  }

  /** The row for the other side of a boat with unequal sides. */
  <T> QuestionDefinition<T> ofStarboard(QuestionDefinition<T> first) {
    return first.row("Station " + number + " to starboard", side());
  }

  private List<String> side() {
    List<String> order = new ArrayList<>();
    for (int point = 1; point < points; point++) {
      order.add(LineName.of(point, points) + " " + OUT);
      order.add(UP);
    }
    return order;
  }
}
