package thwartwise.shell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import thwartwise.archive.Workspace;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/**
 * The rule sets of one inspection: the bundled ones, those in the folder, and those named on the
 * line. A set that cannot be read stops everything, because an answer without a rule that somebody
 * wanted would be too high.
 */
final class RuleBooks {
  private RuleBooks() {}

  static RuleBook of(CommandInput given) {
    return of(given.workspace(), given.paths(OptionWord.RULES));
  }

  static RuleBook of(Workspace workspace, List<Path> named) {
    RuleBook shipped = RuleSetFile.bundledRuleBook();
    List<Path> files = new ArrayList<>(workspace.ruleFiles());
    files.addAll(named);
    List<RuleSet> sets = files.stream().map(f -> RuleSetFile.read(f, shipped.base())).toList();
    return shipped.and(sets);
  }
}
