package thwartwise.walk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.boat.Boat;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.BoatQuantity;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WalkSection;
import thwartwise.walk.engine.WordQuestions;
import thwartwise.walk.questions.BasicQuestions;
import thwartwise.walk.questions.ChamberQuestions;
import thwartwise.walk.questions.ConfirmationQuestions;
import thwartwise.walk.questions.ElectricalQuestions;
import thwartwise.walk.questions.FillingQuestions;
import thwartwise.walk.questions.GuessedMasses;
import thwartwise.walk.questions.KitPositionQuestions;
import thwartwise.walk.questions.KitQuestions;
import thwartwise.walk.questions.MethodQuestions;
import thwartwise.walk.questions.OpeningQuestions;
import thwartwise.walk.questions.OutfitQuestions;
import thwartwise.walk.questions.Outline;
import thwartwise.walk.questions.PeopleQuestions;
import thwartwise.walk.questions.SkinWarnings;
import thwartwise.walk.questions.SwampedQuestion;

/**
 * The walk of changes: one change after another to a boat measured before, then the tests that are
 * out of date. Everything else is taken from the boat file.
 */
final class ChangedScript {
  private static final int MOST = 40;

  private static final WalkSection CHANGES = new WalkSection("what has changed", 8);
  private static final WalkSection OLD = new WalkSection("what has grown old", 1);
  private static final WalkSection END = new WalkSection("what looks wrong, and the end", 1);

  private final LocalDate today;
  private final PreviousBoats known;
  private final SwampedQuestion swamped;
  private final ConfirmationQuestions kept;
  private final PlausibleLimits limits;

  ChangedScript(
      LocalDate today, PreviousBoats known, PlausibleLimits limits, ConfirmationQuestions kept) {
    this.swamped = new SwampedQuestion(limits);
    this.limits = limits;
    this.today = today;
    this.known = known;
    this.kept = kept;
  }

  Boat boat(Replay replay) {
    replay.plan(List.of(CHANGES, OLD, END));
    replay.begin(CHANGES);
    Boat boat = kept.bound(known.named(which(replay)));
    UnitSystem units = new BasicQuestions(replay).units(boat.units());
    QuantityQuestions quantities = new QuantityQuestions(units);
    boat = boat.in(units);
    for (int number = 1; number <= MOST; number++) {
      replay.known(boat, units);
      String key = "changed." + number;
      What what = replay.ask(what(key, boat, number));
      if (what == What.NOTHING) {
        break;
      }
      boat = what.change.to(new At(replay, quantities, today, swamped, limits, key), boat);
    }
    replay.begin(OLD);
    boat = new OutdatedTests(replay, quantities, today).asked(boat);
    replay.begin(END);
    boat = kept.confirmed(replay, boat);
    BasicQuestions.finish(replay, boat.withAssumptions(replay.guesses()));
    return boat;
  }

  private String which(Replay replay) {
    return replay.ask(
        WordQuestions.oneOf("changed.boat", "Which boat", known.names())
            .how("One of: " + ChoiceReader.listed(known.names()) + ".")
            .why("Everything that is not asked is taken from its boat file."));
  }

  /** The place in the walk at which a change is asked for. */
  record At(
      Replay replay,
      QuantityQuestions quantities,
      LocalDate today,
      SwampedQuestion swamped,
      PlausibleLimits limits,
      String key) {
    Outline outline(Boat boat) {
      return new Outline(boat.hull().stations());
    }

    KitQuestions kit(Boat boat) {
      return new KitQuestions(
          replay,
          quantities,
          outline(boat),
          boat.chambers(),
          boat.places(),
          limits,
          boat.propulsion());
    }

    /** The item of a list that the person named. */
    <T> T one(String subject, List<T> items, Function<T, String> name) {
      String named =
          replay.ask(
              WordQuestions.oneOf(key + ".which", subject, items.stream().map(name).toList())
                  .how("Its name, or a beginning of it.")
                  .why("Everything else stays as it was."));
      return items.stream().filter(i -> name.apply(i).equals(named)).findFirst().orElseThrow();
    }
  }

  /** A kind of change. */
  private interface Made {
    Boat to(At at, Boat boat);
  }

  private enum What {
    NOTHING(ChangedScript::same),
    KIT_ADDED(ChangedScript::kitAdded),
    KIT_REMOVED(ChangedScript::kitRemoved),
    KIT_MOVED(ChangedScript::kitMoved),
    CHAMBER(ChangedScript::chamber),
    CUT(ChangedScript::cut),
    WEIGHED(ChangedScript::weighed),
    SWAMPED(ChangedScript::swamped),
    ELECTRICS(ChangedScript::electrics),
    OUTFIT(ChangedScript::outfit),
    METHODS(ChangedScript::methods),
    PEOPLE(ChangedScript::people);

    private final Made change;

    What(Made change) {
      this.change = change;
    }
  }

  private QuestionDefinition<What> what(String key, Boat boat, int number) {
    ChoiceReader<What> choices =
        ChoiceReader.of(What.NOTHING, "nothing", "no", "done")
            .or(What.KIT_ADDED, "added", "kit added");
    if (!boat.kit().isEmpty()) {
      choices = choices.or(What.KIT_REMOVED, "removed").or(What.KIT_MOVED, "moved");
    }
    if (!boat.chambers().isEmpty()) {
      choices = choices.or(What.CHAMBER, "chamber");
    }
    choices =
        choices
            .or(What.CUT, "cut", "hole", "opening", "hatch", "pocket", "deck plate")
            .or(What.WEIGHED, "weight", "weighed", "painted")
            .or(What.PEOPLE, "people")
            .or(What.ELECTRICS, "electrics", "electric", "battery", "motor", "wires", "panel")
            .or(What.OUTFIT, "outfit", "rowlocks", "cleat", "anchor", "leak")
            .or(What.METHODS, "how measured", "measured", "tape", "scales");
    if (swamped.isAskedOf(boat.hull().stations())) {
      choices = choices.or(What.SWAMPED, "swamped");
    }
    return WordQuestions.choice(
            key, number == 1 ? "What has changed" : "What else has changed", choices)
        .how(
            "added, removed, moved: kit. chamber: opened, sealed or tested. cut: a new",
            "notch, hole, hatch or pocket. weight: painted, mended or soaked, weighed again.",
            "people: who is aboard. swamped: whether people sit in it then or hold on to it.",
            "electrics: labels of battery and motor, a timed run, panel, wires. outfit:",
            "rowlocks, cleat, anchor line or leak. how measured: by tape, scales or jug.",
            "Or in a row: weight; and the mass.")
        .why("A change can cost a person or gain one; before and after are both shown.")
        .orElse(What.NOTHING, "nothing");
  }

  private static Boat same(At at, Boat boat) {
    return boat;
  }

  private static Boat outfit(At at, Boat boat) {
    return new OutfitQuestions(at.replay(), at.quantities()).item(at.key(), boat).apply(boat);
  }

  private static Boat methods(At at, Boat boat) {
    return new MethodQuestions(at.replay(), at.limits(), at.quantities().system())
        .changed(at.key(), boat);
  }

  private static Boat kitAdded(At at, Boat boat) {
    List<Kit> kit = new ArrayList<>(boat.kit());
    Kit added = at.kit(boat).item(at.key(), boat.kit());
    kit.add(added);
    return GuessedMasses.added(at.replay(), at.key() + ".mass", added, boat.withKit(kit));
  }

  private static Boat kitRemoved(At at, Boat boat) {
    Kit gone = at.one("Taken out of the boat", boat.kit(), Kit::name);
    return GuessedMasses.removed(
        gone, boat.withKit(boat.kit().stream().filter(k -> k != gone).toList()));
  }

  private static Boat kitMoved(At at, Boat boat) {
    Kit moved = at.one("Moved", boat.kit(), Kit::name);
    String subject = "Kit " + WordQuestions.quoted(moved.name());
    KitPositionQuestions position =
        new KitPositionQuestions(at.replay(), at.quantities(), at.outline(boat), at.limits());
    Kit there = moved.movedTo(position.at(at.key(), subject));
    return boat.withKit(boat.kit().stream().map(k -> k == moved ? there : k).toList());
  }

  private static Boat chamber(At at, Boat boat) {
    ChamberPart changed = at.one("Which chamber", parts(boat), ChamberPart::name);
    String subject = ChamberQuestions.subject(changed);
    Filling filling =
        new FillingQuestions(at.replay(), at.quantities(), at.today()).filling(at.key(), subject);
    return filled(boat, changed, filling);
  }

  private static List<ChamberPart> parts(Boat boat) {
    return boat.chambers().stream().flatMap(chamber -> chamber.parts().stream()).toList();
  }

  /** Replaces the filling of one chamber. Of a pair of twins only the one named changes. */
  static Boat filled(Boat boat, ChamberPart changed, Filling filling) {
    return boat.withChambers(
        boat.chambers().stream()
            .map(c -> c.parts().contains(changed) ? c.filledWith(changed, filling) : c)
            .toList());
  }

  private static Boat cut(At at, Boat boat) {
    List<Opening> openings = new ArrayList<>(boat.openings());
    Opening made =
        new OpeningQuestions(
                at.replay(), at.quantities(), at.outline(boat), at.limits(), boat.chambers())
            .opening(at.key(), boat.openings());
    openings.add(made);
    return cutInto(boat.withOpenings(openings), made, at.today());
  }

  /** A chamber with a new hole in it is no longer the chamber that was tested. */
  private static Boat cutInto(Boat boat, Opening made, LocalDate today) {
    Boat cut = boat;
    for (ChamberPart part : parts(boat)) {
      if (made.into().filter(part::isNamedBy).isPresent()
          && part.filling() instanceof Filling.Air air
          && air.test().isPresent()) {
        cut = filled(cut, part.name(), new Filling.Air(air.seal(), air.test(), Optional.of(today)));
      }
    }
    return cut;
  }

  /** Looks the chamber up again, because its twin may have been changed a moment ago. */
  private static Boat filled(Boat boat, String part, Filling filling) {
    ChamberPart now =
        parts(boat).stream().filter(p -> p.name().equals(part)).findFirst().orElseThrow();
    return filled(boat, now, filling);
  }

  private static Boat weighed(At at, Boat boat) {
    double mass =
        at.replay()
            .ask(
                at.quantities()
                    .mass(at.key() + ".mass", "Mass of the bare hull, weighed again")
                    .how("Emptied of all that is not built in: a bathroom scale under each end.")
                    .why("Paint, mending and soaked wood weigh more than they look.")
                    .within(at.quantities().usual(BoatQuantity.HULL_MASS))
                    .within(SkinWarnings.of(at.quantities(), at.limits(), boat.hull())::of));
    return GuessedMasses.weighedAgain(at.replay(), at.key() + ".mass", boat.withHullMass(mass));
  }

  private static Boat swamped(At at, Boat boat) {
    return at.swamped().asked(at.replay(), at.key() + ".whenSwamped", boat);
  }

  private static Boat people(At at, Boat boat) {
    return GuessedMasses.ofOthers(
        at.replay(),
        at.key() + ".person",
        boat.withAboard(
            new PeopleQuestions(at.replay(), at.quantities(), boat.places(), boat.kit())
                .aboard(at.key() + ".person")));
  }

  private static Boat electrics(At at, Boat boat) {
    return new ElectricalQuestions(at.replay(), at.quantities(), at.today(), at.kit(boat))
        .changed(at.key(), boat);
  }
}
