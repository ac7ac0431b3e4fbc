package thwartwise.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;
import thwartwise.record.Paper;

/** Every page next to a record: the long one and the card, each as text, HTML and PDF. */
public final class RecordPapers {
  public static final String TEXT = ".txt";
  public static final String HTML = ".html";
  public static final String PDF = ".pdf";
  public static final String CARD = "-card";

  /** The order in which a record names them. */
  private static final List<String> ORDER =
      List.of(TEXT, HTML, CARD + TEXT, CARD + HTML, PDF, CARD + PDF);

  private RecordPapers() {}

  /**
   * @param number of the record, which is the name of its file
   * @return without the PDFs where this machine cannot make any
   */
  public static List<Paper> of(InspectionRecord inspection, String number) {
    return of(inspection, number, Optional.empty());
  }

  /** The pages of a record that corrects an older one. */
  public static List<Paper> of(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    // Two halves that take about as long, one for each processor.
    List<Supplier<List<Paper>>> halves =
        List.of(
            () -> pages(inspection, number, corrects),
            () -> textAndCard(inspection, number, corrects));
    return halves.parallelStream()
        .map(Supplier::get)
        .flatMap(List::stream)
        .sorted(Comparator.comparingInt(paper -> ORDER.indexOf(paper.ending())))
        .toList();
  }

  private static List<Paper> pages(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    Page page = HtmlPage.page(inspection, number, corrects);
    List<Paper> papers = new ArrayList<>();
    papers.add(Paper.text(HTML, HtmlPage.of(page, inspection, number)));
    pdf(PDF, () -> HtmlPage.pdf(page, inspection, number)).ifPresent(papers::add);
    return papers;
  }

  private static List<Paper> textAndCard(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    List<Paper> papers = new ArrayList<>();
    papers.add(Paper.text(TEXT, TextPage.of(inspection, number, corrects)));
    papers.add(Paper.text(CARD + TEXT, CardPage.text(inspection, number)));
    papers.add(Paper.text(CARD + HTML, CardPage.html(inspection, number)));
    pdf(CARD + PDF, () -> CardPage.pdf(inspection, number)).ifPresent(papers::add);
    return papers;
  }

  /**
   * A PDF; a JDK without its drawing parts must not cost anybody the record and the other pages.
   */
  private static Optional<Paper> pdf(String ending, Supplier<byte[]> making) {
    try {
      return Optional.of(new Paper(ending, making.get()));
    } catch (RuntimeException | LinkageError e) {
      return Optional.empty();
    }
  }
}
