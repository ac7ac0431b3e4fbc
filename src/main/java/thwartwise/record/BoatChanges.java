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
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.PointAnswer;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.TimedRun;
import thwartwise.hull.HullMeasurements;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.ElectricalProperties;
import thwartwise.measured.OutfitProperties;
import thwartwise.measured.PartProperties;
import thwartwise.measured.Property;
import thwartwise.measured.Property.Settable;
import thwartwise.measured.PropertyDifference;
import thwartwise.measured.WireProperties;
import thwartwise.record.Comparison.BoatChange;
import thwartwise.record.Comparison.BoatChange.Turn;
import thwartwise.rules.CapacityFigure;

/**
 * All differences between the boats of two records that could change a figure: measurements,
 * statements, rules, program version. The order of a list and the name of the measurer do not
 * count.
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
    changes.differs(before.boat().proofs(), after.boat().proofs(), "what was read of it afloat");
    changes.differs(bad(before), bad(after), "what was found not as it should be");
    return List.copyOf(changes.found);
  }

  /**
   * The answers that matter: a good answer, or a point that nobody looked at, changes no figure.
   */
  private static Set<List<String>> bad(InspectionRecord record) {
    return record.boat().pointAnswers().stream()
        .filter(PointAnswer::isFault)
        .map(a -> List.of(a.point(), a.item()))
        .collect(Collectors.toSet());
  }

  /** The trial that counted on the day of the record, or one that failed. */
  private static Optional<ObservedTrial> seen(InspectionRecord record) {
    return record.boat().observedTrial().filter(t -> t.failed() || counts(record));
  }

  private static boolean counts(InspectionRecord record) {
    return record.report().observedTrial(record.boat(), record.date().toLocalDate()).isPresent();
  }

  private void aboard(Boat before, Boat after) {
    named(before.kit(), after.kit(), Kit::name, BoatChange.Carried::new);
    named(before.chambers(), after.chambers(), Chamber::name, BoatChange.Space::new);
    things(
        "opening", before.openings(), after.openings(), Opening::name, PartProperties.OF_OPENING);
    things("place", before.places(), after.places(), Place::name, PartProperties.OF_PLACE);
    things("cleat", before.cleats(), after.cleats(), Cleat::name, List.of());
    things(
        "person aboard", before.aboard(), after.aboard(), Person::name, BoatProperties.OF_PERSON);
    things(
        "leak",
        before.outfit().leaks(),
        after.outfit().leaks(),
        SeamLeak::seam,
        OutfitProperties.OF_LEAK);
  }

  private <T> void things(
      String noun,
      List<T> before,
      List<T> after,
      Function<T, String> name,
      List<Property<T, ?>> rows) {
    named(
        before,
        after,
        name,
        (was, is) -> thing(noun, name.apply(is.or(() -> was).orElseThrow()), was, is, rows));
  }

  private static <T> BoatChange thing(
      String noun, String name, Optional<T> before, Optional<T> after, List<Property<T, ?>> rows) {
    if (before.isEmpty() || after.isEmpty()) {
      Turn turn = before.isEmpty() ? Turn.ADDED : Turn.REMOVED;
      return new BoatChange.Named(noun, name, turn, List.of());
    }
    return new BoatChange.Named(
        noun, name, Turn.CHANGED, PropertyDifference.between(rows, before.get(), after.get()));
  }

  private void electrics(ElectricalSystem before, ElectricalSystem after) {
    part(
        "label of the battery", before.battery(), after.battery(), ElectricalProperties.OF_BATTERY);
    part("plate of the motor", before.motor(), after.motor(), ElectricalProperties.OF_MOTOR);
    things(
        "timed run", before.runs(), after.runs(), TimedRun::setting, ElectricalProperties.OF_RUN);
    part("label of the panel", before.panel(), after.panel(), ElectricalProperties.OF_PANEL);
    part("main wire", before.mainWire(), after.mainWire(), WireProperties.OF_MAIN_WIRE);
    things("wires", before.circuits(), after.circuits(), Circuit::name, WireProperties.OF_CIRCUIT);
    properties(ElectricalProperties.OF_SYSTEM, before, after);
  }

  /** The change of something that a boat has once or not at all. */
  private <T> void part(
      String noun, Optional<T> before, Optional<T> after, List<Property<T, ?>> rows) {
    if (!before.equals(after)) {
      found.add(thing(noun, "", before, after, rows));
    }
  }

  /**
   * The changes of things with names. Things of the same name are the same thing; of several, the
   * first is compared with the first.
   */
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

  /**
   * A chamber with unchanged measurements can count differently, because a test expires or kit is
   * stowed in it.
   */
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
    properties(BoatProperties.OF_WATERS, before.waters(), after.waters());
    properties(PartProperties.OF_PROPULSION, before.propulsion(), after.propulsion());
    electrics(before.electrics(), after.electrics());
    differs(before.outfit().rowlocks(), after.outfit().rowlocks(), "where the rowlocks stand");
    differs(before.methods(), after.methods(), "how it was measured");
    properties(BoatProperties.OF_BOAT.stream().map(Settable::property).toList(), before, after);
    differs(reasons(before), reasons(after), "what looks wrong and was kept with a reason");
    differs(before.assumptions(), after.assumptions(), "what the hull figures assume");
  }

  /** The changes of single values that have a name. */
  private <O> void properties(List<? extends Property<O, ?>> rows, O before, O after) {
    PropertyDifference.between(rows, before, after)
        .forEach(difference -> found.add(new BoatChange.Single(difference)));
  }

  /**
   * The reasons for confirmed measurements. A change of the measurement itself is listed already.
   */
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
