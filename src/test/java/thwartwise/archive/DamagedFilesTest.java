package thwartwise.archive;

import static org.assertj.core.api.Assertions.catchThrowable;
import static thwartwise.Assertions.assertThat;

import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.boat.WrongBoats;
import thwartwise.json.UnusableInput;
import thwartwise.record.SampleRecords;

/** Files with a few letters changed at random: read, or refused in one line, and nothing else. */
class DamagedFilesTest {
  private static final String PIECES = "{}[]\",:0123456789.-+eENan tru\u0000\u001b\n\\u";
  private static final int TIMES = 3000;

  @Test
  void a_damaged_boat_file_is_read_or_refused_in_one_line() {
    damage(WrongBoats.goodFile(), text -> BoatFile.parse(text, "soup.json"));
  }

  @Test
  void a_damaged_record_is_read_or_refused_in_one_line() {
    String json =
        RecordFile.write(
            SampleRecords.of(BoatFile.parse(WrongBoats.goodFile(), ""), SampleRecords.report()));
    damage(json, text -> RecordFile.parse(text, "record.json"));
  }

  private static void damage(String good, Consumer<String> read) {
    Random random = new Random(20260614);
    int refused = 0;
    for (int i = 0; i < TIMES; i++) {
      String text = damaged(good, random);
      Throwable thrown = catchThrowable(() -> read.accept(text));
      if (thrown != null) {
        assertThat(thrown).as(text).isInstanceOf(UnusableInput.class);
        assertThat(thrown.getMessage()).doesNotContain("\n", "tools.", "java.", "Exception");
        refused++;
      }
    }
    assertThat(refused).isBetween(TIMES / 4, TIMES);
  }

  private static String damaged(String good, Random random) {
    StringBuilder text = new StringBuilder(good);
    for (int n = random.nextInt(3); n >= 0; n--) {
      int at = random.nextInt(text.length());
      int until = Math.min(text.length(), at + random.nextInt(4));
      int piece = random.nextInt(PIECES.length());
      text.replace(at, until, PIECES.substring(piece, piece + 1));
    }
    return text.toString();
  }
}
