package thwartwise.shell;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.archive.DraftAnswer;
import thwartwise.archive.DraftLock;
import thwartwise.archive.Workspace;
import thwartwise.walk.engine.Answer;

/**
 * The answers of one unfinished walk on disk. The file is named after the time of its beginning, so
 * that two walks never overwrite each other, whatever the boats are called.
 */
record Draft(Workspace workspace, String name) {
  private static final DateTimeFormatter BEGUN =
      DateTimeFormatter.ofPattern("'walk-'yyyy-MM-dd-HHmmss", Locale.ROOT);

  static Draft startedAt(LocalDateTime now, Workspace workspace) {
    return new Draft(workspace, BEGUN.format(now));
  }

  /** The drafts, newest first. */
  static List<Draft> in(Workspace workspace) {
    return workspace.drafts().stream()
        .sorted(java.util.Comparator.reverseOrder())
        .map(name -> new Draft(workspace, name))
        .toList();
  }

  List<Answer> answers() {
    return workspace.draft(name).orElse(List.of()).stream()
        .map(kept -> new Answer(kept.question(), kept.typed()))
        .toList();
  }

  void save(List<Answer> answers) {
    workspace.saveDraft(
        name, answers.stream().map(a -> new DraftAnswer(a.question(), a.typed())).toList());
  }

  /** The lock; empty when another terminal works on the draft. */
  Optional<DraftLock> lock() {
    return workspace.lockDraft(name);
  }

  void delete() {
    workspace.deleteDraft(name);
  }
}
