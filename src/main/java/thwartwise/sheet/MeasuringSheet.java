package thwartwise.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.measure.UnitSystem;
import thwartwise.page.Page;
import thwartwise.page.Table;
import thwartwise.picture.MeasuringPictures;
import thwartwise.sheet.SheetRun.Asked;
import thwartwise.sheet.SheetSections.SheetSection;
import thwartwise.sheet.SheetSections.SheetSection.SheetField;
import thwartwise.walk.Walk;

/**
 * The sheet to fill in with a pencil: what to measure where, with room for the answers, in the
 * order of the walk. The sheet of a known boat shows what is known and leaves room for the rest and
 * for tests that are out of date.
 */
public final class MeasuringSheet implements PrintedSheet {
  private static final String IN_ORDER =
      "The walk asks in this very order: type walk, then own, and go through one thing after the"
          + " other; what stands in one column of a table belongs to one thing where it has"
          + " numbers above it.";

  private static final String AFTER_THE_KIT =
      "The walk asks for these in this very order, after the kit, once you answer that there are"
          + " any; battery, motor and panel are weighed with the kit. How things were measured comes"
          + " last, after the people.";

  private static final String MORE =
      "Rowlocks, cleats, anchor line, leaks, battery, electric motor, solar panel, wires and how"
          + " things were measured are on a sheet of their own: sheet --fittings.";

  /**
   * A table with more fields than this is transposed, so that its things stand next to each other.
   */
  private static final int MOST_COLUMNS = 8;

  private static final int WIDTH = 80;

  /** The number of blank rows for things without a name yet, by kind. */
  private static final Map<String, Integer> ROOM =
      Map.ofEntries(
          Map.entry("hull.station", 7),
          Map.entry("hull.decked", 1),
          Map.entry("opening", 6),
          Map.entry("chamber", 5),
          Map.entry("place", 5),
          Map.entry("kit", 8),
          Map.entry("outfit", 5),
          Map.entry("electrics.run", 3),
          Map.entry("electrics.circuit", 5),
          Map.entry("person", 4),
          Map.entry("measuredHow.other", 2));

  private static final Map<String, String> HEADINGS =
      Map.ofEntries(
          Map.entry("name", "The boat and its hull"),
          Map.entry("hull.station", "Stations, from the aft end forward"),
          Map.entry("hull.scale.aft.x", "The bare hull, weighed: each end in turn, or as one mass"),
          Map.entry("hull.mass", "The bare hull, weighed: as one mass, or each end in turn"),
          Map.entry("hull.decked", "Decked over"),
          Map.entry("opening", "Openings lower than the rail"),
          Map.entry("chamber", "Chambers and foam"),
          Map.entry("place", "Places to sit, kneel or stand"),
          Map.entry("kit", "Kit"),
          Map.entry("bailer", "Bailer, and what carries it on the road"),
          Map.entry("electrics.battery.kit", "Battery and motor"),
          Map.entry("electrics.battery.chemistry", "Battery and motor"),
          Map.entry("outfit", "Rowlocks, cleats, anchor line, leaks"),
          Map.entry("electrics.run", "The motor, timed both ways"),
          Map.entry("electrics.panel.watts", "A solar panel"),
          Map.entry("electrics.circuit", "Wires from the battery"),
          Map.entry("electrics.mainSwitch", "One switch and one fuse for all of them"),
          Map.entry("measuredHow.hull weight", "How things were measured"),
          Map.entry("person", "People"),
          Map.entry("measuredHow.other", "Measured otherwise than the rest of its kind"),
          Map.entry("waters.waves", "The water it is for"));

  private final SheetTopic topic;
  private final List<SheetSection> sections;
  private final UnitSystem units;
  private final Optional<String> boat;

  private MeasuringSheet(
      SheetTopic topic, List<List<Asked>> runs, UnitSystem units, Optional<String> boat) {
    this.topic = topic;
    this.sections = SheetSections.of(runs.stream().map(topic::of).toList());
    this.units = units;
    this.boat = boat;
  }

  /**
   * A blank sheet.
   *
   * @param points at each station, from keel to rail
   */
  public static MeasuringSheet blank(SheetTopic topic, Walk walk, UnitSystem units, int points) {
    Map<String, String> lines = Map.of("hull.points", Integer.toString(points));
    SheetTemplate total = new SheetTemplate(lines);
    SheetTemplate other =
        new SheetTemplate(
            Map.of(
                "hull.points", Integer.toString(points),
                "hull.material", "other",
                "hull.density", "900"));
    SheetTemplate scales =
        new SheetTemplate(
            Map.of(
                "hull.points", Integer.toString(points),
                "hull.weighed", "ends",
                "hull.centre.z", "tilt",
                "hull.station.3.upright", "yes"));
    return new MeasuringSheet(
        topic,
        List.of(
            SheetRun.of(walk, Map.of(), total),
            SheetRun.of(walk, Map.of(), scales),
            SheetRun.of(walk, Map.of(), other)),
        units,
        Optional.empty());
  }

  /** The sheet of a known boat, in its units. */
  public static MeasuringSheet of(SheetTopic topic, Walk walk, Boat boat, LocalDate today) {
    Map<String, String> known = PrefilledAnswers.of(boat, today);
    return new MeasuringSheet(
        topic,
        List.of(SheetRun.of(walk, known, new SheetTemplate(Map.of()))),
        boat.units(),
        Optional.of(boat.name()));
  }

  /** The name of the boat, if the sheet is for one. */
  public Optional<String> boat() {
    return boat;
  }

  /** One cell of the sheet: its question and its content, which may be blank. */
  public record SheetCell(String question, String written) {}

  /** All cells in the order of the walk; the cells of a table thing by thing. */
  public List<SheetCell> cells() {
    return sections.stream()
        .flatMap(s -> IntStream.range(0, count(s)).boxed().flatMap(i -> cells(s, i)))
        .toList();
  }

  private static Stream<SheetCell> cells(SheetSection section, int thing) {
    String before = section.isTable() ? section.kind() + "." + (thing + 1) + "." : "";
    return section.fields().stream()
        .map(f -> new SheetCell(before + f.key(), cell(section, f, thing)));
  }

  @Override
  public String heading() {
    return topic.title();
  }

  /** The sheet as plain text. */
  @Override
  public String toString() {
    return page().toString();
  }

  @Override
  public Page page() {
    Page page =
        new Page()
            .title(
                topic.title() + boat.map(name -> ": " + name + ", with what is known").orElse(""));
    List<String> said =
        new ArrayList<>(
            List.of(
                units.isMetric()
                    ? "Lengths in metres, masses in kilograms, volumes in litres."
                    : "Lengths in feet and inches, masses in pounds, volumes in litres.",
                "Write the unit down wherever it is another one.",
                topic == SheetTopic.FITTINGS ? AFTER_THE_KIT : IN_ORDER,
                "A box left empty is asked all the same; what was not measured counts for nothing."));
    if (topic == SheetTopic.BOAT) {
      said.add(MORE);
    }
    page.paragraph(said.toArray(String[]::new));
    if (topic == SheetTopic.BOAT) {
      MeasuringPictures.all().forEach(page::drawn);
    }
    for (SheetSection section : sections) {
      if (section.isTable()) {
        page.heading(heading(section.kind()));
        page.table(table(section));
      } else {
        String first = section.fields().get(0).key();
        page.heading(heading(first));
        page.table(singles(section));
      }
    }
    return page;
  }

  private static String heading(String key) {
    return HEADINGS.getOrDefault(key, "And also");
  }

  private static Table singles(SheetSection section) {
    List<List<String>> rows = new ArrayList<>();
    List<SheetField> fields = section.fields();
    for (int i = 0; i < fields.size(); i += 2) {
      List<String> row = new ArrayList<>(single(section, fields.get(i)));
      row.addAll(i + 1 < fields.size() ? single(section, fields.get(i + 1)) : List.of("", ""));
      rows.add(row);
    }
    return Table.close(
        List.of(
            new Table.Column("What", 22),
            new Table.Column("Answer", 18),
            new Table.Column("What", 22),
            new Table.Column("Answer", 18)),
        rows);
  }

  private static List<String> single(SheetSection section, SheetField field) {
    String known = section.rows().get(0).getOrDefault(field.key(), "");
    return List.of(field.label(), known.isEmpty() ? choices(field) : known);
  }

  private static String choices(SheetField field) {
    return String.join(" / ", field.choices());
  }

  private Table table(SheetSection section) {
    return section.fields().size() > MOST_COLUMNS ? turned(section) : straight(section);
  }

  /** The number of things known, or the number of blank rows. */
  private int count(SheetSection section) {
    if (!section.isTable()) {
      return 1;
    }
    int room = ROOM.getOrDefault(section.kind(), 3);
    int known = (int) section.rows().stream().filter(t -> !t.isEmpty()).count();
    return boat.isEmpty() ? room : section.kind().equals("hull.station") ? known : known + 2;
  }

  private Table straight(SheetSection section) {
    int each = WIDTH / section.fields().size();
    List<Table.Column> columns =
        section.fields().stream().map(f -> new Table.Column(head(f), each)).toList();
    List<List<String>> rows =
        IntStream.range(0, count(section))
            .mapToObj(i -> section.fields().stream().map(f -> cell(section, f, i)).toList())
            .toList();
    return Table.close(columns, rows);
  }

  private Table turned(SheetSection section) {
    int count = count(section);
    List<Table.Column> columns = new ArrayList<>(List.of(new Table.Column("", 26)));
    IntStream.rangeClosed(1, count)
        .forEach(i -> columns.add(new Table.Column(Integer.toString(i), (WIDTH - 26) / count)));
    List<List<String>> rows = new ArrayList<>();
    for (SheetField field : section.fields()) {
      List<String> row = new ArrayList<>(List.of(head(field)));
      IntStream.range(0, count).forEach(i -> row.add(cell(section, field, i)));
      rows.add(row);
    }
    return Table.close(columns, rows);
  }

  private static String head(SheetField field) {
    return field.label() + (field.choices().isEmpty() ? "" : " (" + choices(field) + ")");
  }

  private static String cell(SheetSection section, SheetField field, int thing) {
    return thing < section.rows().size()
        ? Optional.ofNullable(section.rows().get(thing).get(field.key())).orElse("")
        : "";
  }
}
