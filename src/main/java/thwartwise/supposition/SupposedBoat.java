package thwartwise.supposition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Person;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.NamedPerson;
import thwartwise.measure.Reading;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.remedy.Change;
import thwartwise.remedy.NamedChanges;

/**
 * A boat after all changes that were to be tried, with the bounds that its answers with fewer
 * faults set.
 *
 * @param deeds the changes to boat and kit
 * @param crew the result of seating the named people; those who may go are aboard
 */
public record SupposedBoat(BoatModel model, List<Change> deeds, Optional<CrewAnswer> crew) {

  public SupposedBoat {
    deeds = List.copyOf(deeds);
  }

  public Boat boat() {
    return model.boat();
  }

  /**
   * Makes one change after the other; refused where there is no room for one of them.
   *
   * @param seats says which of some people may go in a boat, and where they sit
   * @throws thwartwise.hull.UnusableBoat when the boat contradicts itself, before or after
   */
  public static Reading<SupposedBoat> of(
      Boat boat,
      List<Supposition> supposed,
      BiFunction<BoatModel, List<NamedPerson>, CrewAnswer> seats,
      LocalDate today) {
    BoatModel model = BoatModel.of(boat, today);
    List<Change> deeds = new ArrayList<>();
    Optional<CrewAnswer> crew = Optional.empty();
    for (Supposition one : supposed) {
      if (one instanceof Supposition.PeopleAboard people) {
        crew = Optional.of(seats.apply(model, people.people()));
        model = model.fittedOut(seated(model.boat(), crew.get()), today);
      } else {
        Reading<Change> deed = deed(model, one);
        if (deed.refusal().isPresent()) {
          return Reading.refused(deed.refusal().get());
        }
        deed.as(deeds::add);
        model = model.fittedOut(deeds.get(deeds.size() - 1).boat(), today);
      }
    }
    return Reading.understood(new SupposedBoat(model, deeds, crew), "");
  }

  private static Reading<Change> deed(BoatModel model, Supposition one) {
    if (one instanceof Supposition.KitAt moved) {
      return kit(model.boat(), moved.kit()).then(item -> moved(model, item, moved.x()));
    }
    if (one instanceof Supposition.KitLeft left) {
      return kit(model.boat(), left.kit()).as(item -> NamedChanges.kitLeft(model.boat(), item));
    }
    return foam(model, (Supposition.FoamAdded) one);
  }

  private static Reading<Kit> kit(Boat boat, String name) {
    return boat.kit().stream()
        .filter(k -> k.name().equals(name))
        .findFirst()
        .map(k -> Reading.understood(k, ""))
        .orElseGet(
            () ->
                Reading.refused(
                    "\"%s\" is named twice, and no longer aboard the second time. Name it once."
                        .formatted(name)));
  }

  private static Reading<Change> moved(BoatModel model, Kit item, double x) {
    return NamedChanges.kitMoved(model, item, x)
        .map(change -> Reading.understood(change, ""))
        .orElseGet(
            () ->
                Reading.refused(
                    String.format(
                        "There is no room in the boat for \"%s\" at %s, as far from the middle"
                            + " line as it is. Try another length.",
                        item.name(),
                        units(model)
                            .either(
                                String.format(Locale.ROOT, "%.2f m", x),
                                () -> units(model).mark(x)))));
  }

  private static Reading<Change> foam(BoatModel model, Supposition.FoamAdded wanted) {
    double room = NamedChanges.foamRoom(model, wanted.spot());
    return wanted.volume() <= room
        ? Reading.understood(NamedChanges.foam(model, wanted.spot(), wanted.volume()), "")
        : Reading.refused(
            String.format(
                "There is room for %s of foam %s, clear of what is there, and not for %s. Try less,"
                    + " or another place.",
                volume(model, room, Side.DOWN),
                wanted.spot().words(),
                volume(model, wanted.volume(), Side.UP)));
  }

  private static String volume(BoatModel model, double volume, Side side) {
    return units(model).volume(volume, side).replace('\u00a0', ' ');
  }

  private static UnitFormat units(BoatModel model) {
    return new UnitFormat(model.boat().units());
  }

  /** Nobody at all when none of them may go. */
  private static Boat seated(Boat boat, CrewAnswer answer) {
    List<Person> people =
        answer.seats().stream()
            .map(s -> new Person(s.member().name(), s.member().heaviest(), s.place(), 0))
            .toList();
    return NamedChanges.aboard(boat, people).boat();
  }
}
