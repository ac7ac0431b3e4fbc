package thwartwise.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Cleat;
import thwartwise.boat.Kit;
import thwartwise.boat.ObservedTrial;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.PointAnswer;
import thwartwise.hull.HullMeasurements;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.Property;
import thwartwise.measured.Property.Settable;
import thwartwise.record.Comparison.BoatChange;
import thwartwise.record.Comparison.BoatChange.Turn;
import thwartwise.rules.CapacityFigure;

/**
 * Every difference between the boats of two records that could change a figure: measurements and
 * statements, the rules and the program. The order of a list and who measured change none.
 */
final class BoatChanges {
  private final List<BoatChange> found = new ArrayList<>();

  private BoatChanges() {}

  static List<BoatChange> between(InspectionRecord before, InspectionRecord after) {
    BoatChanges changes = new BoatChanges();
    changes.aboard(before.boat(), after.boat());
    changes.counting(before, after);
    changes.hull(before.boat().hull(), after.boat().hull());
    changes.stated(before.boat(), after.boat());
    changes.worked(before, after);
    changes.differs(seen(before), seen(after), "what was seen of it full of water");
    changes.differs(bad(before), bad(after), "what was found not as it should be");
    return List.copyOf(changes.found);
  }

  /** Good answers and points nobody looked at change no figure. */
  private static Set<List<String>> bad(InspectionRecord record) {
    return record.boat().pointAnswers().stream()
        .filter(PointAnswer::isFault)
        .map(a -> List.of(a.point(), a.item()))
        .collect(Collectors.toSet());
  }

  /** What counted on the day of the record, or went badly. */
  private static Optional<ObservedTrial> seen(InspectionRecord record) {
    return record.boat().observedTrial().filter(t -> t.failed() || counts(record));
  }

  private static boolean counts(InspectionRecord record) {
    return record.report().observedTrial(record.boat(), record.date().toLocalDate()).isPresent();
  }

  private void aboard(Boat before, Boat after) {
    named(before.kit(), after.kit(), Kit::name, BoatChange.Carried::new);
    named(before.chambers(), after.chambers(), Chamber::name, BoatChange.Space::new);
    named(before.openings(), after.openings(), Opening::name, turn("opening", Opening::name));
    named(before.places(), after.places(), Place::name, turn("place", Place::name));
    named(before.cleats(), after.cleats(), Cleat::name, turn("cleat", Cleat::name));
    named(before.aboard(), after.aboard(), Person::name, turn("person aboard", Person::name));
  }

  private static <T> BiFunction<Optional<T>, Optional<T>, BoatChange> turn(
      String noun, Function<T, String> name) {
    return (before, after) -> {
      Turn turn = before.isEmpty() ? Turn.ADDED : after.isEmpty() ? Turn.REMOVED : Turn.CHANGED;
      return new BoatChange.Named(noun, name.apply(after.or(() -> before).orElseThrow()), turn);
    };
  }

  /** Things of the same name are the same thing; of several of one name the first is the first. */
  private <T> void named(
      List<T> before,
      List<T> after,
      Function<T, String> name,
      BiFunction<Optional<T>, Optional<T>, BoatChange> change) {
    List<T> left = new ArrayList<>(after);
    for (T old : before) {
      Optional<T> now = take(left, name.apply(old), name);
      if (!now.map(old::equals).orElse(false)) {
        found.add(change.apply(Optional.of(old), now));
      }
    }
    left.forEach(added -> found.add(change.apply(Optional.empty(), Optional.of(added))));
  }

  private static <T> Optional<T> take(List<T> from, String wanted, Function<T, String> name) {
    Optional<T> found = from.stream().filter(item -> name.apply(item).equals(wanted)).findFirst();
    found.ifPresent(from::remove);
    return found;
  }

  /** An unchanged chamber may count differently, since a test expires or kit is stowed in it. */
  private void counting(InspectionRecord before, InspectionRecord after) {
    for (Chamber chamber : before.boat().chambers()) {
      if (after.boat().chambers().contains(chamber)) {
        chamber.parts().forEach(part -> counts(part, before.report(), after.report()));
      }
    }
  }

  private void counts(ChamberPart part, Report before, Report after) {
    Optional<ChamberFigures> old = figures(part, before);
    Optional<ChamberFigures> now = figures(part, after);
    if (old.isPresent() && now.isPresent() && old.get().counted() != now.get().counted()) {
      found.add(new BoatChange.Counts(old.get(), now.get()));
    }
  }

  private static Optional<ChamberFigures> figures(ChamberPart part, Report report) {
    return report.chambers().stream().filter(c -> part.isRecordedAs(c.name())).findFirst();
  }

  private void hull(HullMeasurements before, HullMeasurements after) {
    if (before.mass() != after.mass()) {
      found.add(new BoatChange.HullMass(before.mass(), after.mass()));
    }
    differs(before.stations(), after.stations(), "the measured stations");
    differs(before.centre(), after.centre(), "the centre of gravity of the bare hull");
    properties(BoatProperties.OF_HULL, before, after);
    differs(before.decked(), after.decked(), "the lengths that are decked over");
    differs(before.skeg(), after.skeg(), "the skeg");
  }

  private void stated(Boat before, Boat after) {
    differs(before.water(), after.water(), "fresh or salt water");
    differs(before.waters(), after.waters(), "the waters it is used on");
    differs(before.propulsion(), after.propulsion(), "how it is driven");
    differs(before.electrics(), after.electrics(), "battery, motor, panel and wires");
    differs(before.outfit().rowlocks(), after.outfit().rowlocks(), "where the rowlocks stand");
    differs(before.outfit().leaks(), after.outfit().leaks(), "what leaks in");
    properties(BoatProperties.OF_BOAT.stream().map(Settable::property).toList(), before, after);
    differs(reasons(before), reasons(after), "what looks wrong and was kept with a reason");
    differs(before.assumptions(), after.assumptions(), "what the hull figures assume");
  }

  /** Every single value of the table that has words for its change. */
  private <O> void properties(List<? extends Property<O, ?>> rows, O before, O after) {
    rows.stream()
        .filter(row -> !row.changeLabel().isBlank())
        .forEach(
            row -> differs(row.value().apply(before), row.value().apply(after), row.changeLabel()));
  }

  /** A change of the measurement itself is listed already. */
  private static List<List<String>> reasons(Boat boat) {
    return boat.confirmedMeasurements().stream().map(k -> List.of(k.about(), k.reason())).toList();
  }

  private void worked(InspectionRecord before, InspectionRecord after) {
    differs(before.report().ruleSet(), after.report().ruleSet(), "the limits in force");
    differs(rules(before.report()), rules(after.report()), "the rule sets beside them");
    differs(
        before.programVersion(),
        after.programVersion(),
        "the version of the program that reckoned");
  }

  private static List<String> rules(Report report) {
    return report.capacityFigures().stream().map(BoatChanges::rule).toList();
  }

  private static String rule(CapacityFigure figure) {
    return figure.ruleSet() + "; " + figure.formula() + "; " + figure.standing();
  }

  private void differs(Object before, Object after, String what) {
    if (!Objects.equals(before, after)) {
      found.add(new BoatChange.Stated(what));
    }
  }
}
