package thwartwise.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.json.InputFile;
import thwartwise.json.Location;

/**
 * Several files that appear together or not at all. All of them are written to the folder {@code
 * .staged}, which is renamed to {@code .committed}; then each file is moved to its place. A program
 * killed before the renaming leaves the old state. After it, the next program that opens the folder
 * finishes the transaction. A disk that refuses to write leaves the old state.
 *
 * <p>The caller holds the {@link StoreLock}.
 */
final class FileTransaction {
  private static final String STAGED = ".staged";
  private static final String COMMITTED = ".committed";

  private final Path root;
  private final Path staged;
  private final Path committed;
  private final List<TransactionPlan.Step> steps = new ArrayList<>();
  private final Map<String, byte[]> contents = new LinkedHashMap<>();

  private FileTransaction(Path root, Path folder) {
    this.root = root;
    this.staged = folder.resolve(STAGED);
    this.committed = folder.resolve(COMMITTED);
  }

  /**
   * Begins a transaction, after an unfinished one has been finished.
   *
   * @param root every file lies below it
   * @param folder where it is staged, on the same disk
   */
  static FileTransaction in(Path root, Path folder) {
    FileTransaction files = new FileTransaction(root, folder);
    files.recover();
    return files;
  }

  static boolean isUnfinished(Path folder) {
    return Files.exists(folder.resolve(STAGED)) || Files.exists(folder.resolve(COMMITTED));
  }

  /** Adds a new file; if it fails, none of the others appears. */
  void create(Path target, byte[] content) {
    put(TransactionPlan.Kind.CREATE, target, content);
  }

  /**
   * Replaces a file; if it fails, none of the others appears. It is the last file of which this is
   * true.
   */
  void replace(Path target, byte[] content) {
    put(TransactionPlan.Kind.REPLACE, target, content);
  }

  /** Adds a file that can be repaired later; if it fails, the others still appear. */
  void note(Path target, byte[] content) {
    put(TransactionPlan.Kind.NOTE, target, content);
  }

  /** Removes a file; if that fails, the others still appear. */
  void remove(Path target) {
    steps.add(new TransactionPlan.Step(TransactionPlan.Kind.REMOVE, "-", relative(target)));
  }

  private void put(TransactionPlan.Kind kind, Path target, byte[] content) {
    String name = Integer.toString(steps.size() + 1);
    contents.put(name, content);
    steps.add(new TransactionPlan.Step(kind, name, relative(target)));
  }

  private String relative(Path target) {
    return root.relativize(target.toAbsolutePath()).toString().replace('\\', '/');
  }

  /**
   * Makes all of it appear.
   *
   * @return one line for each file that could be neither written nor removed while all else stands
   * @throws UnusableInput when nothing appeared
   */
  List<String> commit() {
    if (steps.isEmpty()) {
      return List.of();
    }
    stage();
    return carriedOut(steps);
  }

  private void stage() {
    Path writing = staged;
    try {
      Files.createDirectories(staged);
      for (TransactionPlan.Step step : steps) {
        if (contents.containsKey(step.staged())) {
          writing = root.resolve(step.target());
          AtomicFile.writeThrough(staged.resolve(step.staged()), contents.get(step.staged()));
        }
      }
      String plan = TransactionPlan.write(steps);
      AtomicFile.writeThrough(
          staged.resolve(TransactionPlan.NAME), plan.getBytes(StandardCharsets.UTF_8));
      AtomicFile.settle(staged);
      AtomicFile.rename(staged, committed);
      AtomicFile.settle(committed.getParent());
    } catch (IOException e) {
      dropStaged();
      throw WriteFault.of(writing, e);
    }
  }

  private List<String> carriedOut(List<TransactionPlan.Step> plan) {
    List<String> warnings = new ArrayList<>();
    for (int i = 0; i < plan.size(); i++) {
      TransactionPlan.Step step = plan.get(i);
      Path target = root.resolve(step.target());
      try {
        carryOut(step, target);
      } catch (IOException e) {
        if (step.kind().isNeeded()) {
          undo(plan.subList(0, i));
          throw WriteFault.of(target, e);
        }
        warnings.add(target + ": " + step.kind().refusal() + ": " + WriteFault.reason(target, e));
      }
    }
    try {
      delete(committed);
    } catch (IOException leftLying) {
      // All files are in their places; the next transaction clears the empty folder.
      return warnings;
    }
    return warnings;
  }

  /** Carries out a step. A step that was carried out before the program was killed is skipped. */
  private void carryOut(TransactionPlan.Step step, Path target) throws IOException {
    if (step.kind() == TransactionPlan.Kind.REMOVE) {
      Files.deleteIfExists(target);
      return;
    }
    Path from = committed.resolve(step.staged());
    if (Files.exists(from)) {
      AtomicFile.createFolder(target.getParent());
      AtomicFile.rename(from, target);
      AtomicFile.settle(target.getParent());
    }
  }

  /**
   * Goes back to a state that the next transaction clears away; only new files can have been moved
   * by then.
   */
  private void undo(List<TransactionPlan.Step> done) {
    try {
      for (int i = done.size() - 1; i >= 0; i--) {
        Path target = root.resolve(done.get(i).target());
        Path from = committed.resolve(done.get(i).staged());
        if (!Files.exists(from)) {
          AtomicFile.rename(target, from);
        }
      }
      AtomicFile.rename(committed, staged);
    } catch (IOException stillCommitted) {
      // The disk refuses this as well; the next program that opens the folder finishes it.
      return;
    }
    dropStaged();
  }

  private void dropStaged() {
    try {
      delete(staged);
    } catch (IOException leftLying) {
      // Nobody reads it, and the next transaction clears it away.
      return;
    }
  }

  private void recover() {
    try {
      delete(staged);
      if (Files.exists(committed.resolve(TransactionPlan.NAME))) {
        carriedOut(TransactionPlan.read(committed, root));
      } else {
        delete(committed);
      }
    } catch (IOException e) {
      throw WriteFault.of(committed, e);
    }
  }

  /** Deletes the folder, its plan last: a folder without a plan was carried out. */
  private static void delete(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    for (Path file : Listing.of(folder, "[0-9]*")) {
      Files.deleteIfExists(file);
    }
    Files.deleteIfExists(folder.resolve(TransactionPlan.NAME));
    Files.deleteIfExists(folder);
  }

  /** The steps of a {@link FileTransaction}, one to a line: kind, staged file, target. */
  private static final class TransactionPlan {
    static final String NAME = "plan";
    private static final Pattern STEP = Pattern.compile("([A-Z]+) ([0-9]{1,3}|-) (\\S.*)");

    private TransactionPlan() {}

    enum Kind {
      CREATE,
      REPLACE,
      NOTE,
      REMOVE;

      /** Whether the other files appear only with this one. */
      boolean isNeeded() {
        return this == CREATE || this == REPLACE;
      }

      String refusal() {
        return this == REMOVE ? "cannot be deleted" : "cannot be written";
      }
    }

    /**
     * A step.
     *
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
      for (String line :
          InputFile.text(file, "a plan of files", InputFile.BOAT_BYTES).split("\n")) {
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

    /**
     * Whether a path is below the root, so that a plan written by somebody else cannot reach other
     * files.
     */
    private static boolean isBelow(Path root, String target) {
      Path whole = root.toAbsolutePath().normalize();
      return !target.contains("..") && whole.resolve(target).normalize().startsWith(whole);
    }
  }
}
