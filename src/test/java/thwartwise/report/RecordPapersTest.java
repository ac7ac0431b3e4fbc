package thwartwise.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thwartwise.page.ReadBack;
import thwartwise.record.InspectionRecord;
import thwartwise.record.Paper;
import thwartwise.record.SampleRecords;

class RecordPapersTest {
  @Test
  void the_page_and_the_card_are_there_in_every_form_with_the_number_of_their_record() {
    InspectionRecord soup = SampleBoat.record(SampleRecords.report());
    Map<String, byte[]> papers =
        RecordPapers.of(soup, "n-1").stream()
            .collect(Collectors.toMap(Paper::ending, Paper::content));
    assertThat(papers)
        .containsOnlyKeys(".txt", ".html", ".pdf", "-card.txt", "-card.html", "-card.pdf");
    for (String ending : List.of(".txt", ".html", "-card.txt", "-card.html")) {
      assertThat(new String(papers.get(ending), UTF_8)).as(ending).contains("Record n-1");
    }
    for (String ending : List.of(".pdf", "-card.pdf")) {
      assertThat(ReadBack.of(papers.get(ending)).text()).as(ending).contains("Record n-1");
    }
  }

  @Test
  void papers_made_at_the_same_time_are_those_made_one_after_another() {
    InspectionRecord soup = SampleBoat.record(SampleRecords.report());
    List<Paper> papers = RecordPapers.of(soup, "n-1");
    assertThat(papers)
        .extracting(Paper::ending)
        .containsExactly(".txt", ".html", "-card.txt", "-card.html", ".pdf", "-card.pdf");
    assertThat(papers)
        .extracting(Paper::content)
        .containsExactly(
            TextPage.of(soup, "n-1").getBytes(UTF_8),
            HtmlPage.of(soup, "n-1").getBytes(UTF_8),
            CardPage.text(soup, "n-1").getBytes(UTF_8),
            CardPage.html(soup, "n-1").getBytes(UTF_8),
            HtmlPage.pdf(soup, "n-1"),
            CardPage.pdf(soup, "n-1"));
  }

  @Test
  void the_text_page_of_a_record_is_the_page_with_its_number_and_lines_to_sign() {
    InspectionRecord soup = SampleBoat.record(SampleRecords.report());
    assertThat(TextPage.of(soup, "n-1"))
        .isEqualTo(
            TextPage.of(soup)
                + """
                Record n-1. Valid until the boat, its kit or its chambers change, and not after
                2 May 2027.

                Inspected by (name, date): _____________________________________________________

                Owner (name, date): ____________________________________________________________
                """);
  }
}
