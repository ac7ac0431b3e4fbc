package thwartwise.archive;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.json.Location;
import thwartwise.record.Chain.ChainList;
import thwartwise.record.Chain.ChainList.Line;

/**
 * The text of the list of a boat's records: a line with the format, then a line for each record.
 * Lines are only ever added at the end; every existing line stays, damaged or not.
 *
 * @param exists whether the list was found
 * @param where the file, for messages
 */
record ChainText(boolean exists, byte[] bytes, String where) {
  private static final int VERSION = 1;
  private static final String TITLE = "thwartwise/chain/";
  private static final String HEADER =
      TITLE + VERSION + ": number, file and SHA-256 of each record, in the order they were kept";
  private static final Pattern NEWER = Pattern.compile(TITLE + "([0-9]{1,6})\\b.*");
  private static final Pattern RECORD =
      Pattern.compile("([1-9][0-9]{0,6}) (\\S(?:.*\\S)?) ([0-9a-f]{64})");
  private static final Pattern ANEW = Pattern.compile("begun anew at ([1-9][0-9]{0,6})");

  static ChainText none(String where) {
    return new ChainText(false, (HEADER + "\n").getBytes(StandardCharsets.UTF_8), where);
  }

  ChainList list() {
    if (!exists) {
      return ChainList.NONE;
    }
    // A byte that is no text damages its own line and not the whole list.
    String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
    refuseNewer(lines[0]);
    List<Line> records = new ArrayList<>();
    List<Integer> damaged = new ArrayList<>();
    List<Integer> restarts = new ArrayList<>();
    for (int i = 0; i < lines.length; i++) {
      Matcher record = RECORD.matcher(lines[i]);
      Matcher restart = ANEW.matcher(lines[i]);
      if (i > 0 && record.matches()) {
        records.add(new Line(Integer.parseInt(record.group(1)), record.group(2), record.group(3)));
      } else if (i > 0 && restart.matches()) {
        restarts.add(Integer.parseInt(restart.group(1)));
      } else if (!belongs(i, lines)) {
        damaged.add(i + 1);
      }
    }
    return new ChainList(true, records, damaged, restarts);
  }

  /**
   * Whether a line that is no record belongs in the list: the format line, and the empty end of the
   * text.
   */
  private static boolean belongs(int at, String[] lines) {
    return at == 0 ? lines[0].equals(HEADER) : at == lines.length - 1 && lines[at].isEmpty();
  }

  private void refuseNewer(String title) {
    Matcher newer = NEWER.matcher(title);
    if (newer.matches() && Integer.parseInt(newer.group(1)) > VERSION) {
      throw Location.whole(where)
          .fault(
              "this is a list of records of version %s and this program reads version %d."
                  + " A newer program is needed.",
              newer.group(1), VERSION);
    }
  }

  ChainText restarted(int number) {
    return with("begun anew at " + number);
  }

  ChainText with(Line line) {
    return with(line.number() + " " + line.file() + " " + line.hash());
  }

  private ChainText with(String line) {
    return new ChainText(true, withLine(bytes, line), where);
  }

  /** The text with one more line; an incomplete last line stays a line of its own. */
  static byte[] withLine(byte[] before, String line) {
    boolean open = before.length > 0 && before[before.length - 1] != '\n';
    byte[] added = ((open ? "\n" : "") + line + "\n").getBytes(StandardCharsets.UTF_8);
    byte[] all = Arrays.copyOf(before, before.length + added.length);
    System.arraycopy(added, 0, all, before.length, added.length);
    return all;
  }
}
