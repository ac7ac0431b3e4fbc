package thwartwise.files.report;

import java.util.List;
import thwartwise.inspection.QuestionMargin;
import thwartwise.inspection.Recommendation;
import thwartwise.json.Fields;
import thwartwise.json.Quantity;
import thwartwise.json.Value;

/** The recommendation, read back. */
final class RecommendationFields {
  private RecommendationFields() {}

  static Recommendation read(Fields report) {
    Fields fields = report.freeObject("recommendation", ReportFields.REMEDY);
    return new Recommendation(
        count(fields, "people"),
        Figures.read(fields, "crewKg"),
        Figures.read(fields, "loadKg"),
        Figures.read(fields, "extraKg"),
        Figures.read(fields, "adultKg"),
        count(fields, "staysUpWith"),
        count(fields, "holdsUpWhenSwamped"),
        count(fields, "ifClaimedChambersProve"),
        OldQuestions.factor(ReportFields.text(fields, "governedBy")),
        fields.value("nextPersonBreaks", ReportFields.REMEDY).texts(),
        seatings(fields),
        ReportFields.list(fields, "crewLimits", "crew limit").stream()
            .map(RecommendationFields::crewLimit)
            .toList(),
        ReportFields.flag(fields, "withheld"),
        fields.value("reasons", ReportFields.REMEDY).texts(),
        margins(fields),
        fields.has("heldOnTo") && ReportFields.flag(fields, "heldOnTo"));
  }

  /** Records older than the margins have none. */
  private static List<QuestionMargin> margins(Fields fields) {
    return fields.says("margins")
        ? ReportFields.list(fields, "margins", "margin").stream()
            .map(RecommendationFields::margin)
            .toList()
        : List.of();
  }

  private static QuestionMargin margin(Fields margin) {
    return new QuestionMargin(
        OldQuestions.of(ReportFields.text(margin, "check")), ReportFields.margin(margin, "value"));
  }

  private static Recommendation.CrewLimit crewLimit(Fields crew) {
    return new Recommendation.CrewLimit(
        count(crew, "people"),
        Figures.read(crew, "eachUpToKg"),
        crew.has("extraKg") ? Figures.read(crew, "extraKg") : Double.NaN,
        crew.has("besidesLike")
            ? crew.value("besidesLike", ReportFields.REMEDY).texts()
            : List.of(),
        seatings(crew),
        crew.has("lighter")
            ? ReportFields.list(crew, "lighter", "seating").stream()
                .map(RecommendationFields::lighter)
                .toList()
            : List.of());
  }

  private static Recommendation.Lighter lighter(Fields seating) {
    return new Recommendation.Lighter(
        seating.value("places", ReportFields.REMEDY).texts(), Figures.read(seating, "eachUpToKg"));
  }

  private static List<List<String>> seatings(Fields fields) {
    return fields.value("excludedSeatings", ReportFields.REMEDY).list().stream()
        .map(Value::texts)
        .toList();
  }

  private static int count(Fields fields, String key) {
    return fields.whole(key, Quantity.COUNT, ReportFields.REMEDY);
  }
}
