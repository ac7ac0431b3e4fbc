package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.walk.PreviousBoats;
import thwartwise.walk.Walk;

/**
 * What three people see and type from the first line to the record, compared with a text that is
 * kept for each under {@code src/test/resources/thwartwise/conversations}. After a change that is
 * meant, write the texts anew and read what git shows as changed:
 *
 * <pre>mvn -q test -Dtest=WholeConversationsTest -Dthwartwise.renew=true</pre>
 */
class WholeConversationsTest {
  private static final String RENEW = "thwartwise.renew";
  private static final Path TEXTS = Path.of("src/test/resources/thwartwise/conversations");
  private static final int COLUMNS = 80;

  /** A pram of 8 ft with a box in the bow that was tested, and oars; and slips on the way. */
  private static final String PRAM =
      """
      name | Bath Mat
      measuredBy | Ann Lee
      units | feet
      water | fresh
      propulsion | manual
      hull.material | ply
      hull.thickness | 1/4
      hull.length | 2.44
      hull.length | 8'
      hull.stations | 3
      hull.points | why
      hull.points | 3
      hull.alike | yes
      hull.station.1.upright | yes
      hull.station.3.upright | yes
      hull.station.1.point.1.z | 2 1/2
      hull.station.1.point.2.y | 16
      hull.station.1.point.2.z | 3
      hull.station.1.point.3.y | 20.5
      hull.station.1.point.3.z | 17 1/2
      hull.station.2.x | 4'
      hull.station.2.point.1.z | 0
      hull.station.2.point.2.y | 19
      hull.station.2.point.2.z | 1
      hull.station.2.point.3.y | 12
      hull.station.2.point.3.z | back
      hull.station.2.point.3.y | 2'
      hull.station.2.point.3.z | 1' 4 1/2"
      hull.station.3.x | 8 ft
      hull.station.3.point.1.z | 4
      hull.station.3.point.2.y | 9
      hull.station.3.point.2.z | 5
      hull.station.3.point.3.y | 13
      hull.station.3.point.3.z | 20
      hull.mass | about 65
      hull.mass | 65
      hull.centre | no
      hull.floor | 1
      hull.decked.1.any | no
      opening.1.any | no
      chamber.1.any | yes
      chamber.1.kind | bow
      chamber.1.name | bow box
      chamber.1.x.from | 6'
      chamber.1.z.from | hull
      chamber.1.z.to | 12
      chamber.1.filling | air
      chamber.1.seal | proven
      chamber.1.test.date | 2026-05-02
      chamber.1.test.how | filled with a hose
      chamber.1.test.minutes | 20
      chamber.1.test.litresIn | 0
      chamber.1.test.by | Ann Lee
      chamber.2.any | no
      place.1.name | thwart
      place.1.lies | across
      place.1.x | 48
      place.1.z | 10
      place.1.halfWidth | 16
      place.1.people | 1
      place.2.any | no
      kit.1.any | oars; 9; 4'; 0; 14; yes; none;
      kit.2.any | no
      bailer | 5
      person.1.any | no
      waters.sheltered | yes
      whenSwamped | sit in it
      finish | list
      """;

  private static final String BATTERY =
      """
      way | changed
      changed.boat | Bath Mat
      units | feet
      changed.1 | added
      changed.1.name | lantern battery
      changed.1.mass | 11
      changed.1.x | 3'
      changed.1.y | 0
      changed.1.z | 4
      changed.1.in | none
      changed.1.fastened | not sure
      """;

  private static final String BORROWED =
      """
      way | borrowed
      name | Gravy Boat
      units | metric
      short.length | 3.66
      short.form | flat
      short.beam | 1.38
      short.bottom | 1.12
      short.depth | 0.41
      short.stern | don't know
      short.stern | 1.16
      short.notch | no
      short.mass | about 70
      short.seats | 2
      short.seat.aft | 0.5
      short.seat.fore | 2.1
      short.seat.high | 0.28
      short.motor | no
      short.kit | 8
      short.tested | trial
      trial.people | 2
      trial.children | 12
      trial.seat.1 | 1
      trial.seat.2 | 1
      trial.mass | 130
      trial.minutes | 12 min
      trial.level | yes
      trial.heads | yes
      trial.by | the bosun
      waters.sheltered | yes
      """;

  @TempDir Path folder;
  private final TestShell shell = TestShell.whoseInspection(Inspection::withoutAdvice);

  private Walk walk(Boat... known) {
    return Walk.on(
        TestShell.TODAY, new PreviousBoats(List.of(known)), RuleSetFile.cautiousDefault());
  }

  /** At the prompt of the shell, in one sitting. */
  private void says(String name, List<String> typed) throws IOException {
    shell.typing(typed.toArray(String[]::new)).typing("quit").openPrompt();
    String said =
        shell
            .out()
            .replace(folder.toString(), "FOLDER")
            .replaceAll("(\\d{4}-\\d\\d-\\d\\dT\\d{6})-[0-9a-f]{8}", "$1-HASH")
            .replaceAll("(?m) +$", "");
    Path text = TEXTS.resolve(name + ".txt");
    if (Boolean.getBoolean(RENEW)) {
      Files.createDirectories(TEXTS);
      Files.writeString(text, said, StandardCharsets.UTF_8);
    }
    assertThat(said)
        .as(
            "%s. If the new text is what is meant, -D%s=true writes it anew; read the change",
            text, RENEW)
        .isEqualTo(Files.readString(text, StandardCharsets.UTF_8));
    // A path is never broken, nor what is typed behind a prompt.
    assertThat(said.lines().filter(line -> !line.contains("FOLDER") && !line.contains(": ")))
        .allMatch(line -> line.length() <= COLUMNS);
  }

  private List<String> here(List<String> first, List<String> walked, List<String> then) {
    return Stream.of(first, walked, then)
        .flatMap(List::stream)
        .map(line -> line.replace("FOLDER", folder.toString()))
        .toList();
  }

  @Test
  void an_owner_before_the_first_launch() throws IOException {
    says(
        "owner-before-launch",
        here(
            List.of("walk --folder FOLDER"),
            new NotedAnswers(PRAM).typedAt(walk()),
            List.of("later", "records --folder FOLDER")));
    assertThat(BoatFile.read(new Workspace(folder).boatPath("Bath Mat")).chambers()).hasSize(1);
  }

  @Test
  void the_same_owner_after_adding_kit() throws IOException {
    Boat boat = new WalkSheet(false).boat();
    Path file = new Workspace(folder).saveBoat(boat);
    TestShell.whoseInspection(Inspection::withoutAdvice)
        .run("inspect", "--boat", file.toString(), "--folder", folder.toString());
    says(
        "owner-after-adding-kit",
        here(
            List.of("refit --folder FOLDER"),
            new NotedAnswers(BATTERY).typedAt(walk(boat)).stream().skip(1).toList(),
            List.of("later", "records --folder FOLDER")));
  }

  @Test
  void a_youth_leader_with_a_borrowed_boat() throws IOException {
    says(
        "youth-leader-borrowed",
        here(
            List.of("walk --folder FOLDER"),
            new NotedAnswers(BORROWED).typedAt(walk()),
            List.of(
                "later",
                "today --boat \"Gravy Boat\" --folder FOLDER",
                "yes",
                "yes",
                "why",
                "yes",
                "perhaps",
                "back",
                "yes",
                "list",
                "yes",
                "",
                "no",
                "yes",
                "yes",
                "yes")));
  }
}
