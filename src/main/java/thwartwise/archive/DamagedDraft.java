package thwartwise.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import thwartwise.json.Reason;
import thwartwise.json.UnusableInput;

/** A draft that cannot be read: told, and put aside, so that what was answered is not lost. */
final class DamagedDraft {
  private static final String ASIDE = ".damaged";

  private DamagedDraft() {}

  /** One line when that file is one; nothing when it can be read. */
  static Stream<String> in(Path file) {
    try {
      DraftFile.read(file);
      return Stream.empty();
    } catch (UnusableInput damaged) {
      return Stream.of(
          DraftFile.isOfNewerProgram(file) ? damaged.getMessage() : putAside(file, damaged));
    }
  }

  private static String putAside(Path file, UnusableInput damaged) {
    Path aside = free(file);
    try {
      Files.move(file, aside);
      return damaged.getMessage()
          + " The walk in it was put aside as "
          + aside.getFileName()
          + "; a text editor still shows its answers.";
    } catch (IOException e) {
      return damaged.getMessage() + " It could not be put aside: " + Reason.of(e) + ".";
    }
  }

  private static Path free(Path file) {
    Path aside = file.resolveSibling(file.getFileName() + ASIDE);
    for (int next = 2; Files.exists(aside); next++) {
      aside = file.resolveSibling(file.getFileName() + ASIDE + "-" + next);
    }
    return aside;
  }
}
