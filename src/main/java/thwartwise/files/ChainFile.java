package thwartwise.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.record.ChainList;
import thwartwise.record.ChainList.Line;

/**
 * The list of a boat's records, {@code chain.list}: a line that names the format, then a line for
 * each record. Lines are only ever added at the end; whatever stands there, damaged or not, stays.
 */
record ChainFile(Path path) {
  static final String NAME = "chain.list";
  private static final int VERSION = 1;
  private static final String TITLE = "thwartwise/chain/";
  private static final String HEADER =
      TITLE + VERSION + ": number, file and SHA-256 of each record, in the order they were kept";
  private static final Pattern NEWER = Pattern.compile(TITLE + "([0-9]{1,6})\\b.*");
  private static final Pattern RECORD =
      Pattern.compile("([1-9][0-9]{0,6}) (\\S(?:.*\\S)?) ([0-9a-f]{64})");
  private static final Pattern ANEW = Pattern.compile("begun anew at ([1-9][0-9]{0,6})");

  boolean there() {
    return Files.exists(path);
  }

  ChainList list() {
    if (!there()) {
      return ChainList.NONE;
    }
    String[] lines = text().split("\n", -1);
    refuseNewer(lines[0]);
    List<Line> records = new ArrayList<>();
    List<Integer> spoilt = new ArrayList<>();
    List<Integer> anew = new ArrayList<>();
    for (int i = 0; i < lines.length; i++) {
      Matcher record = RECORD.matcher(lines[i]);
      Matcher begun = ANEW.matcher(lines[i]);
      if (i > 0 && record.matches()) {
        records.add(new Line(Integer.parseInt(record.group(1)), record.group(2), record.group(3)));
      } else if (i > 0 && begun.matches()) {
        anew.add(Integer.parseInt(begun.group(1)));
      } else if (!belongs(i, lines)) {
        spoilt.add(i + 1);
      }
    }
    return new ChainList(true, records, spoilt, anew);
  }

  /** The title, and the nothing after the last line's end. */
  private static boolean belongs(int at, String[] lines) {
    return at == 0 ? lines[0].equals(HEADER) : at == lines.length - 1 && lines[at].isEmpty();
  }

  private void refuseNewer(String title) {
    Matcher newer = NEWER.matcher(title);
    if (newer.matches() && Integer.parseInt(newer.group(1)) > VERSION) {
      throw Spot.whole(path.toString())
          .fault(
              "this is a list of records of version %s and this program reads version %d."
                  + " A newer program is needed.",
              newer.group(1), VERSION);
    }
  }

  /** A byte that is no text spoils its line and not the whole list. */
  private String text() {
    return new String(bytes(), StandardCharsets.UTF_8);
  }

  private byte[] bytes() {
    return InputFile.bytes(path, "a list of records", InputFile.RECORD_BYTES);
  }

  void begunAnew(int number) {
    append("begun anew at " + number);
  }

  void append(Line line) {
    append(line.number() + " " + line.file() + " " + line.hash());
  }

  private void append(String line) {
    byte[] before = there() ? bytes() : (HEADER + "\n").getBytes(StandardCharsets.UTF_8);
    boolean open = before.length > 0 && before[before.length - 1] != '\n';
    byte[] added = ((open ? "\n" : "") + line + "\n").getBytes(StandardCharsets.UTF_8);
    byte[] all = Arrays.copyOf(before, before.length + added.length);
    System.arraycopy(added, 0, all, before.length, added.length);
    AtomicFile.write(path, all);
  }
}
