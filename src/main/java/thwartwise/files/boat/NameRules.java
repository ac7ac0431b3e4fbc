package thwartwise.files.boat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Cleat;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.electrics.Circuit;
import thwartwise.json.Location;
import thwartwise.measure.NearestWord;
import thwartwise.measure.PrintableText;

/** Names to which other entries refer: each occurs once, and each reference has its thing. */
final class NameRules {
  private NameRules() {}

  static void check(Location file, Boat boat) {
    List<String> chambers = boat.chambers().stream().flatMap(NameRules::names).distinct().toList();
    List<String> places = boat.places().stream().map(Place::name).toList();
    checkOnce(file, "chamber", boat.chambers().stream().map(Chamber::name).toList());
    checkSidesOnce(file, boat.chambers());
    checkOnce(file, "place", places);
    checkOnce(file, "kit", boat.kit().stream().map(Kit::name).toList());
    checkOnce(file, "cleat", boat.cleats().stream().map(Cleat::name).toList());
    for (int i = 0; i < boat.openings().size(); i++) {
      Opening opening = boat.openings().get(i);
      Location spot = file.item("opening", i + 1, opening.name());
      opening.into().ifPresent(in -> checkExists(spot, "into", in, chambers, "chambers"));
    }
    for (int i = 0; i < boat.aboard().size(); i++) {
      Person person = boat.aboard().get(i);
      checkExists(
          file.item("person", i + 1, person.name()), "place", person.place(), places, "places");
    }
    for (int i = 0; i < boat.kit().size(); i++) {
      Kit kit = boat.kit().get(i);
      Location spot = file.item("kit", i + 1, kit.name());
      kit.in().ifPresent(in -> checkExists(spot, "in", in, chambers, "chambers"));
      kit.workedFrom().ifPresent(at -> checkExists(spot, "workedFrom", at, places, "places"));
    }
    checkOnce(
        file.in(ElectricsCodec.KEY),
        "circuit",
        boat.electrics().circuits().stream().map(Circuit::name).toList());
  }

  private static void checkOnce(Location file, String noun, List<String> names) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      if (!seen.add(name.strip().toLowerCase(Locale.ROOT))) {
        throw file.item(noun, i + 1, name)
            .fault("the name stands twice. Give each a name of its own.");
      }
    }
  }

  /** The names of a pair of twins: the chamber's name for both, or one for each. */
  private static Stream<String> names(Chamber chamber) {
    return Stream.concat(
        Stream.of(chamber.name()), chamber.parts().stream().map(ChamberPart::name));
  }

  private static void checkSidesOnce(Location file, List<Chamber> chambers) {
    for (int i = 0; i < chambers.size(); i++) {
      Chamber one = chambers.get(i);
      for (Chamber twins : chambers) {
        if (twins != one && names(twins).anyMatch(one.name()::equalsIgnoreCase)) {
          throw file.item("chamber", i + 1, one.name())
              .fault(
                  "the twins %s bear this name and the side. Give it another name.",
                  PrintableText.quoted(twins.name()));
        }
      }
    }
  }

  private static void checkExists(
      Location spot, String key, String name, List<String> known, String list) {
    if (known.contains(name)) {
      return;
    }
    String nearest =
        NearestWord.to(name, known)
            .map(word -> "the nearest is " + PrintableText.quoted(word) + ". Correct it")
            .orElse("the list is empty. Correct it");
    throw spot.fault(
        "\"%s\" is %s, which is none of the %s; %s or add it to \"%s\".",
        key, PrintableText.quoted(name), list, nearest, list);
  }

  /** The greatest number of places and people; with more, no search comes to an end. */
  static final class CountRules {
    /** Judgement: a bench on either side and four thwarts, each named in parts. */
    private static final int MOST_PLACES = 40;

    /** Judgement: twice as many as ever sat in a boat of six metres. */
    private static final int MOST_PEOPLE = 24;

    private CountRules() {}

    static void check(Location file, Boat boat) {
      int places = boat.places().size();
      if (places > MOST_PLACES) {
        throw file.fault(
            "%d places, and a boat of this size has at most %d. Give each bench and thwart once, with"
                + " how many people it takes.",
            places, MOST_PLACES);
      }
      int people = boat.places().stream().mapToInt(Place::people).sum();
      if (people > MOST_PEOPLE) {
        throw file.fault(
            "the places take %d people together, and a boat of this size has room for at most %d."
                + " Write how many can sit at each place at once, each on 0.45 m.",
            people, MOST_PEOPLE);
      }
    }
  }
}
