package thwartwise.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.json.InputFile;
import thwartwise.json.Location;

/** What a {@link FileTransaction} does, a step a line: its kind, the staged file, the target. */
final class TransactionPlan {
  static final String NAME = "plan";
  private static final Pattern STEP = Pattern.compile("([A-Z]+) ([0-9]{1,3}|-) (\\S.*)");

  private TransactionPlan() {}

  enum Kind {
    CREATE,
    REPLACE,
    NOTE,
    REMOVE;

    /** Whether the others wait for it. */
    boolean isNeeded() {
      return this == CREATE || this == REPLACE;
    }

    String refusal() {
      return this == REMOVE ? "cannot be deleted" : "cannot be written";
    }
  }

  /**
   * @param staged name of the staged file; a dash when something is removed
   * @param target relative to the root, with slashes
   */
  record Step(Kind kind, String staged, String target) {}

  static String write(List<Step> steps) {
    StringBuilder plan = new StringBuilder();
    steps.forEach(
        s ->
            plan.append(s.kind())
                .append(' ')
                .append(s.staged())
                .append(' ')
                .append(s.target())
                .append('\n'));
    return plan.toString();
  }

  static List<Step> read(Path folder, Path root) {
    Path file = folder.resolve(NAME);
    List<Step> steps = new ArrayList<>();
    for (String line : InputFile.text(file, "a plan of files", InputFile.BOAT_BYTES).split("\n")) {
      Matcher step = STEP.matcher(line);
      if (!step.matches() || !isBelow(root, step.group(3)) || !isKind(step.group(1))) {
        throw Location.whole(file.toString())
            .fault("this is damaged. Move the folder it lies in somewhere else.");
      }
      steps.add(new Step(Kind.valueOf(step.group(1)), step.group(2), step.group(3)));
    }
    return steps;
  }

  private static boolean isKind(String word) {
    for (Kind kind : Kind.values()) {
      if (kind.name().equals(word)) {
        return true;
      }
    }
    return false;
  }

  /** A plan somebody else laid there must not reach files outside. */
  private static boolean isBelow(Path root, String target) {
    Path whole = root.toAbsolutePath().normalize();
    return !target.contains("..") && whole.resolve(target).normalize().startsWith(whole);
  }
}
