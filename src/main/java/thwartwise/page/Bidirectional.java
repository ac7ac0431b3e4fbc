package thwartwise.page;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Puts words written from right to left into the order they are set in, stretch by stretch as the
 * HTML page keeps them apart. Letters that change their shape beside each other are set as they
 * stand alone.
 */
public final class Bidirectional implements BidiReorderer {
  private static final Pattern LETTER_WITH_ACCENTS = Pattern.compile("\\X");

  @Override
  public String reorderRTLTextToLTR(String text) {
    StringBuilder turned = new StringBuilder();
    LETTER_WITH_ACCENTS
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .forEach(letter -> turned.insert(0, letter));
    return turned.toString();
  }

  @Override
  public String shapeText(String text) {
    return text;
  }

  @Override
  public String deshapeText(String text) {
    return text;
  }

  @Override
  public boolean isLiveImplementation() {
    return true;
  }

  /** The stretches of a paragraph, as the library asks for them. */
  static final class Runs implements BidiSplitter {
    private List<BidiRun> stretches = List.of();

    @Override
    public void setParagraph(String paragraph, byte defaultDirection) {
      stretches = BidiRun.of(paragraph);
    }

    @Override
    public int countTextRuns() {
      return stretches.size();
    }

    @Override
    public BidiTextRun getVisualRun(int run) {
      BidiRun stretch = stretches.get(run);
      return new BidiTextRun(
          stretch.start(), stretch.end() - stretch.start(), stretch.rightToLeft() ? RTL : LTR);
    }

    @Override
    public byte getBaseDirection(String paragraph) {
      return LTR;
    }
  }
}
