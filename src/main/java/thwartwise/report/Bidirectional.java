package thwartwise.report;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;

/**
 * Puts words written from right to left into the order they are set in, with what the JDK knows of
 * it. Letters that change their shape beside each other are set as they stand alone.
 */
final class Bidirectional implements BidiReorderer {

  @Override
  public String reorderRTLTextToLTR(String text) {
    return new StringBuilder(text).reverse().toString();
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

  /** Finds the stretches of one direction in a paragraph. */
  static final class Runs implements BidiSplitter {
    private Bidi bidi = new Bidi("", Bidi.DIRECTION_LEFT_TO_RIGHT);

    @Override
    public void setParagraph(String paragraph, byte defaultDirection) {
      int direction =
          defaultDirection == RTL ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT;
      bidi = new Bidi(paragraph, direction);
    }

    @Override
    public int countTextRuns() {
      return bidi.getRunCount();
    }

    @Override
    public BidiTextRun getVisualRun(int run) {
      int start = bidi.getRunStart(run);
      return new BidiTextRun(
          start, bidi.getRunLimit(run) - start, bidi.getRunLevel(run) % 2 == 0 ? LTR : RTL);
    }

    @Override
    public byte getBaseDirection(String paragraph) {
      return NEUTRAL;
    }
  }
}
