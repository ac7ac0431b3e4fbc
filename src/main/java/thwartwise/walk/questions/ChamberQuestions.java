package thwartwise.walk.questions;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import thwartwise.boat.Chamber;
import thwartwise.boat.Chamber.Twin;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.boat.Seal;
import thwartwise.geometry.Box;
import thwartwise.measured.BoatQuantity;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Tape;
import thwartwise.walk.engine.WordQuestions;

/** The spaces and blocks that may hold the swamped boat up. */
public final class ChamberQuestions {
  private static final Filling OPEN = new Filling.Air(Seal.OPEN, Optional.empty());

  private final Replay replay;
  private final Tape tape;
  private final Outline outline;
  private final FillingQuestions fillings;

  public ChamberQuestions(Replay replay, Tape tape, Outline outline, LocalDate today) {
    this.replay = replay;
    this.tape = tape;
    this.outline = outline;
    this.fillings = new FillingQuestions(replay, tape, today);
  }

  /** Sets litres poured in, m³, beside what the box holds. */
  public interface DrawnVolume {
    Optional<String> words(double poured, Box box);
  }

  public List<Chamber> chambers(DrawnVolume drawn, Consumer<List<Chamber>> known) {
    return new RepeatedQuestion(
            replay, "chamber", "chamber", "Is there any enclosed space or foam block?")
        .inRows("Chamber", "name", "aft", "fore", "starboard", "port", "lower", "upper")
        .orNone(
            entry ->
                entry
                    .how(
                        "Bow locker, box under a thwart, side tank, block of foam: whatever might",
                        "hold the boat up when it is full of water.")
                    .why(
                        "An untested chamber counts for nothing; name it all the same, and the",
                        "report says what it would be worth once its leak test is recorded.")
                    .inDoubt(false, "no"),
            (key, before) -> chamber(key, before, drawn),
            known);
  }

  private Chamber chamber(String key, List<Chamber> before, DrawnVolume drawn) {
    String name = name(key, before);
    String subject = "Chamber " + WordQuestions.quoted(name);
    Box box = new LimitQuestions(replay, tape, outline, key, subject).box();
    boolean mirrored = mirrored(key, subject, new ChamberSlips(name, box, outline, before));
    Chamber undescribed = new Chamber(name, box, OPEN, Optional.empty(), mirrored);
    List<String> subjects = undescribed.parts().stream().map(ChamberQuestions::subject).toList();
    Filling filling = fillings.filling(key, subject, subjects.get(0));
    Twin twin = Twin.LIKE_THE_DRAWN;
    Optional<Double> litres = litres(key, subjects.get(0), poured -> drawn.words(poured, box));
    if (mirrored) {
      twin =
          twin(
              key + ".twin",
              subjects.get(1),
              filling,
              litres,
              poured -> drawn.words(poured, box.mirrored()));
    }
    return new Chamber(name, box, filling, litres, mirrored, false, twin);
  }

  /** A chamber in questions: twins by their sides. */
  public static String subject(ChamberPart part) {
    return "Chamber "
        + WordQuestions.quoted(part.whole().name())
        + part.side().map(side -> ", " + side.word()).orElse("");
  }

  /** Foam is told once for both; a seal and its test, and litres, of each. */
  private Twin twin(
      String key,
      String subject,
      Filling drawn,
      Optional<Double> poured,
      Function<Double, Optional<String>> beside) {
    return new Twin(
        drawn instanceof Filling.Air ? Optional.of(fillings.air(key, subject)) : Optional.empty(),
        poured.isPresent() ? litres(key, subject, beside) : Optional.empty());
  }

  private String name(String key, List<Chamber> before) {
    return replay.ask(
        WordQuestions.name(
                key + ".name", "Chamber, name", before.stream().map(Chamber::name).toList())
            .how(
                "Such as fore locker, side foam. Or on one line: name; aft; fore; starboard;",
                "port; lower; upper limit; twin; air or foam; and so on as asked.")
            .why("Findings and advice call it by this name."));
  }

  private boolean mirrored(String key, String subject, ChamberSlips slips) {
    return replay.ask(
        WordQuestions.yesNo(key + ".mirrored", subject + ", has it a twin?")
            .how("yes: the same again on the other side, as in a mirror on the middle line.")
            .why("Each has its own seal, test and litres; it is lost separately in the checks.")
            .orElse(false, "no")
            .row(subject, List.of("twin: yes or no", "air; seal", "or foam; closed; fastened"))
            .unless(slips::twinAcrossTheMiddle)
            .unless(slips::overlap));
  }

  private Optional<Double> litres(
      String key, String subject, Function<Double, Optional<String>> beside) {
    return replay.ask(
        tape.litres(key + ".litres", subject + ", it holds")
            .how(
                "Count litre jugs of water, or bags of packing beads, until it is full; of",
                "twins each by itself.")
            .why("The smaller of drawn and measured litres counts. Left out: drawn only.")
            .within(tape.usual(BoatQuantity.CHAMBER_LITRES))
            .remark(beside)
            .optional("not measured"));
  }
}
