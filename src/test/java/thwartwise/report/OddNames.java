package thwartwise.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Assumption;
import thwartwise.boat.Boat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.Report;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleRecords;

/** Records in which every name somebody could have typed is an odd one. */
final class OddNames {
  private OddNames() {}

  static Stream<String> all() {
    return Stream.of(
        "<script>alert('soup')</script>",
        "Soup \"Ladle\" & 'Sons' ]]> &amp; -->",
        "שלום עולם",
        "Ladle مرحبا 80",
        "x".repeat(300),
        "🥄 Ladle 👩‍👧",
        "スプーン",
        "Soup\nLaunch held\u001b[31m",
        "\u202eeldaL puoS",
        "%s ${name} {{name}} \\u0041",
        " ");
  }

  static InspectionRecord in(Boat boat, String name) {
    Boat renamed =
        new Boat(
            name,
            boat.water(),
            boat.hull(),
            List.of(hatch(name)),
            boat.chambers(),
            List.of(new Place(name, 1.7, 0.3, 0.4, 2)),
            List.of(new Kit(name, 5, Vector3.ZERO, Optional.empty(), false, Optional.of(name))),
            List.of(new Person(name, 80, name, 0)),
            boat.propulsion(),
            List.of(new Cleat(name, Vector3.ZERO)),
            Optional.of(0.008),
            boat.waters(),
            Optional.of(name),
            List.of(new Assumption.Stated(name)));
    Report report = SampleRecords.report();
    InspectionRecord plain = SampleRecords.of(renamed, report);
    return new InspectionRecord(plain.date(), name, plain.programVersion(), renamed, report);
  }

  private static Opening hatch(String name) {
    return new Opening(
        name, Vector3.ZERO, 0.3, true, Optional.of(name), Optional.of(name), Optional.empty());
  }
}
