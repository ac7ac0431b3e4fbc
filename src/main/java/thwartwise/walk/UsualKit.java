package thwartwise.walk;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Things such boats carry, and what they usually weigh, kg: judgement, on the heavy side. */
enum UsualKit {
  OARS("oars", 4.5),
  PADDLE("paddle", 1),
  ANCHOR("anchor and line", 6),
  BATTERY("battery", 25),
  ELECTRIC_MOTOR("electric motor", 11),
  OUTBOARD("outboard motor", 20),
  PETROL("petrol tank", 12),
  SOLAR_PANEL("solar panel", 4),
  LAMPS("lamps", 1.5),
  WATER_CAN("water can", 11),
  TOOLS("tool bag", 4),
  BAILER("bailer", 0.5),
  BAG("bag", 8);

  private final String word;
  private final double mass;

  UsualKit(String word, double mass) {
    this.word = word;
    this.mass = mass;
  }

  double mass() {
    return mass;
  }

  static List<String> words() {
    return Arrays.stream(values()).map(k -> k.word).toList();
  }

  /** By the first words of a name, as in "battery 2". */
  static Optional<UsualKit> named(String name) {
    String typed = name.toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(k -> typed.startsWith(k.word)).findFirst();
  }
}
