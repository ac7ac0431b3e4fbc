package thwartwise.files.report;

import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a rule gives, as a tree. {@code applies} is true only for a figure that takes part in the
 * answer, so that whoever takes the least of these never takes a second opinion for a limit.
 */
final class CapacityTree {
  private CapacityTree() {}

  static ObjectNode of(CapacityFigure figure) {
    ObjectNode node =
        JsonText.object().put("ruleSet", figure.ruleSet()).put("formula", figure.formula());
    if (figure.namesRegulation()) {
      node.put("namesRegulation", true);
    }
    node.put("standing", figure.standing().word())
        .put("applies", figure.takesPart())
        .put("caps", figure.caps().word())
        .put("capsPeople", figure.caps() == CapKind.PEOPLE);
    Figures.put(node, "massKg", figure.mass());
    Figures.put(node, "value", figure.value());
    node.put("unit", figure.caps().unit());
    Figures.put(node, "has", figure.has());
    if (figure.persons().isPresent()) {
      node.put("persons", figure.persons().getAsInt());
    } else {
      node.putNull("persons");
    }
    return node.put("source", figure.source()).put("note", figure.note());
  }
}
