package thwartwise.walk;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Outfit;
import thwartwise.boat.Outfit.AnchorBottom;
import thwartwise.boat.Outfit.Rowlocks;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitSystem;
import thwartwise.sampleboats.ElectricBoat;
import thwartwise.sheet.MeasuringSheet;
import thwartwise.sheet.MeasuringSheet.SheetCell;
import thwartwise.sheet.SheetTopic;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Step;

/** The sheet for the pencil against walks of boats it has never seen. */
class SheetInWalkOrderTest {
  /** What steers the walk and is not measured. */
  private static final Pattern STEERING =
      Pattern.compile(
          "way|units|finish|hull\\.(weighed|centre|stations|points|alike|looks)|.*\\.any|.*#.*"
              + "|hull\\.outOfLine\\..*|waters\\.sheltered");

  /** On the sheet of a boat whose sides differ, not on the blank one. */
  private static final Pattern OTHER_SIDE = Pattern.compile(".*\\.(starboard|twin)\\..*");

  private static MeasuringSheet blank() {
    return blank(SheetTopic.BOAT);
  }

  /** Each run through the walk once: a sheet is immutable and the walk always the same. */
  private static final Map<SheetTopic, MeasuringSheet> BLANK = new HashMap<>();

  private static MeasuringSheet blank(SheetTopic topic) {
    return BLANK.computeIfAbsent(
        topic, t -> MeasuringSheet.blank(t, Sheet.walk(), UnitSystem.METRIC, 3));
  }

  private static MeasuringSheet known(Boat boat, LocalDate day) {
    return known(SheetTopic.BOAT, boat, day);
  }

  private static MeasuringSheet known(SheetTopic topic, Boat boat, LocalDate day) {
    return MeasuringSheet.of(topic, Sheet.walk(), boat, day);
  }

  /** How things were measured is on the sheet of the fittings; the walk asks for it last. */
  private static void inOrder(Function<SheetTopic, MeasuringSheet> sheets, List<String> asked) {
    Map<Boolean, List<String>> ofMethods =
        asked.stream().collect(Collectors.partitioningBy(key -> key.startsWith("measuredHow.")));
    inOrder(sheets.apply(SheetTopic.BOAT), ofMethods.get(false));
    inOrder(sheets.apply(SheetTopic.FITTINGS), ofMethods.get(true));
  }

  private static void inOrder(MeasuringSheet sheet, List<String> asked) {
    List<String> cells = sheet.cells().stream().map(SheetCell::question).toList();
    List<Integer> places = new ArrayList<>();
    for (String key : asked) {
      assertThat(cells).as("has room for " + key).contains(key);
      places.add(cells.indexOf(key));
    }
    assertThat(places).isSorted().doesNotHaveDuplicates();
  }

  private static List<String> measured(List<Answer> answers) {
    return answers.stream()
        .map(Answer::question)
        .filter(key -> !STEERING.matcher(key).matches())
        .toList();
  }

  @Test
  void the_blank_sheet_has_room_for_every_answer_in_the_order_of_the_walk() {
    for (Sheet noted :
        List.of(
            Sheet.small(),
            Sheet.full(true),
            Sheet.full(false),
            Sheet.everyKind(true),
            Sheet.saidHow())) {
      List<String> asked =
          measured(noted.toTheEnd()).stream()
              .filter(key -> !OTHER_SIDE.matcher(key).matches())
              .toList();
      assertThat(asked).hasSizeGreaterThan(20);
      inOrder(SheetInWalkOrderTest::blank, asked);
    }
  }

  @Test
  void so_has_the_sheet_of_a_known_boat_both_of_its_sides_too() {
    for (Sheet noted : List.of(Sheet.full(true), Sheet.saidHow())) {
      List<Answer> answers = noted.toTheEnd();
      Boat boat = Sheet.boat(answers);
      inOrder(topic -> known(topic, boat, Sheet.TODAY), measured(answers));
    }
  }

  @Test
  void what_is_known_of_the_outfit_stands_on_the_sheet_of_a_boat_and_can_be_typed_again() {
    Outfit outfit =
        Outfit.NOT_STATED
            .with(new Rowlocks(1.2))
            .with(new SeamLeak("keel", 0.002, 1800))
            .withAnchorLine(20)
            .withAnchorDepth(3)
            .withAnchorBottom(AnchorBottom.SAND_OR_MUD);
    Boat boat =
        ElectricBoat.boat()
            .withOutfit(outfit)
            .withCleats(List.of(new Cleat("bow ring", Vector3.of(3.4, 0, 0.4))));
    Map<String, String> written = new LinkedHashMap<>();
    MeasuringSheet.of(SheetTopic.FITTINGS, Sheet.walk(), boat, Sheet.TODAY)
        .cells()
        .forEach(cell -> written.put(cell.question(), cell.written().replace("\u00a0", " ")));
    assertThat(written)
        .containsEntry("outfit.1.what", "rowlocks")
        .containsEntry("outfit.1.pins", "1.2 m")
        .containsEntry("outfit.2.name", "bow ring")
        .containsEntry("outfit.3.line", "20 m")
        .containsEntry("outfit.3.bottom", "sand or mud")
        .containsEntry("outfit.4.seam", "keel")
        .containsEntry("outfit.4.litres", "2 litres");
  }

  /** Its battery, motor, panel and wires, as the boat file has them. */
  @Test
  void what_is_known_to_be_electric_stands_on_the_sheet_of_a_boat() {
    Boat boat = ElectricBoat.boat();
    MeasuringSheet sheet = MeasuringSheet.of(SheetTopic.FITTINGS, Sheet.walk(), boat, Sheet.TODAY);
    Map<String, String> written = new LinkedHashMap<>();
    sheet.cells().forEach(cell -> written.put(cell.question(), cell.written()));
    written.keySet().removeIf(key -> key.startsWith("outfit.") || key.startsWith("measuredHow."));
    assertThat(written.keySet()).allMatch(key -> key.startsWith("electrics."));
    assertThat(known(boat, Sheet.TODAY).cells())
        .noneMatch(cell -> cell.question().startsWith("electrics."));
    written.values().removeIf(String::isEmpty);
    assertThat(written)
        .containsEntry("electrics.battery.chemistry", "AGM")
        .containsEntry("electrics.battery.ampHours", "80")
        .containsEntry("electrics.motor.thrust", "200 N")
        .containsEntry("electrics.run.2.ampsThere", "9")
        .containsEntry("electrics.panel.watts", "50")
        .containsEntry("electrics.latitude", "52 N")
        .containsEntry("electrics.circuit.1.wire", "10 mm2 90 C")
        .containsEntry("electrics.circuit.2.wire", "AWG 14")
        .containsEntry("electrics.mainSwitch", "red key next to the battery")
        .containsEntry("electrics.mainWire.fuse", "60")
        .containsEntry("electrics.mainWire.wire", "AWG 8 105 C")
        .containsEntry("electrics.mainWire.lies", "open");
    assertThat(String.join(" ", written.keySet()))
        .matches(
            "electrics.battery.* electrics.motor.* electrics.run.* electrics.panel.*"
                + " electrics.latitude .*electrics.circuit.* electrics.mainSwitch"
                + " electrics.mainWire.*");
  }

  /** Read forward only, cell after cell, and typed: it is the same boat. */
  @Test
  void a_walk_from_the_filled_sheet_makes_the_boat_of_the_sheet() {
    Boat boat = Sheet.saidHow().boat();
    Map<String, String> written = new HashMap<>();
    for (SheetTopic topic : SheetTopic.values()) {
      known(topic, boat, Sheet.TODAY)
          .cells()
          .forEach(cell -> written.put(cell.question(), cell.written()));
    }
    assertThat(written)
        .containsEntry("measuredHow.kit weights", "luggage scale")
        .containsEntry("measuredHow.other.1.name", "battery")
        .containsEntry("measuredHow.other.1.how", "guess");
    List<Answer> answers = List.of();
    while (Sheet.WALK.next(answers) instanceof Step.Ask ask) {
      String key = ask.question().key();
      answers =
          Sheet.answer(answers, written.getOrDefault(key, Sheet.saidHow().at(ask.question())));
    }
    Boat typed = Sheet.boat(answers);
    assertThat(typed.chambers()).isEqualTo(boat.chambers());
    assertThat(typed.openings()).isEqualTo(boat.openings());
    assertThat(typed.places()).isEqualTo(boat.places());
    assertThat(typed.hull().stations()).isEqualTo(boat.hull().stations());
    assertThat(typed.kitMass()).isCloseTo(boat.kitMass(), within(1e-9));
    assertThat(typed.aboard()).isEqualTo(boat.aboard());
    assertThat(typed.methods()).isEqualTo(boat.methods()).hasSize(6);
  }

  @Test
  void a_leak_test_that_has_grown_old_is_a_blank() {
    Boat boat = Sheet.full(true).boat();
    LocalDate later = Sheet.TODAY.plusYears(2);
    MeasuringSheet sheet = known(boat, later);
    assertThat(sheet.cells())
        .contains(
            new SheetCell("chamber.1.name", "fore locker"),
            new SheetCell("chamber.1.seal", ""),
            new SheetCell("chamber.1.test.date", ""),
            new SheetCell("chamber.2.seal", "claimed"));
    assertThat(known(boat, Sheet.TODAY).cells())
        .contains(new SheetCell("chamber.1.test.date", "2026-05-02"));
  }

  @Test
  void a_boat_measured_in_feet_is_printed_in_feet() {
    Boat boat = Sheet.full(false).boat();
    assertThat(known(boat, Sheet.TODAY).cells())
        .contains(
            new SheetCell("hull.length", "12\u00a0ft"),
            new SheetCell("hull.station.2.point.3.y", "2\u00a0ft\u00a03\u00a01/2\u00a0in"));
  }

  @Test
  void the_blank_sheet_in_plain_text() {
    assertThat(blank().toString())
        .startsWith("Measuring sheet")
        .contains(
            "The boat and its hull", "Name of the boat", "fresh / salt", "chine, half-breadth");
    assertThat(blank().toString()).doesNotContain("And also");
    assertThat(blank(SheetTopic.FITTINGS).toString())
        .startsWith("Measuring sheet: fittings and wires")
        .contains("How things were measured")
        .doesNotContain("And also");
    assertThat(blank().cells()).allMatch(cell -> cell.written().isEmpty());
  }

  /** What the sheet was made from is no boat: its chambers and places are nobody's answers. */
  @Test
  void what_may_be_chosen_is_printed_and_the_names_of_the_template_are_not() {
    String plain = blank().toString().replaceAll("\\s+", " ");
    assertThat(plain)
        .contains("oar notch / drain")
        .contains("This opening leads into")
        .doesNotContain("leads into (", "which chamber (", "steered from (", "first thing");
  }
}
