package thwartwise.shell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.archive.Workspace;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.Boat;
import thwartwise.boat.KeptProof;
import thwartwise.boat.ObservedTrial;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.boat.BoatMark;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.proof.ProofAssessment;
import thwartwise.report.ProofPage;
import thwartwise.rules.RuleBook;
import thwartwise.spread.InputKind;
import thwartwise.walk.Walk;

/**
 * Asks for the readings of a boat afloat, says whether it floats as it was measured, and saves the
 * proof.
 */
final class ProveCommand implements ShellCommand {
  private static final OptionWord AGAIN =
      new OptionWord("again", "", "hold the last proof against what is measured now", false);

  private final Inspector inspector;

  ProveCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "prove";
  }

  @Override
  public String getDescription() {
    return "say whether the boat floats as it was measured";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(
        OptionWord.BOAT,
        AGAIN,
        CarefulMeasurements.BETTER,
        PreparedAnswers.ANSWERS,
        OptionWord.RULES,
        UnitsChoice.UNITS,
        OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        For a boat that floats beside the landing: in calm, shallow water, with a line
        ashore and life jackets on. Asks in rows how high the rail stands above the
        water with nobody aboard, with known people seated, and with a known weight
        set down to port and to starboard, for the time of some rolls, and last for
        what was seen of the boat full of water in knee-deep water; Enter skips each.
        back, list, change, why and stop work as in the walk. "sheet --proof" prints
        it all on a sheet for the pencil.

        What was read is held against what the measurements let expect, all of it
        together. Where it agrees, it says what weight and centre of the bare hull fit
        best, before and after. Where it does not, the recommendation is withdrawn,
        and the measurement most likely wrong is named, and by how much: nobody goes
        until a later proof agrees, or the boat was measured again and "refit", or
        "prove --again" after the file was edited, finds that the proof agrees with
        it. The roll is a cross-check. The proof is kept in the boat file with both
        numbers. Name with --better what was measured with care, in the words that
        "help spread" lists.

        Exit codes, for scripts:
          0  the boat floats as it was measured, within what that may be off
          1  it does not, or nothing was compared
          2  the file cannot be used
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Path file = BoatChoice.of(given, this);
    Boat boat = UnitsChoice.of(BoatFile.read(file), given, this);
    Set<InputKind> better = CarefulMeasurements.of(given, this);
    RuleBook rules = RuleBooks.of(given);
    Conversation conversation = PreparedAnswers.conversation(context, given);
    if (given.has(AGAIN)) {
      return again(file, boat, rules, better, conversation).status();
    }
    conversation.print(ProofPage.opening(boat).stripTrailing());
    BriefConversation.Ended ended =
        new BriefConversation(conversation, Walk.ofProof(inspector.today(), boat)).asked();
    conversation.print("");
    if (ended.boat().isEmpty()) {
      conversation.print("Stopped before the last question, so nothing was compared or kept.");
      return Exit.HOLDS_BACK.status();
    }
    AfloatProof proof = Walk.proof(inspector.today(), boat, ended.answers());
    Optional<ProofAssessment> assessed = assessed(file, boat, proof, rules, better);
    Optional<ObservedTrial> seen =
        ended.boat().filter(after -> !after.equals(boat)).flatMap(Boat::observedTrial);
    Optional<Boat> kept = kept(file, boat, assessed, seen);
    conversation.print(ProofPage.of(boat, proof, assessed, seen, kept).stripTrailing());
    boolean agrees = assessed.filter(a -> a.comparison().agrees()).isPresent();
    boolean failed = seen.filter(ObservedTrial::failed).isPresent();
    return (agrees && !failed ? Exit.NOTHING_HOLDS_BACK : Exit.HOLDS_BACK).status();
  }

  /** Compares the proof that holds the launch with the boat as it is now; nothing is read again. */
  private Exit again(
      Path file, Boat boat, RuleBook rules, Set<InputKind> better, Conversation conversation) {
    ProofReassessment again =
        BoatChoice.consistent(
            file, () -> ProofReassessment.of(boat, rules.base(), better, inspector.today()));
    if (again.assessed().isEmpty()) {
      conversation.print("No proof afloat holds the launch of this boat. Nothing was changed.");
      return Exit.NOTHING_HOLDS_BACK;
    }
    ProofAssessment assessed = again.assessed().get();
    Workspace.rewrite(file, BoatFile.read(file).withProofs(again.boat().proofs()));
    conversation.print(ProofPage.again(boat, assessed, again.boat()).stripTrailing());
    return assessed.comparison().agrees() ? Exit.NOTHING_HOLDS_BACK : Exit.HOLDS_BACK;
  }

  /** Empty if the file changed meanwhile, because the readings are then about another boat. */
  private static Optional<Boat> kept(
      Path file, Boat asked, Optional<ProofAssessment> assessed, Optional<ObservedTrial> seen) {
    Boat fresh = BoatFile.read(file);
    boolean nothing = assessed.isEmpty() && seen.isEmpty();
    if (nothing || !fresh.in(asked.units()).equals(asked)) {
      return Optional.empty();
    }
    Boat tried = seen.isPresent() ? fresh.withObservedTrial(seen) : fresh;
    Boat proved = assessed.map(a -> withProof(tried, a)).orElse(tried);
    Workspace.rewrite(file, proved);
    return Optional.of(proved);
  }

  /** The boat with a saved proof. */
  static Boat withProof(Boat boat, ProofAssessment assessed) {
    String mark = BoatMark.ofProof(boat, assessed.proof());
    List<KeptProof> proofs = new ArrayList<>(boat.proofs());
    proofs.add(new KeptProof(assessed.proof(), assessed.outcome(), mark, true));
    return boat.withProofs(proofs);
  }

  private Optional<ProofAssessment> assessed(
      Path file, Boat boat, AfloatProof proof, RuleBook rules, Set<InputKind> better) {
    return BoatChoice.consistent(
        file,
        () ->
            InterruptibleWork.of(
                "Comparing",
                progress ->
                    ProofAssessment.of(
                        boat,
                        proof,
                        rules.base(),
                        RuleSetFile.measuringSpreads(),
                        better,
                        inspector.today())));
  }
}
