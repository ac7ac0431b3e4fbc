package thwartwise.report;

import java.util.List;
import thwartwise.boat.MeasuringMethod;

/** The methods of measuring, as stated. */
final class MethodWords {
  private MethodWords() {}

  /** The list of them: "hull weight: bathroom scales", "kit weights of the battery: guess". */
  static List<String> of(List<MeasuringMethod> methods) {
    return methods.stream().map(MethodWords::of).toList();
  }

  private static String of(MeasuringMethod method) {
    return method.kind().word()
        + method.item().map(item -> " of the " + item).orElse("")
        + ": "
        + method.way().word();
  }
}
