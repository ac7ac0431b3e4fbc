package thwartwise.files.rules;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thwartwise.geometry.Span;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.json.WordChoice;
import thwartwise.measured.BoatQuantity;
import thwartwise.rules.Applicability;
import thwartwise.rules.DriveKind;
import thwartwise.rules.HullKind;

/** To which boats a rule set applies, as far as the program can tell; all of it may be left out. */
final class AppliesFields {
  private static final WordChoice<HullKind> HULLS =
      WordChoice.of(HullKind::word, HullKind.values());
  private static final WordChoice<DriveKind> DRIVES =
      WordChoice.of(DriveKind::word, DriveKind.values());
  private static final String LENGTH = "Write two lengths in metres, as in [0, 6.096].";
  private static final String BEAM = "Write two breadths in metres, as in [1.1, 3].";
  private static final String POWER = "Write two powers in watts, as in [0, 3000].";
  private static final String KIND = "Write the kinds of hull, or leave the key out.";
  private static final String DRIVE = "Write how such boats are driven, or leave the key out.";

  private AppliesFields() {}

  static Applicability read(ObjectReader set) {
    return set.optionalObject("applies", "length", "beam", "hull", "propulsion", "power")
        .map(AppliesFields::conditions)
        .orElse(Applicability.TO_ALL);
  }

  private static Applicability conditions(ObjectReader applies) {
    return new Applicability(
        span(applies, "length", BoatQuantity.RULE_METRES, LENGTH),
        span(applies, "beam", BoatQuantity.RULE_METRES, BEAM),
        kinds(applies.optional("hull"), HULLS, KIND),
        kinds(applies.optional("propulsion"), DRIVES, DRIVE),
        span(applies, "power", BoatQuantity.RULE_WATTS, POWER));
  }

  private static Span span(ObjectReader applies, String key, BoatQuantity quantity, String remedy) {
    return applies
        .optional(key)
        .map(value -> value.ends(quantity, remedy))
        .map(ends -> new Span(ends[0], ends[1]))
        .orElse(Span.ALL);
  }

  private static <T> Set<T> kinds(
      Optional<ValueReader> value, WordChoice<T> choice, String remedy) {
    return value
        .map(v -> v.list().stream().map(k -> k.oneOf(choice, remedy)).collect(Collectors.toSet()))
        .orElse(Set.of());
  }
}
