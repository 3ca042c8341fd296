package tightside.print;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.text.BreakIterator;

/**
 * Splits a paragraph into runs of one direction each, by the Unicode algorithm of {@link Bidi}, so
 * that names in scripts that run from right to left print in their order. Letters are not joined.
 */
final class RightToLeft implements BidiSplitter {

  private Bidi paragraph = new Bidi(" ", Bidi.DIRECTION_LEFT_TO_RIGHT);

  @Override
  public void setParagraph(String text, byte direction) {
    int base = direction == RTL ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT;
    paragraph = new Bidi(text, base);
  }

  @Override
  public int countTextRuns() {
    return paragraph.getRunCount();
  }

  @Override
  public BidiTextRun getVisualRun(int run) {
    int start = paragraph.getRunStart(run);
    boolean backward = paragraph.getRunLevel(run) % 2 == 1;
    return new BidiTextRun(start, paragraph.getRunLimit(run) - start, backward ? RTL : LTR);
  }

  @Override
  public byte getBaseDirection(String text) {
    return Bidi.requiresBidi(text.toCharArray(), 0, text.length()) ? NEUTRAL : LTR;
  }

  /** Turns the text of a run that runs from right to left round, letter by letter. */
  static final class Reversed implements BidiReorderer {

    @Override
    public String reorderRTLTextToLTR(String text) {
      BreakIterator letters = BreakIterator.getCharacterInstance(java.util.Locale.ROOT);
      letters.setText(text);
      StringBuilder turned = new StringBuilder(text.length());
      int end = letters.last();
      for (int start = letters.previous();
          start != BreakIterator.DONE;
          start = letters.previous()) {
        turned.append(mirrored(text.substring(start, end)));
        end = start;
      }
      return turned.toString();
    }

    private static String mirrored(String letter) {
      return switch (letter) {
        case "(" -> ")";
        case ")" -> "(";
        case "[" -> "]";
        case "]" -> "[";
        case "<" -> ">";
        case ">" -> "<";
        default -> letter;
      };
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
  }
}
