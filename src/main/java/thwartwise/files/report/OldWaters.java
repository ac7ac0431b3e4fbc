package thwartwise.files.report;

import java.util.List;
import thwartwise.json.ObjectReader;
import thwartwise.json.RecordCodec;
import thwartwise.json.ValueReader;
import thwartwise.rules.ValidWaters.WaterStatement;
import thwartwise.rules.ValidWaters.WaterStatement.Kind;

/** What is said of the waters; older reports say it in sentences alone, or not at all. */
final class OldWaters {
  private static final String HOLDS = "Holds for: ";
  private static final String NOT = "Not for: ";

  private OldWaters() {}

  static List<WaterStatement> read(ObjectReader report) {
    return report.has("watersAre")
        ? ReportValues.list(report, "watersAre", "statement").stream()
            .flatMap(item -> RecordCodec.read(item, WaterStatement.class).stream())
            .toList()
        : report.optional("waters").map(ValueReader::texts).orElse(List.of()).stream()
            .map(OldWaters::of)
            .toList();
  }

  static WaterStatement of(String sentence) {
    if (sentence.startsWith(HOLDS)) {
      return new WaterStatement(Kind.HOLDS_FOR, sentence.substring(HOLDS.length()));
    }
    return sentence.startsWith(NOT)
        ? new WaterStatement(Kind.NOT_FOR, sentence.substring(NOT.length()))
        : new WaterStatement(Kind.FURTHER, sentence);
  }
}
