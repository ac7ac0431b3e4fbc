package thwartwise.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.hull.Station;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.page.Table;
import thwartwise.report.ProofPage;

/** The sheet for a proof afloat of one boat: its readings, in the order of {@code prove}. */
public final class ProofSheet implements PrintedSheet {
  /** The beginning of its file names, without the boat and the ending. */
  public static final String FILE_NAME = "proof sheet";

  private static final String TITLE = "Proof afloat";
  private static final int WIDTH = 80;
  private static final int FIRST = 16;
  private static final int MOST_COLUMNS = 8;
  private static final int PEOPLE = 3;
  private static final List<String> READINGS = List.of("first", "second", "mean: type it");

  private final Boat boat;
  private final List<SheetCells> sections;

  private ProofSheet(Boat boat) {
    this.boat = boat;
    this.sections = sections(boat);
  }

  public static ProofSheet of(Boat boat) {
    return new ProofSheet(boat);
  }

  /**
   * Cells next to each other.
   *
   * @param heading blank where they continue what is above
   * @param instruction above them
   * @param lines what stands at the beginning of each line; the last is typed
   * @param cells by the keys of their questions
   */
  private record SheetCells(
      String heading, String instruction, List<String> lines, List<ProofCell> cells) {}

  /**
   * One column or one cell.
   *
   * @param keys of the questions that it answers
   */
  private record ProofCell(String label, List<String> keys) {
    static ProofCell of(String label, String... keys) {
      return new ProofCell(label, List.of(keys));
    }
  }

  /** The keys of all questions on the sheet, in its order. */
  public List<String> questions() {
    return lines().stream().flatMap(List::stream).toList();
  }

  /** The keys of the questions of each line of boxes. */
  List<List<String>> lines() {
    return sections.stream().flatMap(ProofSheet::lines).toList();
  }

  private static Stream<List<String>> lines(SheetCells section) {
    int lines = section.cells().stream().mapToInt(cell -> cell.keys().size()).max().orElse(0);
    return IntStream.range(0, lines)
        .mapToObj(
            line ->
                section.cells().stream()
                    .filter(cell -> line < cell.keys().size())
                    .map(cell -> cell.keys().get(line))
                    .toList());
  }

  private static List<SheetCells> sections(Boat boat) {
    List<SheetCells> all = new ArrayList<>();
    if (!boat.kit().isEmpty()) {
      all.add(
          one(
              "Kit",
              "Listed: " + Sentence.list(boat.kit().stream().map(Kit::name).toList()),
              ProofCell.of("all aboard: yes; all ashore: no", "proof.kit")));
    }
    all.add(rails("Nobody aboard", places(boat), "proof.empty"));
    if (!boat.places().isEmpty()) {
      all.add(people());
      all.add(rails("", "With them seated, still, in the middle of their seats:", "proof.seated"));
    }
    weight(all);
    all.add(
        one(
            "The roll, nobody aboard; and who read all this",
            "Press one rail down a little, let go, count whole swings: out to both sides and back."
                + " The day and who read it are asked one by one.",
            ProofCell.of("swings, 10 or more", "proof.roll.swings"),
            ProofCell.of("seconds for all", "proof.roll.seconds"),
            ProofCell.of("read on", "proof.date"),
            ProofCell.of("read by", "proof.by")));
    if (!boat.places().isEmpty()) {
      trial(all, boat);
    }
    return all;
  }

  private static SheetCells one(String heading, String said, ProofCell... cells) {
    return new SheetCells(heading, said, List.of(""), List.of(cells));
  }

  private static String places(Boat boat) {
    List<Station> stations = boat.hull().stations();
    return "Plumb from the top of the rail to the water. Bow: at station "
        + named(stations.get(stations.size() - 1))
        + ", stern: at station "
        + named(stations.get(0))
        + ", both on the port side; port and starboard: amidships, at station "
        + named(stations.get(AfloatProof.amidships(boat.hull())));
  }

  private static String named(Station station) {
    return "\"" + station.name() + "\"";
  }

  private static SheetCells rails(String heading, String said, String key) {
    return new SheetCells(
        heading,
        said,
        READINGS,
        Stream.of("bow", "stern", "port", "starboard")
            .map(point -> ProofCell.of(point, key + "." + point))
            .toList());
  }

  private static SheetCells people() {
    List<ProofCell> cells = new ArrayList<>();
    String[][] fields = {
      {"name", "name"},
      {"weight, dressed", "mass"},
      {"place", "place"},
      {"to port of the middle", "y"},
      {"from aft", "x"}
    };
    for (String[] field : fields) {
      cells.add(
          new ProofCell(
              field[0],
              IntStream.rangeClosed(1, PEOPLE)
                  .mapToObj(i -> "proof.person." + i + "." + field[1])
                  .toList()));
    }
    return new SheetCells(
        "People seated",
        "No more of them than were recommended; in doubt nobody. Starboard with a minus; from aft"
            + " only on a long bench.",
        IntStream.rangeClosed(1, PEOPLE).mapToObj(Integer::toString).toList(),
        cells);
  }

  private static void weight(List<SheetCells> all) {
    all.add(
        one(
            "A weight moved across, nobody aboard",
            "From aft and up: to the middle of the weight. Up is from the lowest point of the"
                + " bottom. A plumb line or a level counts from where it stood with the weight in"
                + " the middle.",
            ProofCell.of("weight", "proof.weight.mass"),
            ProofCell.of("from aft", "proof.weight.x"),
            ProofCell.of("up", "proof.weight.z"),
            ProofCell.of("rails / plumb line / level", "proof.weight.by"),
            ProofCell.of("plumb line, length", "proof.pendulum")));
    all.add(
        new SheetCells(
            "",
            "",
            List.of("to port", "to starboard"),
            List.of(
                toSide("out from the middle", "out"),
                toSide("port rail", "port"),
                toSide("starboard rail", "starboard"),
                toSide("or swing", "swing"),
                toSide("or degrees", "level"))));
  }

  private static ProofCell toSide(String label, String key) {
    return ProofCell.of(label, "proof.toPort." + key, "proof.toStarboard." + key);
  }

  private static void trial(List<SheetCells> all, Boat boat) {
    List<ProofCell> cells = new ArrayList<>();
    cells.add(ProofCell.of("done today: yes / no", "trial.done"));
    cells.add(ProofCell.of("people", "trial.people"));
    cells.add(ProofCell.of("ages of children, or none", "trial.children"));
    List<Place> places = boat.places();
    for (int i = 0; places.size() > 1 && i < places.size(); i++) {
      cells.add(ProofCell.of("on " + places.get(i).name(), "trial.seat." + (i + 1)));
    }
    cells.add(ProofCell.of("weight in all, dressed", "trial.mass"));
    cells.add(ProofCell.of("minutes", "trial.minutes"));
    cells.add(ProofCell.of("level, off the bottom: yes / no", "trial.level"));
    cells.add(ProofCell.of("heads clear: yes / no", "trial.heads"));
    cells.add(ProofCell.of("seen by", "trial.by"));
    String heading = "Full of water, if you like: battery, motor and electronics ashore";
    String said =
        "In knee-deep water, filled to the brim, people on their seats for ten minutes; each gets"
            + " out first once, and is left in it alone once. The page of the boat tells more. Asked"
            + " one by one, on the day of the trial: it counts on no other.";
    for (int from = 0; from < cells.size(); from += MOST_COLUMNS) {
      int to = Math.min(cells.size(), from + MOST_COLUMNS);
      all.add(
          new SheetCells(
              from == 0 ? heading : "",
              from == 0 ? said : "",
              List.of(""),
              cells.subList(from, to)));
    }
  }

  @Override
  public String heading() {
    return TITLE;
  }

  /** The sheet as plain text. */
  @Override
  public String toString() {
    return page().toString();
  }

  @Override
  public Page page() {
    Page page = new Page().title(TITLE + ": " + boat.name());
    page.paragraph(
        boat.units().isMetric()
            ? "Lengths in metres, to the millimetre; weights in kilograms"
            : "Lengths in feet and inches, to the eighth of an inch; weights in pounds",
        "Type \"prove\" afterwards: it asks in this very order, a line of boxes at a time with ;"
            + " between, or one by one where this sheet says so; Enter skips what was not done");
    page.points(ProofPage.CAUTIONS);
    page.paragraph(ProofPage.toHand(boat));
    for (SheetCells section : sections) {
      if (!section.heading().isEmpty()) {
        page.heading(section.heading());
      }
      page.paragraph(section.instruction());
      page.table(table(section));
    }
    return page;
  }

  private static Table table(SheetCells section) {
    boolean named = section.lines().stream().anyMatch(line -> !line.isEmpty());
    int each = (named ? WIDTH - FIRST : WIDTH) / section.cells().size();
    List<Table.Column> columns = new ArrayList<>();
    if (named) {
      columns.add(new Table.Column("", FIRST));
    }
    section.cells().forEach(cell -> columns.add(new Table.Column(cell.label(), each)));
    List<List<String>> rows =
        section.lines().stream().map(line -> row(line, named, section.cells().size())).toList();
    return Table.close(columns, rows);
  }

  private static List<String> row(String line, boolean named, int cells) {
    List<String> row = new ArrayList<>();
    if (named) {
      row.add(line);
    }
    IntStream.range(0, cells).forEach(i -> row.add(""));
    return row;
  }
}
