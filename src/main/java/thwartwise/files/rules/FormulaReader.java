package thwartwise.files.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.measure.NearestWord;
import thwartwise.measure.NumberText;
import thwartwise.measure.PrintableText;
import thwartwise.measure.UnitText;
import thwartwise.measured.BoatQuantity;
import thwartwise.rules.Formula;
import thwartwise.rules.Formulas;
import thwartwise.rules.Parameters;
import thwartwise.rules.Parameters.Parameter;
import thwartwise.rules.Parameters.TableStep;
import thwartwise.rules.RuleSet.RuleSetFormula;

/** The formulas that a rule set chooses, each with its parameters. */
final class FormulaReader {
  private static final List<String> KEYS =
      List.of("formula", "title", "takesPart", "basis", "source");
  private static final String FORMULAS =
      "Write each as in { \"formula\": \"people at most\", \"people\": 3, ... }.";
  private static final String NAME = "Write the name of a formula the program knows.";
  private static final String TITLE = "Write how the set calls it, or leave the key out.";

  private FormulaReader() {}

  /**
   * @param setTakesPart whether the set as a whole limits the recommendation
   */
  static List<RuleSetFormula> read(ObjectReader set, boolean setTakesPart) {
    return set.has("formulas")
        ? set.freeItems("formulas", "formula", FORMULAS).stream()
            .map(fields -> formula(fields, setTakesPart))
            .toList()
        : List.of();
  }

  private static RuleSetFormula formula(ObjectReader fields, boolean setTakesPart) {
    Formula formula = named(fields);
    List<String> known = new ArrayList<>(KEYS);
    formula.parameters().forEach(p -> known.add(p.name()));
    fields.allow(known);
    RuleSetFormula stated =
        new RuleSetFormula(
            formula,
            fields.has("title") ? fields.text("title", TITLE) : "",
            parameters(fields, formula),
            fields.flag("takesPart", true),
            fields.oneOf("basis", RuleSetFile.BASES, RuleSetFile.BASIS),
            UnitText.of(fields.text("source", RuleSetFile.SOURCE)));
    if (setTakesPart && stated.takesPart() && formula.reach() != Formula.Reach.MAY_LIMIT) {
      throw fields
          .spot()
          .fault(
              "\"%s\" limits nothing, it can only be shown beside the answer."
                  + " Add \"takesPart\": false to it.",
              formula.name());
    }
    return stated;
  }

  private static Formula named(ObjectReader fields) {
    String name = fields.text("formula", NAME);
    return Formulas.named(name)
        .orElseThrow(
            () ->
                fields
                    .spot()
                    .fault(
                        "there is no formula %s; the nearest is \"%s\"."
                            + " Correct the name or take the formula out.",
                        PrintableText.quoted(name),
                        NearestWord.to(name, Formulas.names()).orElseThrow()));
  }

  private static Parameters parameters(ObjectReader fields, Formula formula) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    Map<String, List<TableStep>> steps = new LinkedHashMap<>();
    for (Parameter parameter : formula.parameters()) {
      if (parameter.kind() == Parameter.Kind.STEPS) {
        steps.put(parameter.name(), steps(fields, parameter));
      } else {
        numbers.put(parameter.name(), number(fields, parameter));
      }
    }
    return new Parameters(numbers, steps);
  }

  private static double number(ObjectReader fields, Parameter parameter) {
    if (!fields.has(parameter.name()) && parameter.defaultValue().isPresent()) {
      return parameter.defaultValue().getAsDouble();
    }
    ValueReader value = fields.value(parameter.name(), remedy(parameter));
    return switch (parameter.kind()) {
      case FLAG -> value.bool() ? 1 : 0;
      case WHOLE -> believed(value.whole(BoatQuantity.COUNT, remedy(parameter)), fields, parameter);
      default -> believed(value.number(BoatQuantity.ANY, remedy(parameter)), fields, parameter);
    };
  }

  private static double believed(double number, ObjectReader fields, Parameter parameter) {
    if (number >= parameter.least() && number <= parameter.most()) {
      return number;
    }
    throw fields
        .spot()
        .fault(
            "\"%s\" is %s, outside the believable %s to %s. %s",
            parameter.name(),
            NumberText.number(number),
            NumberText.number(parameter.least()),
            NumberText.number(parameter.most()),
            remedy(parameter));
  }

  private static List<TableStep> steps(ObjectReader fields, Parameter parameter) {
    List<TableStep> steps = new ArrayList<>();
    for (ValueReader row : fields.value(parameter.name(), remedy(parameter)).list()) {
      List<ValueReader> pair = row.list();
      if (pair.size() != 2) {
        throw fields
            .spot()
            .fault(
                "\"%s\" has a row of %d numbers, wanted two. %s",
                parameter.name(), pair.size(), remedy(parameter));
      }
      double upTo =
          believed(pair.get(0).number(BoatQuantity.ANY, remedy(parameter)), fields, parameter);
      double count = pair.get(1).whole(BoatQuantity.COUNT, remedy(parameter));
      if (!steps.isEmpty() && !(upTo > steps.get(steps.size() - 1).upTo())) {
        throw fields
            .spot()
            .fault(
                "\"%s\" does not rise at %s. Write the rows from the least to the greatest.",
                parameter.name(), NumberText.number(upTo));
      }
      steps.add(new TableStep(upTo, count));
    }
    return steps;
  }

  private static String remedy(Parameter parameter) {
    return "Write " + parameter.meaning() + ".";
  }
}
