package thwartwise.files.report;

import java.util.List;
import java.util.Optional;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.Measure;
import thwartwise.crew.LimitingFactor;
import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measured.BoatQuantity;
import thwartwise.report.CheckWords;
import thwartwise.report.LimitingFactorWords;
import tools.jackson.databind.node.ObjectNode;

/**
 * A question, written and read back: its identity, and next to it its words for a reader of the
 * file. Reports of version 1 have the words alone.
 */
final class QuestionCodec {
  private static final String ASKS = "asks";
  private static final WordChoice<CheckId> CHECKS = WordChoice.of(CheckId::name, CheckId.values());
  private static final WordChoice<Measure> MEASURES =
      WordChoice.of(Measure::name, Measure.values());

  private QuestionCodec() {}

  /** Writes it into an object that has other keys too. */
  static ObjectNode write(ObjectNode node, CheckQuestion question) {
    node.put("check", CheckWords.of(question));
    ObjectNode asks =
        JsonText.object()
            .put("check", question.check().name())
            .put("measure", question.measure().name());
    asks.set("things", JsonText.texts(question.things()));
    node.set(ASKS, asks);
    return node;
  }

  static ObjectNode write(CheckQuestion question) {
    return write(JsonText.object(), question);
  }

  static CheckQuestion read(ObjectReader holder) {
    return holder.has(ASKS)
        ? asked(holder.freeObject(ASKS, ReportValues.REMEDY))
        : OldQuestions.of(words(holder));
  }

  /** Reads the question of a finding, which may be about the measurements. */
  static CheckQuestion read(ObjectReader holder, boolean aboutMeasurements) {
    return holder.has(ASKS) ? read(holder) : OldQuestions.of(words(holder), aboutMeasurements);
  }

  private static String words(ObjectReader holder) {
    return ReportValues.text(holder, "check");
  }

  private static CheckQuestion asked(ObjectReader asks) {
    CheckQuestion asked =
        new CheckQuestion(
            asks.oneOf("check", CHECKS, ReportValues.REMEDY),
            asks.oneOf("measure", MEASURES, ReportValues.REMEDY),
            asks.value("things", ReportValues.REMEDY).texts());
    return asked.asks(CheckId.PLAUSIBILITY, Measure.AS_MEASURED)
        ? OldQuestions.ofMeasurement(asked.things().get(0))
        : asked;
  }

  static List<CheckQuestion> readAll(ObjectReader parent, String key) {
    return isOfObjects(parent, key)
        ? ReportValues.list(parent, key, "question").stream().map(QuestionCodec::read).toList()
        : parent.value(key, ReportValues.REMEDY).texts().stream().map(OldQuestions::of).toList();
  }

  /** Writes the common subject of several figures, for a list of acts. */
  static ObjectNode write(Subject subject) {
    ObjectNode node =
        JsonText.object()
            .put("words", CheckWords.subject(subject))
            .put("check", subject.check().name());
    node.set("things", JsonText.texts(subject.names()));
    return node;
  }

  static List<Subject> readSubjects(ObjectReader parent, String key) {
    return isOfObjects(parent, key)
        ? ReportValues.list(parent, key, "act").stream().map(QuestionCodec::subject).toList()
        : parent.value(key, ReportValues.REMEDY).texts().stream()
            .map(OldQuestions::subject)
            .toList();
  }

  private static Subject subject(ObjectReader subject) {
    return new Subject(
        subject.oneOf("check", CHECKS, ReportValues.REMEDY),
        subject.value("things", ReportValues.REMEDY).texts());
  }

  private static boolean isOfObjects(ObjectReader parent, String key) {
    return parent.value(key, ReportValues.REMEDY).list().stream()
        .anyMatch(value -> value.node().isObject());
  }

  /** Writes what stops one more person; null if unknown. */
  static void write(ObjectNode node, String key, Optional<LimitingFactor> factor) {
    node.putNull(key);
    factor.ifPresent(f -> node.set(key, factor(f)));
  }

  private static ObjectNode factor(LimitingFactor factor) {
    ObjectNode node = JsonText.object();
    if (factor instanceof LimitingFactor.ByCheck check) {
      return write(node, check.question());
    }
    if (factor instanceof LimitingFactor.ByFormula formula) {
      return node.put("ruleSet", formula.ruleSet()).put("formula", formula.formula());
    }
    if (factor instanceof LimitingFactor.TooManyWays many) {
      node.put("words", LimitingFactorWords.of(factor));
      Figures.put(node, "ways", many.ways());
      return node.put("people", many.people());
    }
    return factor instanceof LimitingFactor.Stated stated
        ? node.put("words", stated.words())
        : node.put("noPlaceLeft", true).put("note", LimitingFactorWords.of(factor));
  }

  static Optional<LimitingFactor> readFactor(ObjectReader parent, String key) {
    if (!parent.hasValue(key)) {
      return Optional.empty();
    }
    return parent.value(key, ReportValues.REMEDY).node().isObject()
        ? Optional.of(factor(parent.freeObject(key, ReportValues.REMEDY)))
        : OldQuestions.factor(ReportValues.text(parent, key));
  }

  private static LimitingFactor factor(ObjectReader factor) {
    if (factor.has(ASKS)) {
      return new LimitingFactor.ByCheck(read(factor));
    }
    if (factor.has("formula")) {
      return new LimitingFactor.ByFormula(
          ReportValues.text(factor, "ruleSet"), ReportValues.text(factor, "formula"));
    }
    if (factor.has("ways")) {
      return new LimitingFactor.TooManyWays(
          Figures.read(factor, "ways"),
          factor.whole("people", BoatQuantity.COUNT, ReportValues.REMEDY));
    }
    return factor.has("noPlaceLeft")
        ? new LimitingFactor.NoPlaceLeft()
        : new LimitingFactor.Stated(ReportValues.text(factor, "words"));
  }
}
