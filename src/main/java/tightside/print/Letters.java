package tightside.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashSet;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import tightside.picture.Svg;

/** What people typed, made fit for a page. */
public final class Letters {

  static final String REGULAR = "DejaVuSansCondensed.ttf";
  static final String BOLD = "DejaVuSansCondensed-Bold.ttf";

  private Letters() {}

  /**
   * Text as HTML or SVG may hold it. Signs that only steer the direction of writing are left out:
   * they could make one name look like another.
   */
  static String escaped(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    text.codePoints().filter(Letters::printed).forEach(plain::appendCodePoint);
    return Svg.escaped(plain.toString());
  }

  private static boolean printed(int letter) {
    int type = Character.getType(letter);
    return letter == '\n'
        || type != Character.CONTROL
            && type != Character.FORMAT
            && type != Character.SURROGATE
            && type != Character.PRIVATE_USE
            && type != Character.UNASSIGNED;
  }

  /** The letters of a text for which the font of a PDF has no shape; they print as #. */
  public static Set<String> lacking(String text) {
    try (InputStream in = font(REGULAR);
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
      CmapLookup shapes = font.getUnicodeCmapLookup();
      Set<String> lacking = new LinkedHashSet<>();
      text.codePoints()
          .filter(letter -> printed(letter) && letter != '\n' && shapes.getGlyphId(letter) == 0)
          .forEach(letter -> lacking.add(Character.toString(letter)));
      return lacking;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static InputStream font(String name) {
    return Letters.class.getResourceAsStream(name);
  }
}
