package thwartwise.files.report;

import java.util.List;
import java.util.Optional;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.RecordCodec;
import thwartwise.json.ValueReader;
import thwartwise.rules.ValidWaters.WaterStatement;
import thwartwise.rules.ValidWaters.WaterStatement.Kind;
import tools.jackson.databind.node.ObjectNode;

/** Statements about the waters; older reports have them as sentences alone, or not at all. */
final class OldWaters {
  private static final String HOLDS = "Holds for: ";
  private static final String NOT = "Not for: ";

  private OldWaters() {}

  static List<WaterStatement> read(ObjectReader report) {
    return report.has("watersAre")
        ? ReportValues.list(report, "watersAre", "statement").stream()
            .flatMap(item -> known(item).stream())
            .toList()
        : report.optional("waters").map(ValueReader::texts).orElse(List.of()).stream()
            .map(OldWaters::of)
            .toList();
  }

  /** A statement in words alone is written as older programs wrote it. */
  static ObjectNode write(WaterStatement statement) {
    return statement instanceof WaterStatement.Stated stated
        ? JsonText.object().put("kind", stated.kind().name()).put("words", stated.words())
        : RecordCodec.write((Record) statement);
  }

  private static Optional<WaterStatement> known(ObjectReader item) {
    return item.has("is")
        ? RecordCodec.read(item, WaterStatement.class)
        : RecordCodec.read(item, WaterStatement.Stated.class).map(WaterStatement.class::cast);
  }

  static WaterStatement of(String sentence) {
    if (sentence.startsWith(HOLDS)) {
      return new WaterStatement.Stated(Kind.HOLDS_FOR, sentence.substring(HOLDS.length()));
    }
    return sentence.startsWith(NOT)
        ? new WaterStatement.Stated(Kind.NOT_FOR, sentence.substring(NOT.length()))
        : new WaterStatement.Stated(Kind.FURTHER, sentence);
  }
}
