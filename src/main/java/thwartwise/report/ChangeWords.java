package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.boat.Kit;
import thwartwise.measure.UnitFormat;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.PartProperties;
import thwartwise.measured.Property;
import thwartwise.measured.PropertyDifference;
import thwartwise.page.Sentence;
import thwartwise.record.Comparison.BoatChange;
import thwartwise.record.Comparison.BoatChange.Turn;

/** One thing that changed on the boat, in a sentence. */
final class ChangeWords {
  private final UnitFormat units;

  private ChangeWords(UnitFormat units) {
    this.units = units;
  }

  static String of(BoatChange change, UnitFormat units) {
    return new ChangeWords(units).of(change);
  }

  private String of(BoatChange change) {
    if (change instanceof BoatChange.Carried kit) {
      return carried(kit);
    }
    if (change instanceof BoatChange.Space chamber) {
      return space(chamber);
    }
    if (change instanceof BoatChange.HullMass mass) {
      return "Bare hull: " + kg(mass.after()) + " instead of " + kg(mass.before());
    }
    if (change instanceof BoatChange.Counts counts) {
      return "The chamber "
          + counts.after().name()
          + (counts.after().counted() ? " counts now: " : " no longer counts: ")
          + BuoyancyReasonWords.of(counts.after().why(), units);
    }
    if (change instanceof BoatChange.Named named) {
      return Sentence.capital(named.noun())
          + turn(named.turn())
          + (named.name().isEmpty() ? "" : ": " + named.name())
          + named.differences().stream()
              .map(difference -> "; " + difference(difference))
              .collect(Collectors.joining());
    }
    if (change instanceof BoatChange.Single single) {
      return "Changed: " + difference(single.difference());
    }
    return "Changed: " + ((BoatChange.Stated) change).what();
  }

  private static String turn(Turn turn) {
    return switch (turn) {
      case ADDED -> " added";
      case REMOVED -> " removed";
      case CHANGED -> " changed";
    };
  }

  private String difference(PropertyDifference<?, ?> difference) {
    return difference.property().changeLabel()
        + ", "
        + difference.after(units)
        + " (before: "
        + difference.before(units)
        + ")";
  }

  private String carried(BoatChange.Carried kit) {
    if (kit.before().isEmpty() || kit.after().isEmpty()) {
      Kit one = kit.after().or(kit::before).orElseThrow();
      return (kit.before().isEmpty() ? "Kit added: " : "Kit removed: ")
          + one.name()
          + " "
          + kg(one.mass());
    }
    Kit before = kit.before().get();
    Kit after = kit.after().get();
    return "Kit "
        + (moved(before, after) ? "moved: " : "changed: ")
        + after.name()
        + differences(before, after);
  }

  private static boolean moved(Kit before, Kit after) {
    return !before.at().equals(after.at());
  }

  private String differences(Kit before, Kit after) {
    List<String> words = new ArrayList<>();
    if (before.mass() != after.mass()) {
      words.add(kg(after.mass()) + " instead of " + kg(before.mass()));
    }
    if (moved(before, after)) {
      words.add("by " + shift(before, after));
    }
    if (!before.in().equals(after.in())) {
      words.add(after.in().map(in -> "stowed in " + in).orElse("no longer stowed in a chamber"));
    }
    if (before.fastened() != after.fastened()) {
      words.add(after.fastened() ? "now fastened" : "no longer fastened");
    }
    if (!before.workedFrom().equals(after.workedFrom())) {
      words.add(
          after
              .workedFrom()
              .map(place -> "worked from the " + place)
              .orElse("no longer said where it is worked from"));
    }
    words.addAll(differences(BoatProperties.OF_KIT, before, after));
    return ", " + String.join(", ", words);
  }

  private <O> List<String> differences(List<Property<O, ?>> rows, O before, O after) {
    return PropertyDifference.between(rows, before, after).stream().map(this::difference).toList();
  }

  private String shift(Kit before, Kit after) {
    var by = after.at().minus(before.at());
    List<String> ways = new ArrayList<>();
    way(ways, by.x(), "forward", "aft");
    way(ways, by.y(), "to port", "to starboard");
    way(ways, by.z(), "up", "down");
    return Sentence.list(ways);
  }

  private void way(List<String> ways, double by, String ahead, String back) {
    if (by != 0) {
      ways.add(units.tape(Math.abs(by)) + " " + (by > 0 ? ahead : back));
    }
  }

  private String space(BoatChange.Space chamber) {
    if (chamber.before().isEmpty() || chamber.after().isEmpty()) {
      Chamber one = chamber.after().or(chamber::before).orElseThrow();
      return (chamber.before().isEmpty() ? "Chamber added: " : "Chamber removed: ")
          + one.name()
          + ", "
          + fillings(one);
    }
    Chamber before = chamber.before().get();
    Chamber after = chamber.after().get();
    List<String> words = new ArrayList<>(known(before, after));
    if (!before.box().equals(after.box()) || before.mirrored() != after.mirrored()) {
      words.add("other limits");
    }
    words.addAll(differences(PartProperties.OF_CHAMBER, before, after));
    if (words.isEmpty()) {
      words.add("what is known of each of the two");
    }
    return "Chamber changed: " + after.name() + ", " + String.join(", ", words);
  }

  private static String fillings(Chamber chamber) {
    return chamber.parts().stream()
        .map(ChangeWords::filling)
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  /** What is known of the parts of a chamber; for twins that changed alike it stands once. */
  private List<String> known(Chamber before, Chamber after) {
    if (before.mirrored() != after.mirrored()) {
      return known(before.parts().get(0), after.parts().get(0));
    }
    List<List<String>> each = new ArrayList<>();
    for (int i = 0; i < before.parts().size(); i++) {
      each.add(known(before.parts().get(i), after.parts().get(i)));
    }
    return each.stream().distinct().count() == 1 ? each.get(0) : sided(after.parts(), each);
  }

  private List<String> sided(List<ChamberPart> parts, List<List<String>> each) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      String side = parts.get(i).side().map(s -> " to " + s.word()).orElse("");
      each.get(i).forEach(word -> words.add(word + side));
    }
    return words;
  }

  private List<String> known(ChamberPart before, ChamberPart after) {
    List<String> words = new ArrayList<>();
    if (!filling(before).equals(filling(after))) {
      words.add(filling(after) + " instead of " + filling(before));
    } else if (!before.filling().equals(after.filling())) {
      words.add("another leak test");
    }
    if (!before.measuredVolume().equals(after.measuredVolume())) {
      words.add(litres(after.measuredVolume()) + " instead of " + litres(before.measuredVolume()));
    }
    return words;
  }

  private static String filling(ChamberPart chamber) {
    if (chamber.filling() instanceof Filling.Air air) {
      return air.seal().word();
    }
    Filling.Foam foam = (Filling.Foam) chamber.filling();
    return (foam.fastened() ? "fastened " : "loose ")
        + (foam.closedCell() ? "closed-cell foam" : "foam that soaks");
  }

  private String litres(Optional<Double> volume) {
    return volume.map(v -> units.jug(v) + " measured").orElse("no volume measured");
  }

  private String kg(double mass) {
    return units.scales(mass);
  }
}
